// SPDX-License-Identifier: MIT
// What the house owns that could stand on a structure besides.
#pragma once

#include <string>
#include <vector>

#include "model/catalogue.h"
#include "model/plan.h"

namespace dunnage {

/// A weight that the house owns and could add, and how many are free.
struct SpareWeight {
  std::string code;
  Mass mass;  ///< as ballast, of the lightest of several alike
  int free = 0;
};
/// "none", "3".
Sentence free_words(int free);
/// Weights of the kinds already on the use of this index; else what serves as "ballast".
std::vector<SpareWeight> spare_weights(const Catalogue& catalogue, const Plan& plan, int use);

}  // namespace dunnage
