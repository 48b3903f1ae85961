// SPDX-License-Identifier: MIT
// Rounding of an answer's figures, always to the careful side that the caller names.
#include "reckon/figure_words.h"

#include <cmath>

namespace dunnage {

double rounded_to(double value, int decimals, Rounding way) {
  const double scale = std::pow(10.0, decimals);
  const double steps = way == Rounding::up     ? steps_up(value * scale)
                       : way == Rounding::down ? steps_down(value * scale)
                                               : std::round(value * scale);
  return steps / scale + 0.0;  // what rounds to zero from below is zero
}

Said said(double value, int decimals, std::string unit, Rounding way) {
  return {rounded_to(value, decimals, way), std::move(unit)};
}

Said said(Mass mass, const Inputs& in, Rounding way) {
  return in.system == UnitSystem::us ? said(mass / unit::pound, 1, "lb", way)
                                     : said(mass / unit::kilogram, 1, "kg", way);
}
Said said(Length length, const Inputs& in, Rounding way) {
  return in.system == UnitSystem::us ? said(length / unit::foot, 1, "ft", way)
                                     : said(length / unit::metre, 2, "m", way);
}
Said said(Speed speed, const Inputs& in, Rounding way) {
  if (in.meter == "mph") return said(speed / unit::mile_per_hour, 1, "mph", way);
  if (in.meter == "km/h") return said(speed / unit::kilometre_per_hour, 1, "km/h", way);
  if (in.meter == "knots") return said(speed / unit::knot, 1, "knots", way);
  return said(speed / unit::metre_per_second, 1, "m/s", way);
}
Said said(Pressure pressure, const Inputs& in, Rounding way) {
  return in.system == UnitSystem::us ? said(pressure / unit::pound_per_square_foot, 2, "psf", way)
                                     : said(pressure / unit::pascal, 1, "Pa", way);
}
Said said(Force force, const Inputs& in, Rounding way) {
  return in.system == UnitSystem::us ? said(force / unit::pound_force, 0, "lbf", way)
                                     : said(force / unit::newton, 0, "N", way);
}
Said said(Volume volume, const Inputs& in, Rounding way) {
  return in.system == UnitSystem::us ? said(volume / unit::us_gallon, 1, "gal", way)
                                     : said(volume / unit::litre, 1, "l", way);
}
Said said(Temperature t, const Inputs& in, Rounding way) {
  return in.system == UnitSystem::us ? said(t.in_fahrenheit(), 1, "F", way) : said(t.in_celsius(), 1, "C", way);
}

void result(Answer& answer, const Said& figure) {
  answer.value = figure.value;
  answer.unit = figure.unit;
}

void also(Answer& answer, std::string what, std::string words) {
  answer.also.emplace_back(std::move(what), std::move(words));
}

std::string share_words(double share) { return plain(share * 100, 1) + " %"; }

}  // namespace dunnage
