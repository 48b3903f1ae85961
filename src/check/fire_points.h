// SPDX-License-Identifier: MIT
// Extinguishers for the canopies that stand.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding where a canopy stands: how many go or are there, against one for each 3000 ft2 or part.
void check_extinguishers(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
