// SPDX-License-Identifier: MIT
// Wind levels in the unit of the meter in hand.
#include "check/meter.h"

#include <algorithm>
#include <cmath>

#include "formula/wind.h"

namespace dunnage {

std::string_view meter_of(const House& house) {
  if (!house.meter.empty()) return house.meter;
  return house.units == UnitSystem::us ? "mph" : "m/s";
}

Speed whole_units_down(Speed gust, std::string_view meter) {
  return steps_down(gust / meter_step(meter)) * meter_step(meter);
}

std::string gust_words(Speed gust, std::string_view meter) {
  return plain(steps_down(gust / meter_step(meter)), 0) + " " + std::string(meter);
}

WindCard wind_card(const Structure& structure, std::optional<Speed> down, Sentence governs, std::string_view meter) {
  WindCard card;
  card.meter = std::string(meter);
  card.maker_known = structure.maker_gust.has_value();
  if (down) {
    card.down = whole_units_down(*down, meter);
    card.ready = whole_units_down(*card.down * ready_share, meter);
    card.start = whole_units_down(*card.down * start_share, meter);
    card.governs = std::move(governs);
  }
  if (structure.strike_minutes) card.strike = structure.strike_minutes->value;
  if (structure.strike_people) card.people = structure.strike_people->value;
  return card;
}

std::vector<CurvePoint> margin_curve(Speed holds, Speed end, std::string_view meter) {
  const Speed step = meter == "mph" ? 1 * unit::mile_per_hour : 1 * unit::metre_per_second;
  const int points = static_cast<int>(std::min(200.0, steps_up(end / step)));
  std::vector<CurvePoint> curve;
  for (int i = 1; i <= points; ++i) curve.push_back({step * i, std::pow(holds / (step * i), 2)});
  return curve;
}

}  // namespace dunnage
