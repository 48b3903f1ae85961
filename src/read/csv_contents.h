// SPDX-License-Identifier: MIT
// What people write into a cell of contents: "6 x vocal mic, 2 DI boxes; mic clips (12)".
#pragma once

#include <string>
#include <vector>

namespace dunnage {

struct ContentWords {
  int count = 1;
  std::string name;
  bool counted = false;  ///< false: no number was given, and one is taken
};

/// Parts between semicolons, line ends or commas (not in brackets). A number before a unit ("50 ft mic cable") is no
/// count.
std::vector<ContentWords> read_contents(const std::string& cell);

}  // namespace dunnage
