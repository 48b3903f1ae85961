// SPDX-License-Identifier: MIT
// Changes in level that people walk and roll over.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each [[way]], and one for all cables that are crossed on foot.
void check_ways(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
