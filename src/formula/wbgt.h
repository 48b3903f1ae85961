// SPDX-License-Identifier: MIT
// Wet-bulb globe temperature: from readings, and what work it allows.
#pragma once

#include <optional>

#include "base/quantity.h"

namespace dunnage {

/// 0.7 wet + 0.2 globe + 0.1 air. Source: NIOSH 2016-106, 9.3.2.
Temperature wbgt_outdoors(Temperature natural_wet, Temperature globe, Temperature air);
/// 0.7 wet + 0.3 globe, without sun. Same source.
Temperature wbgt_indoors(Temperature natural_wet, Temperature globe);
/// Recommended alert limit, for people not used to heat: 59.9 - 14.1 log10 M, M in watts for 70 kg.
/// 100 to 600 W, else empty. Source: NIOSH 2016-106, 8.1.
std::optional<Temperature> alert_limit(Power work);
/// Recommended exposure limit, for people used to heat: 56.7 - 11.5 log10 M. Same source and range.
std::optional<Temperature> exposure_limit(Power work);

enum class WorkLoad { light, moderate, heavy, very_heavy };
/// Screening limits by the share of each hour that is work.
struct ScreeningLimit {
  Temperature used_to_heat, not_used_to_heat;
};
/// `share` 0 to 1; an edge counts as the larger share. Empty: no such work allowed at that share.
/// Source: OSHA Technical Manual III:4 / ACGIH screening values.
std::optional<ScreeningLimit> screening_limit(WorkLoad load, double share);

}  // namespace dunnage
