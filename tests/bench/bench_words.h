// SPDX-License-Identifier: MIT
// What stands on the benchmarks' paper: kits say it, and the floors draw it.
#pragma once

#include <fmt/format.h>

#include <string>

namespace dunnage::bench {

inline constexpr int rows_on_page = 32, label_lines = 12;

inline std::string trunk_name(int n) { return fmt::format("Cable trunk {}", n); }
inline std::string trunk_looks(int n) {
  constexpr const char* lids[] = {"red", "blue", "white", "green", "yellow"};
  return fmt::format("black, {} lid", lids[n % 5]);
}
inline int trunk_pounds(int n) { return 20 + n % 60; }
inline std::string trunk_code(int n) { return fmt::format("C{:05}", n); }
inline constexpr const char* house_name = "Medlar Hill";
inline constexpr const char* house_phone = "555-0142";
inline std::string thing_name(int n) { return fmt::format("K{}", n); }
/// Line `line` of label `n`: how many of what.
inline int thing_count(int n, int line) { return 1 + (n * 7 + line * 3) % 9; }
inline int thing_number(int n, int line) { return 10 + (n * 13 + line * 31) % 90; }

}  // namespace dunnage::bench
