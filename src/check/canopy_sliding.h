// SPDX-License-Identifier: MIT
// Whether a canopy slides on its ground before it lifts.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each canopy in use. Not checked without a forecast gust, without heights, and on ground
/// for which no friction is published (grass, anything wet).
void check_canopy_sliding(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
