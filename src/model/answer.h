// SPDX-License-Identifier: MIT
// One question put to a published formula, and its answer.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "base/quantity.h"

namespace dunnage {

struct Answer {
  std::string question;
  std::vector<std::pair<std::string, std::string>> inputs;  ///< as typed, in the order of the question
  double value = 0;                                         ///< in `unit`
  std::string unit;
  std::vector<std::pair<std::string, std::string>> also;  ///< further figures, words with units
  std::string formula, source;
  std::vector<std::string> cautions;
};

}  // namespace dunnage
