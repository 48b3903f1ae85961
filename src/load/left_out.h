// SPDX-License-Identifier: MIT
// Why a unit found no room, by how much, and whether that is proved.
#pragma once

#include "load/vehicle_plan.h"

namespace dunnage {

/// The largest sum that the plates leave for cargo, kg; negative where nothing is typed. `tongue`: kg on its hitch.
double most_cargo(const Vehicle& vehicle, double tongue);

/// One entry a unit of `units`, none of which is aboard. `asked`: all that was asked of this vehicle.
std::vector<LeftOut> reasons_left(const Catalogue& catalogue, const Cargo& asked, const std::vector<int>& units);

}  // namespace dunnage
