// SPDX-License-Identifier: MIT
// How cold the wind makes it feel.
#pragma once

#include <optional>

#include "base/quantity.h"
#include "base/sentence.h"

namespace dunnage {

/// Wind chill, metric form: air at most 10 C (50 F), wind at 10 m above 4.8 km/h (3 mph), else empty.
/// Source: Environment Canada and NWS, 2001; limits NCDC.
std::optional<Temperature> wind_chill(Temperature air, Speed wind);
/// The US form of the same, which differs by rounding of its constants.
std::optional<Temperature> wind_chill_us(Temperature air, Speed wind);
/// What frost does: "frostbite possible in 10 to 15 minutes". Source: Environment Canada benchmarks.
Sentence frostbite_words(Temperature chill);

}  // namespace dunnage
