// SPDX-License-Identifier: MIT
// What is still out there: scans against the plan.
#pragma once

#include <vector>

#include "model/catalogue.h"
#include "model/plan.h"
#include "model/scan.h"

namespace dunnage {

/// `stages`: those that lists were given for, though they may be empty. Expected at the latest of them: what the plan
/// sends, and what was seen at an earlier one besides. A scan without a unit is near to a code or not ours; it is never
/// counted as the nearest.
Tally tally(const Catalogue& catalogue, const Plan& plan, const std::vector<Scan>& scans,
            const std::vector<Stage>& stages);

}  // namespace dunnage
