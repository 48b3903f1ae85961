// SPDX-License-Identifier: MIT
// One question, one figure: its formula, its source, its cautions.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "model/answer.h"
#include "reckon/inputs.h"

namespace dunnage {

/// One question of the table.
struct Question {
  std::string_view name;
  std::string_view asks;  ///< one line for the list
  std::vector<AskedKey> keys;
  std::string_view example;  ///< key=value ..., that has an answer
  std::string_view formula, source;
  std::string_view caution;  ///< always said
  /// Fills the value, its unit and further figures; what cannot be answered becomes a problem.
  void (*answer)(const Inputs&, Answer&, std::vector<std::string>& problems);
};

/// Every question, in the order of the list.
const std::vector<Question>& questions();
/// Null when there is none of that name.
const Question* question(std::string_view name);

/// The answer, or everything that is wrong or missing, one sentence each. A misspelt question or key is
/// answered with the nearest. Figures are said in the units typed; loads are rounded up, capacities down.
std::variant<Answer, std::vector<std::string>> reckon(std::string_view name, const Typed& typed);

}  // namespace dunnage
