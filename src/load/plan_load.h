// SPDX-License-Identifier: MIT
// From what goes to what stands where in which vehicle.
#pragma once

#include <string>
#include <vector>

#include "load/load_effort.h"
#include "model/catalogue.h"
#include "model/loading.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// Vehicles whose cargo space is typed, with the units that the kit or the show gives them, then with those that go in
/// no typed vehicle. What fits nowhere is in the `left` of its vehicle, or of the last one.
Loading plan_load(const Catalogue& catalogue, const Show& show, const Plan& plan, const LoadEffort& effort = {});

/// Sets of the kit's vehicles that take all that goes, whatever vehicle is typed: the smallest sets alone, in order of
/// their empty masses. A trailer only with what pulls it. Empty where none does or a size is missing.
std::vector<std::vector<std::string>> vehicles_that_suffice(const Catalogue& catalogue, const Show& show,
                                                            const Plan& plan);

}  // namespace dunnage
