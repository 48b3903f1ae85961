// SPDX-License-Identifier: MIT
// Each circuit against its protection, its cable and the voltage it may lose.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each circuit of the show, with CircuitDetail; further ones where the gear and the circuits do not
/// match. A show without circuits:
/// one finding, not checked outdoors; indoors it does not apply, as the building has its own, nor where nothing
/// draws power.
void check_circuits(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
