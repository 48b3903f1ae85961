// SPDX-License-Identifier: MIT
// Heat index by the NWS regression.
#include "formula/heat.h"

#include <cmath>

#include "base/slack.h"

namespace dunnage {
namespace {

double polynomial(double t, double r) {
  return -42.379 + 2.04901523 * t + 10.14333127 * r - 0.22475541 * t * r - 0.00683783 * t * t - 0.05481717 * r * r +
         0.00122874 * t * t * r + 0.00085282 * t * r * r - 0.00000199 * t * t * r * r;
}

}  // namespace

Temperature heat_index_polynomial(Temperature air, double humidity) {
  return Temperature::fahrenheit(polynomial(air.in_fahrenheit(), humidity));
}

std::optional<Temperature> heat_index(Temperature air, double humidity) {
  const double t = air.in_fahrenheit(), r = humidity;
  if (falls_short(t, 68.0) || exceeds(t, 112.0) || r < 0 || r > 100) return std::nullopt;
  const double simple = 0.5 * (t + 61 + (t - 68) * 1.2 + 0.094 * r);
  const double mean = (simple + t) / 2;
  if (mean < 80) return Temperature::fahrenheit(mean);
  double index = polynomial(t, r);
  if (r < 13 && t >= 80) index -= (13 - r) / 4 * std::sqrt((17 - std::abs(t - 95)) / 17);
  if (r > 85 && t >= 80 && t <= 87) index += (r - 85) / 10 * ((87 - t) / 5);
  return Temperature::fahrenheit(index);
}

HeatBand heat_band(Temperature index) {
  const double f = index.in_fahrenheit();
  if (!falls_short(f, 125.0)) return HeatBand::extreme_danger;
  if (!falls_short(f, 103.0)) return HeatBand::danger;
  if (!falls_short(f, 90.0)) return HeatBand::extreme_caution;
  if (!falls_short(f, 80.0)) return HeatBand::caution;
  return HeatBand::none;
}

Sentence name(HeatBand band) {
  switch (band) {
    case HeatBand::none:
      return said("below the bands");
    case HeatBand::caution:
      return said("caution");
    case HeatBand::extreme_caution:
      return said("extreme caution");
    case HeatBand::danger:
      return said("danger");
    case HeatBand::extreme_danger:
      return said("extreme danger");
  }
  return {};
}

}  // namespace dunnage
