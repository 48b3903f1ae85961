// SPDX-License-Identifier: MIT
// Wind levels in the unit of the meter in hand.
#include "check/meter.h"

namespace dunnage {

std::string_view meter_of(const House& house) {
  if (!house.meter.empty()) return house.meter;
  return house.units == UnitSystem::us ? "mph" : "m/s";
}

Speed meter_step(std::string_view meter) {
  if (meter == "mph") return 1 * unit::mile_per_hour;
  if (meter == "km/h") return 1 * unit::kilometre_per_hour;
  if (meter == "knots") return 1 * unit::knot;
  return 1 * unit::metre_per_second;
}

Speed whole_units_down(Speed gust, std::string_view meter) {
  return steps_down(gust / meter_step(meter)) * meter_step(meter);
}

std::string gust_words(Speed gust, std::string_view meter) {
  return plain(steps_down(gust / meter_step(meter)), 0) + " " + std::string(meter);
}

std::string forecast_words(Speed gust, std::string_view meter) {
  return plain(steps_up(gust / meter_step(meter) * 10) / 10, 1) + " " + std::string(meter);
}

}  // namespace dunnage
