// SPDX-License-Identifier: MIT
// How hot the day is for people at work.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding, with WeatherDetail: a WBGT reading against the screening limit of people not used to heat,
/// else the heat index in full sun against the danger band. Not checked outdoors where the forecast lacks it.
void check_heat(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
