// SPDX-License-Identifier: MIT
// What the house owns that could stand on a structure besides.
#pragma once

#include <functional>
#include <string>
#include <string_view>
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
/// The lightest weight that raises the down level `now` by a whole unit of the meter; null where none does. `holding`:
/// the gust that holds with so much more.
const SpareWeight* lightest_that_helps(const std::vector<SpareWeight>& weights, Speed now, std::string_view meter,
                                       const std::function<Speed(Mass)>& holding);
/// Weights of the kinds already on the use of this index; else what serves as "ballast".
std::vector<SpareWeight> spare_weights(const Catalogue& catalogue, const Plan& plan, int use);

}  // namespace dunnage
