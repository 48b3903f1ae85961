// SPDX-License-Identifier: MIT
// Whether a tower, light stand, banner or screen slides on its ground before it tips.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each structure in use that is no canopy. Not checked where no friction is published for
/// what it stands on.
void check_tower_sliding(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
