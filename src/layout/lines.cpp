// SPDX-License-Identifier: MIT
// A small part of Unicode's line breaking (UAX #14), enough for names, codes and plain sentences.
#include "layout/lines.h"

#include <algorithm>
#include <cstdint>

#include "base/utf8.h"
#include "model/document.h"

namespace dunnage {
namespace {

bool is_space(char32_t c) { return c == U' ' || c == U'\t'; }
bool is_digit(char32_t c) { return c >= U'0' && c <= U'9'; }
bool is_combining(char32_t c) { return c >= 0x300 && c <= 0x36F; }

/// May a line end after character `at`? A hyphen or slash before a digit holds together: "FOH-1", "1/2",
/// "2027-06-19"; and so does one that begins a word: "--stock".
bool breaks_after(std::u32string_view text, std::size_t at) {
  const char32_t c = text[at];
  const bool joint = c == U'-' || c == U'/' || c == 0x2010 || c == 0x2013 || c == 0x2014;
  if (!joint || at == 0 || at + 1 >= text.size()) return false;
  const char32_t before = text[at - 1], next = text[at + 1];
  return !is_digit(next) && !is_space(next) && next != c && !is_space(before) && before != c;
}

/// One paragraph, broken as it is read.
class Breaker {
 public:
  Breaker(const Faces& faces, int face, std::u32string_view text, double room) : text_(text), room_(room) {
    advance_.reserve(text.size());
    for (const char32_t c : text) advance_.push_back(faces.advance(face, is_space(c) ? U' ' : c));
  }

  void run(Lines& out, bool second) {
    std::size_t from = 0;
    do {
      const auto [end, next] = line(from, out.split_word);
      out.lines.push_back(utf8::encode(text_.substr(from, end - from)));
      std::replace(out.lines.back().begin(), out.lines.back().end(), '\t', ' ');
      out.ends.push_back(next >= text_.size());
      out.second.push_back(second);
      from = next;
    } while (from < text_.size());
  }

 private:
  struct Cut {
    std::size_t end, next;
  };

  /// Where the line that begins at `from` ends, and where the next one begins.
  Cut line(std::size_t from, bool& split) const {
    Cut cut{from, from};
    bool can_cut = false;
    std::int64_t wide = 0;
    std::size_t i = from;
    for (; i < text_.size(); ++i) {
      if (is_space(text_[i]) && i > from) {
        cut = {is_space(text_[i - 1]) && can_cut ? cut.end : i, i + 1};
        can_cut = true;
      }
      wide += advance_[i];
      if (is_space(text_[i])) continue;
      if (static_cast<double>(wide) > room_ && i > from) break;
      if (breaks_after(text_, i)) {
        cut = {i + 1, i + 1};
        can_cut = true;
      }
    }
    if (i == text_.size()) return {trimmed(from, i), i};
    if (can_cut) return {cut.end, skip_spaces(cut.next)};
    split = true;
    while (i > from + 1 && is_combining(text_[i])) --i;
    return {i, i};
  }

  std::size_t trimmed(std::size_t from, std::size_t end) const {
    while (end > from && is_space(text_[end - 1])) --end;
    return end;
  }
  std::size_t skip_spaces(std::size_t at) const {
    while (at < text_.size() && is_space(text_[at])) ++at;
    return at;
  }

  std::u32string_view text_;
  double room_;
  std::vector<int> advance_;
};

/// Calls `each` with every paragraph and whether it is in the second language.
template <class Each>
void for_paragraphs(std::string_view text, Each&& each) {
  static const std::string second_mark = utf8::encode(second_language), first_mark = utf8::encode(first_language);
  bool second = false;
  std::size_t from = 0;
  for (std::size_t at = 0; at <= text.size(); ++at) {
    const bool over = at == text.size();
    const bool marked =
        !over && text[at] == second_mark[0] && (text.substr(at, 3) == second_mark || text.substr(at, 3) == first_mark);
    if (!over && !marked && text[at] != '\n') continue;
    std::string_view paragraph = text.substr(from, at - from);
    if (!paragraph.empty() && paragraph.back() == '\r') paragraph.remove_suffix(1);
    each(paragraph, second);
    if (marked) {
      second = text.substr(at, 3) == second_mark;
      at += 2;
    }
    from = at + 1;
  }
}

/// Tabs are as wide as spaces.
std::int64_t width_of(const Faces& faces, int face, std::string_view paragraph) {
  std::int64_t wide = 0;
  for (std::size_t at = 0; at < paragraph.size();) {
    const char32_t c = utf8::next(paragraph, at);
    wide += faces.advance(face, is_space(c) ? U' ' : c);
  }
  return wide;
}

/// Most texts have room on one line, as they are.
bool stands_whole(const Faces& faces, int face, std::string_view paragraph, double room) {
  return !paragraph.ends_with(' ') && paragraph.find('\t') == std::string_view::npos &&
         faces.width(face, paragraph) <= room;
}

}  // namespace

bool Lines::one_line_each() const { return std::find(ends.begin(), ends.end(), false) == ends.end(); }

Lines break_lines(const Faces& faces, int face, Paper size, Paper leading, std::string_view text, Paper width) {
  Lines out;
  out.size = size;
  out.leading = leading;
  const double room = width / size * 1000 + 1e-6;
  for_paragraphs(text, [&](std::string_view paragraph, bool second) {
    if (!stands_whole(faces, face, paragraph, room)) {
      const std::u32string decoded = utf8::decode(paragraph);
      Breaker(faces, face, decoded, room).run(out, second);
      return;
    }
    out.lines.emplace_back(paragraph);
    out.ends.push_back(true);
    out.second.push_back(second);
  });
  return out;
}

double natural_ems(const Faces& faces, int face, std::string_view text) {
  std::int64_t widest = 0;
  for_paragraphs(
      text, [&](std::string_view paragraph, bool) { widest = std::max(widest, width_of(faces, face, paragraph)); });
  return static_cast<double>(widest) / 1000;
}

double widest_word_ems(const Faces& faces, int face, std::string_view text) {
  std::int64_t widest = 0;
  for_paragraphs(text, [&](std::string_view encoded, bool) {
    const std::u32string paragraph = utf8::decode(encoded);
    std::int64_t wide = 0;
    for (std::size_t i = 0; i < paragraph.size(); ++i) {
      if (is_space(paragraph[i])) {
        wide = 0;
        continue;
      }
      wide += faces.advance(face, paragraph[i]);
      widest = std::max(widest, wide);
      if (breaks_after(paragraph, i)) wide = 0;
    }
  });
  return static_cast<double>(widest) / 1000;
}

}  // namespace dunnage
