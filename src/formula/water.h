// SPDX-License-Identifier: MIT
// Drinking water for a crew in the heat.
#pragma once

#include "base/quantity.h"

namespace dunnage {

/// Least water carried: people x hours x 0.71 l (one cup of 8 oz each 20 minutes). People and time not
/// negative. Source: OSHA/NIOSH text (8 oz every 15 to 20 minutes).
Volume least_water(int people, Duration time);
/// At one US quart a person and hour. Source: OSHA proposed rule of 2024 (not final when read).
Volume good_water(int people, Duration time);
/// Nobody drinks more than this an hour: 48 oz, 1.42 l. Source: OSHA/NIOSH text.
inline constexpr Volume most_water_an_hour = 1.419529419 * unit::litre;

}  // namespace dunnage
