// SPDX-License-Identifier: MIT
// The judge of load plans. It shares no code with the planner: whoever makes a mistake there does not make it here.
#pragma once

#include <vector>

#include "model/catalogue.h"
#include "model/loading.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// All that is wrong with a plan as drawn, vehicle by vehicle; empty: nothing was found. Overlaps, sides, support,
/// stances, doors, stacks, the ways in and out at every stop, every unit once, and axle and tongue loads summed again
/// from the drawing's own numbers.
std::vector<LoadFault> load_faults(const Catalogue& catalogue, const Show& show, const Plan& plan,
                                   const Loading& loading);

/// Writes the faults into the loading. A vehicle with one loses its pieces.
void judge_loading(const Catalogue& catalogue, const Show& show, const Plan& plan, Loading& loading);

}  // namespace dunnage
