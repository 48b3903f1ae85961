// SPDX-License-Identifier: MIT
// Rain on what draws power.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding: covers that go against pieces that draw power and stand where no canopy does.
void check_rain(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
