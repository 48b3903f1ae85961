// SPDX-License-Identifier: MIT
// Ways that people walk and roll: ramps, steps in level, extinguishers.
#pragma once

#include <optional>

#include "base/quantity.h"

namespace dunnage {

/// What a change in level asks for. Source: ADA 303.2 to 303.4.
enum class LevelChange { none_needed, bevel, ramp };
/// Up to 1/4 in nothing, up to 1/2 in a bevel of 1:2, above a ramp.
LevelChange level_change(Length rise);

/// Length of ramp on plan at 1:12, with a landing of 60 in at each end of every run and no run above 30 in
/// of rise. Source: ADA 405.
struct RampFigures {
  int runs = 0;
  Length slope, landings, total;
};
RampFigures ramp(Length rise);
/// The largest rise of a steeper ramp on an existing site: 6 in from 1:12 to 1:10, 3 in from 1:10 to 1:8;
/// empty when steeper, no limit but ADA 405's own when flatter (30 in). Source: ADA Table 405.2.
std::optional<Length> steep_ramp_rise(double slope);

/// Extinguishers for an area of tents: one a 3000 ft2 or part. Every point within 75 ft (class A) or 50 ft
/// (class B) besides. Source: City of Fort Worth (Texas), tent permit page, year not seen;
/// 29 CFR 1910.157(d).
int extinguishers(Area area);
inline constexpr Length extinguisher_reach_a = 75 * unit::foot, extinguisher_reach_b = 50 * unit::foot;
/// Generator from tents, doors and windows. Source: City of Fort Worth (Texas), tent permit page, and Florida
/// Department of Health (doors and windows), years not seen.
inline constexpr Length generator_distance = 20 * unit::foot;
/// Flammable liquids from tents. Source: City of Fort Worth (Texas), tent permit page, year not seen.
inline constexpr Length fuel_distance = 50 * unit::foot;

}  // namespace dunnage
