// SPDX-License-Identifier: MIT
// What a tower or stand carries against its rated load and height.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each structure in use that carries something. Without a rated load: not checked.
void check_tower_load(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
