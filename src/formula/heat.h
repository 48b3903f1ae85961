// SPDX-License-Identifier: MIT
// How hot it feels, and what that asks of people at work.
#pragma once

#include <optional>

#include "base/quantity.h"
#include "base/sentence.h"

namespace dunnage {

/// Heat index in the shade. Air from 20 C (68 F) to 44.4 C (112 F), relative humidity 0 to 100 per cent;
/// empty outside, where the equation is no guide (hotter than that: treat as extreme danger). Source: NWS SR
/// 90-23 (Rothfusz 1990) with both adjustments, as on the WPC heat index page.
std::optional<Temperature> heat_index(Temperature air, double humidity);
/// The polynomial alone, as NWS charts print it. No limits: for comparison with charts.
Temperature heat_index_polynomial(Temperature air, double humidity);
/// Full sun can add up to 15 F to the index. Source: NWS.
inline constexpr TemperatureGap full_sun_adds = 15 * unit::fahrenheit_degree;

/// NWS bands: caution from 80 F, extreme caution 90, danger 103, extreme danger 125. An older chart has 105
/// and 130; the lower breaks are used.
enum class HeatBand { none, caution, extreme_caution, danger, extreme_danger };
HeatBand heat_band(Temperature index);
Sentence name(HeatBand band);

}  // namespace dunnage
