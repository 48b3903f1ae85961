// SPDX-License-Identifier: MIT
// Who may stop the show.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding: not checked outdoors until a role is named that may stop the show.
void check_stop_person(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
