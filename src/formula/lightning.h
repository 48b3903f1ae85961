// SPDX-License-Identifier: MIT
// When to stop for lightning, and when to begin again.
#pragma once

#include "base/quantity.h"

namespace dunnage {

/// Distance of a flash from the seconds to its thunder: 5 s a mile. Not negative.
/// Source: the speed of sound; Lightning Safety Group, from memory.
Length flash_distance(Duration flash_to_thunder);
/// Shelter at once at 30 s or less (about 6 miles). Source: NWS.
inline constexpr Duration shelter_count = 30 * unit::second;
/// In shelter before lightning is this near: 8 miles (13 km), a standard of care for venues, with 30 minutes
/// free of lightning inside it before restart. Source: NCAA guideline 1.E and NWS, as cited in 2016.
inline constexpr Length shelter_distance = 8 * unit::mile;
inline constexpr Duration wait_after_last = 30 * unit::minute;
/// How far off a storm must still be when clearing begins, so that all are in shelter when it is at
/// `shelter_distance`: that distance + storm speed x time to clear (statics of time).
Length clearing_distance(Speed storm, Duration time_to_clear);

}  // namespace dunnage
