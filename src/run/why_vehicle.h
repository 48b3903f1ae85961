// SPDX-License-Identifier: MIT
// `dunnage why SHOW VAN`: what a vehicle takes, and which vehicles would be enough.
#pragma once

#include <string>

#include "model/catalogue.h"
#include "model/plan.h"

namespace dunnage {

/// One paragraph for the terminal. The plan has its loading, with `suffice` worked out.
std::string why_vehicle(const Catalogue& catalogue, const Plan& plan, const Vehicle& vehicle, UnitSystem units);

}  // namespace dunnage
