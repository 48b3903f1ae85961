// SPDX-License-Identifier: MIT
// Noise dose of a crew, by both exchange rates. Audience levels are a matter of the licence.
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "base/quantity.h"

namespace dunnage {

/// A level, A-weighted, and how long it is heard.
using HeardFor = std::pair<Sound, Duration>;

/// 8 h / 2^((L - 90) / 5). Source: OSHA 29 CFR 1910.95 Appendix A, Table G-16a.
Duration osha_time(Sound level);
/// Permitted hours of Table G-16 with 0.25 h at 115 dBA and nothing above; between rows the next row up.
/// Empty above 115 dBA. Below 90: unlimited, so 24 h. Source: 29 CFR 1910.95 Table G-16.
std::optional<Duration> osha_permitted(Sound level);
/// Dose in per cent: 100 sum C/T over levels from `from` up. 90: permissible exposure; 80: hearing
/// conservation, where action starts at 50. Source: 29 CFR 1910.95 Appendix A.
double osha_dose(const std::vector<HeardFor>& heard, Sound from = 80 * unit::decibel_a);
/// 16.61 log10(D / 100) + 90. Dose above 0. Same source.
Sound osha_average(double dose);

/// 480 min / 2^((L - 85) / 3). Source: NIOSH 98-126, Table 1-1.
Duration niosh_time(Sound level);
/// Dose in per cent. Empty where any level is above 115 dBA, the ceiling. Same source, 1.1.
std::optional<double> niosh_dose(const std::vector<HeardFor>& heard);
/// 10 log10(D / 100) + 85. Dose above 0.
Sound niosh_average(double dose);

/// Level of the same energy spread over eight hours (UK daily exposure).
Sound daily_exposure(const std::vector<HeardFor>& heard);
/// Level at another distance from a point in the open: less 20 log10(r2 / r1). Wrong in a room.
Sound level_at(Sound level, Length measured_at, Length wanted_at);

}  // namespace dunnage
