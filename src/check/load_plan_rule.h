// SPDX-License-Identifier: MIT
// The load as planned: what found no room, what the axles bear on the way, and whether the plan may be drawn at all.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each vehicle that carries something, with LoadingDetail, where loads were planned; what has no size
/// or no cargo space to stand in is said to be in no plan.
void check_loading(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
