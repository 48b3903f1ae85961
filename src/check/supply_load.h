// SPDX-License-Identifier: MIT
// Each power source with all its circuits: rating, legs, generator.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each supply that feeds a circuit, with SupplyDetail: the load in all and each leg's share
/// against the rating; a generator with what height, heat and starting leave, and its distance from tents.
void check_supplies(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
