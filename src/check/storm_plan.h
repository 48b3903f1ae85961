// SPDX-License-Identifier: MIT
// When to clear the site for lightning.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding, with LightningDetail: not checked outdoors until the time to clear and the shelter are given.
void check_lightning(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
