// SPDX-License-Identifier: MIT
// Wind chill in both printed forms.
#include "formula/cold.h"

#include <cmath>

#include "base/slack.h"

namespace dunnage {
namespace {
bool defined(Temperature air, Speed wind) {
  return !exceeds(air.in_celsius(), 10.0) && wind / unit::kilometre_per_hour > 4.8;
}
}  // namespace

std::optional<Temperature> wind_chill(Temperature air, Speed wind) {
  if (!defined(air, wind)) return std::nullopt;
  const double t = air.in_celsius(), v = std::pow(wind / unit::kilometre_per_hour, 0.16);
  return Temperature::celsius(13.12 + 0.6215 * t - 11.37 * v + 0.3965 * t * v);
}

std::optional<Temperature> wind_chill_us(Temperature air, Speed wind) {
  if (!defined(air, wind)) return std::nullopt;
  const double t = air.in_fahrenheit(), v = std::pow(wind / unit::mile_per_hour, 0.16);
  return Temperature::fahrenheit(35.74 + 0.6215 * t - 35.75 * v + 0.4275 * t * v);
}

Sentence frostbite_words(Temperature chill) {
  const double c = chill.in_celsius();
  if (c <= -35) return said("frostbite possible in 10 to 15 minutes or less");
  if (c <= -27) return said("frostbite possible when it lasts");
  return said("dress for it");
}

}  // namespace dunnage
