// SPDX-License-Identifier: MIT
// Numbers with units as they stand in a cell, and the words that people use for units.
#pragma once

#include <string>
#include <string_view>

#include "base/unit.h"

namespace dunnage {

inline bool digit(char c) { return c >= '0' && c <= '9'; }

/// The unit that a word stands for, as the kit writes it ("lbs" -> "lb", "inches" -> "in"); empty: none.
std::string unit_symbol(std::string_view word);

/// How this spreadsheet writes numbers.
enum class Decimals { point, comma };

/// Signs that office programs put for plain ones: curly quotes, prime marks, a times sign, narrow blanks, fractions.
std::string plain_signs(std::string_view cell);

/// "1,250.5 lbs" as number and unit words in turn, each number with a point and no thousands.
struct CellNumber {
  std::string text;  ///< "1250.5 lb", "6 ft 4 in", or "27" where there is no unit
  bool has_unit = false;
  std::string guess;  ///< empty: nothing was taken for granted
  bool ok = false;
};
CellNumber read_number(std::string_view cell, Decimals decimals);

}  // namespace dunnage
