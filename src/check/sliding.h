// SPDX-License-Identifier: MIT
// Friction under all the weight against the push on walls, roof, head, mast and load.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding a canopy.
void check_canopy_sliding(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);
/// One finding a tower, light stand, banner or screen.
void check_tower_sliding(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
