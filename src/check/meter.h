// SPDX-License-Identifier: MIT
// The unit of the wind meter in hand, in which every wind level of a house is said.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "base/unit.h"
#include "model/finding.h"
#include "model/kit.h"

namespace dunnage {

/// "mph", "km/h", "m/s" or "knots"; where the house does not say, by its unit system.
std::string_view meter_of(const House& house);
/// Down to a whole unit of the meter: a level that a person reads must never be above what holds.
Speed whole_units_down(Speed gust, std::string_view meter);
/// "28 mph". Whole units; never above `gust`.
std::string gust_words(Speed gust, std::string_view meter);

/// Ready and start at 60 and 80 per cent of the down level, all in whole units of the meter, and how long and
/// with how many people it comes down. Without a down level only the last two.
WindCard wind_card(const Structure& structure, std::optional<Speed> down, Sentence governs, std::string_view meter);

/// Margin (capacity over demand) at every 1 mph or 1 m/s up to `end`, of what holds `holds` and no more:
/// demand grows with the square of the gust. At most 200 points.
std::vector<CurvePoint> margin_curve(Speed holds, Speed end, std::string_view meter);

}  // namespace dunnage
