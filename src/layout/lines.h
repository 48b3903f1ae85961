// SPDX-License-Identifier: MIT
// Text to lines of a width. Breaks are few and plain: at spaces, after hyphens, dashes and slashes.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "font/faces.h"

namespace dunnage {

struct Lines {
  std::vector<std::string> lines;
  std::vector<bool> ends;    ///< true where a line ends its paragraph
  std::vector<bool> second;  ///< true where a line is in the second language
  Paper size, leading;
  bool split_word = false;  ///< a word was wider than the room and had to be broken inside

  Paper height() const { return leading * static_cast<double>(lines.size()); }
  bool one_line_each() const;  ///< no paragraph takes a second line
};

/// Lines of `text` at `size`, each at most `width` wide (spaces at a line's end hang). Line ends in the text
/// are kept, and so are those between two languages. A word wider than `width` breaks anywhere. At least one line, even
/// for an empty text.
Lines break_lines(const Faces& faces, int face, Paper size, Paper leading, std::string_view text, Paper width);

/// Width in ems of the widest paragraph set on one line.
double natural_ems(const Faces& faces, int face, std::string_view text);
/// Width in ems of the widest stretch that holds no place to break.
double widest_word_ems(const Faces& faces, int face, std::string_view text);

}  // namespace dunnage
