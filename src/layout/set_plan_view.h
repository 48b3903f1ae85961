// SPDX-License-Identifier: MIT
// A structure from above with what stands at its legs: the drawing in the middle, the words at both sides.
#pragma once

#include <vector>

#include "layout/setting.h"
#include "model/page.h"

namespace dunnage {

/// The plan in its box, to one scale in both directions: names in the block's `head`, the rest in its `type`.
/// Words that have no room at the sides are a problem.
void put_plan_view(Setting& setting, const BlockSpec& spec, const picture::PlanView& plan, const Box& box,
                   std::vector<Ink>& ink);

}  // namespace dunnage
