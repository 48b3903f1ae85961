// SPDX-License-Identifier: MIT
// Setting of running words.
#include "layout/set_text.h"

#include <algorithm>
#include <utility>

#include "layout/fit.h"
#include "layout/set_picture.h"
#include "symbol/marks.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

constexpr Paper column_gap = 6 * paper_mm;
constexpr Paper label_gap = 3 * paper_mm;

Paper text_width(const BlockSpec& spec, Paper width) {
  return spec.max_width > Paper{} ? std::min(spec.max_width, width) : width;
}

Paper baseline(Setting& setting, const Lines& lines, const TypeStyle& style) {
  return (lines.leading + lines.size * setting.faces.metrics(setting.face(style.face)).cap_height) / 2;
}

/// Things in columns read downwards: which stands in row `row` of column `column`, or none (count or beyond).
struct Columns {
  std::size_t count, across, rows;
  Paper width;  ///< of one column

  Columns(std::size_t count_, int across_, Paper whole)
      : count(count_), across(static_cast<std::size_t>(std::max(1, across_))), rows((count + across - 1) / across) {
    width = (whole - column_gap * static_cast<double>(across - 1)) / static_cast<double>(across);
  }
  std::size_t at(std::size_t row, std::size_t column) const { return column * rows + row; }
  Paper x(std::size_t column) const { return (width + column_gap) * static_cast<double>(column); }
};

Strip heading_strip(Setting& setting, const TypeStyle& style, const std::string& text, Paper width) {
  const Lines lines = fit_width(setting, style, text, width);
  Strip strip;
  put_lines(setting, strip.ink, lines, style, {}, width);
  strip.height = lines.height();
  strip.keep_next = true;
  return strip;
}

}  // namespace

void set_heading(Setting& setting, const BlockSpec& spec, const block::Heading& heading, Paper width, Galley& galley) {
  galley.strips.push_back(heading_strip(setting, spec.type, heading.text, width));
}

void set_paragraph(Setting& setting, const BlockSpec& spec, const std::string& text, Paper width, Galley& galley) {
  const Paper wide = text_width(spec, width);
  const Lines all = fit_width(setting, spec.type, text, wide);
  std::size_t first = 0;
  for (std::size_t i = 0; i < all.lines.size(); ++i) {
    Lines one{{all.lines[i]}, {all.ends[i]}, {all.second[i]}, all.size, all.leading, false};
    Strip strip;
    put_lines(setting, strip.ink, one, spec.type, {}, wide);
    strip.height = all.leading;
    const bool before_last = !all.ends[i] && i + 1 < all.lines.size() && all.ends[i + 1];
    strip.keep_next = (i == first && !all.ends[i]) || before_last;
    if (all.ends[i]) first = i + 1;
    galley.strips.push_back(std::move(strip));
  }
}

void set_listing(Setting& setting, const BlockSpec& spec, const block::Listing& listing, Paper width,
                 const std::string& above, Galley& galley) {
  Resume again;
  if (!above.empty())
    again = std::make_shared<const std::vector<Strip>>(
        1, heading_strip(setting, spec.head, continued_words(setting.document, above), width));
  const Columns columns(listing.lines.size(), spec.across, width);
  const Paper indent = spec.type.size * 1.0;
  const Paper wide = text_width(spec, columns.width) - indent;
  for (std::size_t row = 0; row < columns.rows; ++row) {
    Strip strip;
    for (std::size_t column = 0; column < columns.across && columns.at(row, column) < columns.count; ++column) {
      const Lines lines = fit_width(setting, spec.type, listing.lines[columns.at(row, column)], wide);
      const Lines bullet{{"\u2022"}, {true}, {false}, lines.size, lines.leading, false};
      TypeStyle left = spec.type;
      left.align = Align::left;
      put_lines(setting, strip.ink, bullet, left, {columns.x(column), {}}, indent);
      put_lines(setting, strip.ink, lines, spec.type, {columns.x(column) + indent, {}}, wide);
      strip.height = std::max({strip.height, lines.height(), spec.row_height});
    }
    strip.keep_next = columns.rows > 2 && (row == 0 || row + 2 == columns.rows);
    if (row > 0) strip.resume = again;
    galley.strips.push_back(std::move(strip));
  }
}

void set_facts(Setting& setting, const BlockSpec& spec, const block::Facts& facts, Paper width, Galley& galley) {
  const Columns columns(facts.facts.size(), spec.across, width);
  double label_ems = 0;
  for (const block::Fact& fact : facts.facts)
    label_ems = std::max(label_ems, natural_ems(setting.faces, setting.face(spec.head.face), fact.label));
  const Paper label_width = std::min(spec.head.size * label_ems, columns.width * 0.45);
  const Paper value_x = label_width + label_gap;
  const Paper value_width = text_width(spec, columns.width - value_x);
  for (std::size_t row = 0; row < columns.rows; ++row) {
    Strip strip;
    strip.height = std::max(spec.line_height, spec.row_height);
    for (std::size_t column = 0; column < columns.across && columns.at(row, column) < columns.count; ++column) {
      const block::Fact& fact = facts.facts[columns.at(row, column)];
      const Lines label = fit_width(setting, spec.head, fact.label, label_width);
      const Lines value = fit_width(setting, spec.type, fact.value, value_width);
      const Paper drop = baseline(setting, value, spec.type) - baseline(setting, label, spec.head);
      const Paper label_y = std::max(drop, Paper{}), value_y = std::max(-drop, Paper{});
      put_lines(setting, strip.ink, label, spec.head, {columns.x(column), label_y}, label_width);
      put_lines(setting, strip.ink, value, spec.type, {columns.x(column) + value_x, value_y}, value_width);
      strip.height = std::max({strip.height, label_y + label.height(), value_y + value.height()});
    }
    galley.strips.push_back(std::move(strip));
  }
}

void set_notice(Setting& setting, const BlockSpec& spec, const block::Notice& notice, Paper width, Galley& galley) {
  const Paper pad = 2.2 * paper_mm;
  const Paper wide = width - pad * 2;
  Galley inside;
  if (!notice.word.empty()) {
    const Figure sign = figure(Sign::warning);
    const Paper side = spec.head.size * 1.2;
    const Paper indent = side * sign.width + 2 * paper_mm;
    const Lines word = fit_width(setting, spec.head, notice.word, wide - indent);
    Strip strip;
    strip.height = std::max(word.height(), side);
    put_figure(strip.ink, sign, {{}, (strip.height - side) / 2}, side);
    put_lines(setting, strip.ink, word, spec.head, {indent, (strip.height - word.height()) / 2}, wide - indent);
    inside.strips.push_back(std::move(strip));
  }
  for (const std::string& line : notice.lines) set_paragraph(setting, spec, line, wide, inside);
  galley.strips.push_back(framed(std::move(inside), width, pad, (notice.word.empty() ? 0.75 : 1.5) * point));
  galley.strips.back().may_part = true;
}

}  // namespace dunnage
