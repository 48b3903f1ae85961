// SPDX-License-Identifier: MIT
// The one place that decides how small text may get, and the one that draws it.
#include "layout/fit.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "base/unit.h"
#include "base/utf8.h"
#include "layout/galley.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

constexpr Paper size_step = 0.25 * point;  ///< sizes in use stay few and round

std::string mm(Paper length) { return plain(length / paper_mm, 1) + " mm"; }
std::string pt(Paper size) { return plain(size / point, 2) + " pt"; }

/// The largest round size, at most `wanted` and the style's own, at least its floor.
Paper round_size(const TypeStyle& style, Paper wanted) {
  const Paper stepped = size_step * std::floor(wanted / size_step + 1e-6);
  return std::clamp(stepped, std::min(style.floor, style.size), style.size);
}

Lines at_size(Setting& setting, const TypeStyle& style, std::string_view text, Paper width, Paper size) {
  return break_lines(setting.faces, setting.face(style.face), size, leading_at(style, size), text, width);
}

bool fits(const Lines& lines, Paper height) { return lines.height() <= height + hair; }

/// The largest size at which the text fits without a broken word; the floor where there is none.
Lines shrink_into(Setting& setting, const TypeStyle& style, std::string_view text, Paper width, Paper height) {
  Lines best = at_size(setting, style, text, width, style.size);
  if (fits(best, height) && !best.split_word) return best;
  const Paper floor = std::min(style.floor, style.size);
  int low = 0, high = static_cast<int>((style.size - floor) / size_step + 1e-6);  // steps above the floor
  best = at_size(setting, style, text, width, floor);
  while (low < high) {
    const int middle = (low + high + 1) / 2;
    Lines tried = at_size(setting, style, text, width, floor + size_step * middle);
    if (fits(tried, height) && !tried.split_word) {
      low = middle;
      best = std::move(tried);
    } else {
      high = middle - 1;
    }
  }
  return best;
}

/// Leaves out whole paragraphs at the end, both languages of each, until the rest and a line that counts them have
/// room. A single text keeps what has room: of two languages the first.
void cut_lines(Setting& setting, Lines& lines, Paper height) {
  const auto room = static_cast<std::size_t>(std::max(0.0, std::floor(height / lines.leading + 1e-6)));
  if (room == 0) {
    setting.problem(lines.lines.front(), "has no room for one line: " + mm(height) + " high");
    return;
  }
  const auto begins = [&](std::size_t i) { return !lines.second[i] && (i == 0 || lines.ends[i - 1]); };
  const auto keep = [&](std::size_t count, std::string last) {
    lines.lines.resize(count);
    lines.ends.resize(count);
    lines.second.resize(count);
    if (last.empty()) return;
    lines.lines.push_back(std::move(last));
    lines.ends.push_back(true);
    lines.second.push_back(false);
  };
  std::size_t kept = room - 1;
  while (kept > 0 && !begins(kept)) --kept;
  int dropped = 0;
  for (std::size_t i = kept; i < lines.lines.size(); ++i) dropped += begins(i) ? 1 : 0;
  if (kept == 0 && dropped == 1) {  // one text, as a name: its beginning says more than a number would
    const auto other = std::find(lines.second.begin(), lines.second.end(), true) - lines.second.begin();
    const bool first_fits = static_cast<std::size_t>(other) <= room;
    keep(std::min(static_cast<std::size_t>(other), room), {});
    if (!first_fits) lines.lines.back() += "\u2026";
  } else {
    keep(kept, more_words(setting.document, dropped));
  }
}

void report_missing(Setting& setting, std::string_view text, const std::vector<char32_t>& missing) {
  std::string which;
  for (const char32_t c : missing) {
    const std::string named = fmt::format("U+{:04X}", static_cast<unsigned>(c));
    if (which.find(named) == std::string::npos) which += (which.empty() ? "" : ", ") + named;
  }
  setting.problem(std::string(text), "has a character that no face can set: " + which);
}

}  // namespace

Paper leading_at(const TypeStyle& style, Paper size) {
  if (style.leading <= Paper{}) return size * 1.3;
  return style.leading * (size / style.size);
}

