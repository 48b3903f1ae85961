// SPDX-License-Identifier: MIT
// Things whose inspection runs out before the show.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each case that goes and must be inspected by a date: over where that is before the show.
void check_inspections(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
