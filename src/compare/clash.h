// SPDX-License-Identifier: MIT
// Which units two shows want at the same time, travel and preparation counted, and whether another would do.
#pragma once

#include <vector>

#include "model/planned.h"

namespace dunnage {

/// First and last day on which a show has its cases: preparation before the day of travel out, travel home
/// after. A show without a date has no days: see undated.
std::pair<long, long> days_of(const Show& show);

/// Every clash, by pairs of shows in the order given, then by unit. Shows must have dates. Another unit would do when
/// neither of the two shows wants it, it is not out of service, and it is of the same case or serves all that the
/// clashing unit serves in the second show.
std::vector<Clash> clashes(const std::vector<Planned>& shows);

}  // namespace dunnage