std::string more_words(const Document& document, int count) {
  std::string said = document.more;
  if (const auto at = said.find("{n}"); at != std::string::npos) said.replace(at, 3, std::to_string(count));
  return said;
}

std::string continued_words(const Document& document, const std::string& title) {
  const auto [title_first, title_second] = apart(title);
  const auto [first, second] = apart(document.continued);
  const auto both = [](const std::string& a, const std::string& b) {
    return (a.empty() ? a : a + " ") + "(" + b + ")";
  };
  if (second.empty() && title_second.empty()) return both(title_first, first);
  return in_two(both(title_first, first),
                both(title_second.empty() ? title_first : title_second, second.empty() ? first : second));
}

Lines fit_width(Setting& setting, const TypeStyle& style, std::string_view text, Paper width) {
  Paper size = style.size;
  if (style.fit == Fit::shrink) {
    const double ems = natural_ems(setting.faces, setting.face(style.face), text);
    if (ems > 0 && style.size * ems > width) size = round_size(style, width / ems);
  }
  Lines lines = at_size(setting, style, text, width, size);
  if (lines.split_word && style.fit != Fit::refuse) lines = fit_words(setting, style, text, width);
  if (style.fit == Fit::refuse && !lines.one_line_each())
    setting.problem(std::string(text), "does not fit on one line of " + mm(width) + " at " + pt(size));
  return lines;
}

Lines fit_box(Setting& setting, const TypeStyle& style, std::string_view text, Paper width, Paper height) {
  const bool may_shrink = style.fit == Fit::shrink || style.fit == Fit::cut;
  Lines lines =
      may_shrink ? shrink_into(setting, style, text, width, height) : at_size(setting, style, text, width, style.size);
  if (style.fit == Fit::refuse && lines.split_word)
    setting.problem(std::string(text), "has a word wider than " + mm(width) + " at " + pt(lines.size));
  if (fits(lines, height)) return lines;
  if (style.fit == Fit::cut) {
    cut_lines(setting, lines, height);
  } else {
    setting.problem(std::string(text), "does not fit into " + mm(width) + " x " + mm(height) + " at " + pt(lines.size));
  }
  return lines;
}

bool fits_box(Setting& setting, const TypeStyle& style, std::string_view text, Paper width, Paper height) {
  if (width <= Paper{}) return false;
  const Lines least = at_size(setting, style, text, width, std::min(style.floor, style.size));
  return fits(least, height) && !least.split_word;
}

Lines fit_words(Setting& setting, const TypeStyle& style, std::string_view text, Paper width) {
  const double ems = widest_word_ems(setting.faces, setting.face(style.face), text);
  Paper size = style.size;
  if (ems > 0 && size * ems > width) size = round_size(style, width / ems);
  return at_size(setting, style, text, width, size);
}

void put_lines(Setting& setting, std::vector<Ink>& ink, const Lines& lines, const TypeStyle& style, Spot at,
               Paper width) {
  const int plain = setting.face(style.face);
  const bool two = std::find(lines.second.begin(), lines.second.end(), true) != lines.second.end();
  const int other = two ? setting.face(setting.plain_cut(style.face)) : plain;
  const Paper cap = lines.size * setting.faces.metrics(plain).cap_height;
  Paper baseline = at.y + (lines.leading + cap) / 2;
  for (std::size_t i = 0; i < lines.lines.size(); ++i) {
    const std::string& line = lines.lines[i];
    if (!line.empty()) {
      Pieces pieces = setting.faces.pieces(lines.second[i] ? other : plain, line);
      if (!pieces.missing.empty()) report_missing(setting, line, pieces.missing);
      const Paper room = width - lines.size * (pieces.width / 1000.0);
      Paper x = at.x + room * (style.align == Align::right ? 1.0 : style.align == Align::centre ? 0.5 : 0.0);
      for (Piece& piece : pieces.pieces) {
        const Paper wide = lines.size * (piece.width / 1000.0);
        ink.push_back(ink::Words{{x, baseline}, piece.face, lines.size, wide, std::move(piece.text)});
        x += wide;
      }
    }
    baseline += lines.leading;
  }
}

}  // namespace dunnage
