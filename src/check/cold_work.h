// SPDX-License-Identifier: MIT
// How cold the wind makes the day.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding, with WeatherDetail: wind chill at 10 C (50 F) and below, against the first frostbite
/// benchmark. Silent where no temperature is given: the rule about heat says so for both.
void check_cold(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
