// SPDX-License-Identifier: MIT
// The ballast of each leg of a canopy against the forecast gust, and the gust at which it must be down.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One finding for each canopy in use, with CanopyDetail. Within where every leg has what the forecast gust
/// asks (factors 0.9 and 1.5) and the gust is not above the maker's limit. The gust at which it must be down
/// comes from the lightest leg, from sliding where that is known, and from the maker's limit, whichever is
/// least, and is rounded down to a whole unit of the house's meter.
void check_canopy_ballast(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
