// SPDX-License-Identifier: MIT
// What each vehicle carries against its plates.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each vehicle that carries something, with VehicleDetail: masses always; axles and tongue
/// where every piece has a position; tie-downs where they are given.
void check_vehicles(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
