// SPDX-License-Identifier: MIT
// Whether a tower, light stand, banner or screen tips over in the forecast gust.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each structure in use that is no canopy: the factored gust at which it tips about its
/// nearest line, never above the maker's limit, against the forecast gust; and what must be added.
void check_tower_tip(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
