// SPDX-License-Identifier: MIT
// Drinking water for the people at work on a warm day.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding: what goes (or that the site has some) against a cup each 20 minutes for crew and volunteers,
/// from a heat index in full sun of 80 F on. Silent where no temperature is given: the rule about heat says
/// so.
void check_water(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
