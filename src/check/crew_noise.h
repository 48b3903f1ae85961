// SPDX-License-Identifier: MIT
// What the crew hears in a day.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each person or group of the show's [[noise]], by both exchange rates. Without any it is
/// not checked, or does not apply where no mix is listed.
void check_noise(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
