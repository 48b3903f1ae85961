// SPDX-License-Identifier: MIT
// The table of units and the rounding of what is printed. Factors come from base/quantity.h.
#include "base/unit.h"

#include <fmt/format.h>

#include <cassert>
#include <cmath>

namespace dunnage {

const char* name(Measure measure) {
  switch (measure) {
    case Measure::mass:
      return "mass";
    case Measure::length:
      return "length";
    case Measure::paper:
      return "length on paper";
    case Measure::area:
      return "area";
    case Measure::volume:
      return "volume";
    case Measure::duration:
      return "time";
    case Measure::frequency:
      return "frequency";
    case Measure::speed:
      return "speed";
    case Measure::force:
      return "force";
    case Measure::pressure:
      return "pressure";
    case Measure::density:
      return "density";
    case Measure::power:
      return "power";
    case Measure::current:
      return "current";
    case Measure::voltage:
      return "voltage";
    case Measure::resistance:
      return "resistance";
    case Measure::sound:
      return "sound level";
    case Measure::line:
      return "line level";
    case Measure::temperature:
      return "temperature";
    case Measure::angle:
      return "angle";
  }
  return "";
}

const std::vector<UnitName>& unit_names() {
  using M = Measure;
  constexpr UnitSystem si = UnitSystem::metric, us = UnitSystem::us;
  static const std::vector<UnitName> table = {
      {"kg", M::mass, unit::kilogram.si, 0, si},
      {"g", M::mass, unit::gram.si, 0, si},
      {"t", M::mass, unit::tonne.si, 0, si},
      {"lb", M::mass, unit::pound.si, 0, us},
      {"oz", M::mass, unit::ounce.si, 0, us},
      {"m", M::length, unit::metre.si, 0, si},
      {"cm", M::length, unit::centimetre.si, 0, si},
      {"mm", M::length, unit::millimetre.si, 0, si},
      {"km", M::length, unit::kilometre.si, 0, si},
      {"in", M::length, unit::inch.si, 0, us},
      {"ft", M::length, unit::foot.si, 0, us},
      {"yd", M::length, unit::yard.si, 0, us},
      {"mi", M::length, unit::mile.si, 0, us},
      {"mm", M::paper, unit::paper_mm.si, 0, si},
      {"cm", M::paper, 10 * unit::paper_mm.si, 0, si},
      {"in", M::paper, unit::paper_in.si, 0, us},
      {"pt", M::paper, unit::point.si, 0, us},
      {"m2", M::area, unit::square_metre.si, 0, si},
      {"m²", M::area, unit::square_metre.si, 0, si},
      {"mm2", M::area, 1e-6, 0, si},
      {"mm²", M::area, 1e-6, 0, si},
      {"ft2", M::area, unit::square_foot.si, 0, us},
      {"ft²", M::area, unit::square_foot.si, 0, us},
      {"l", M::volume, unit::litre.si, 0, si},
      {"ml", M::volume, 1e-3 * unit::litre.si, 0, si},
      {"gal", M::volume, unit::us_gallon.si, 0, us},
      {"qt", M::volume, unit::us_quart.si, 0, us},
      {"s", M::duration, unit::second.si, 0, si},
      {"min", M::duration, unit::minute.si, 0, si},
      {"h", M::duration, unit::hour.si, 0, si},
      {"Hz", M::frequency, unit::hertz.si, 0, si},
      {"kHz", M::frequency, unit::kilohertz.si, 0, si},
      {"MHz", M::frequency, unit::megahertz.si, 0, si},
      {"m/s", M::speed, unit::metre_per_second.si, 0, si},
      {"km/h", M::speed, unit::kilometre_per_hour.si, 0, si},
      {"mph", M::speed, unit::mile_per_hour.si, 0, us},
      {"kn", M::speed, unit::knot.si, 0, si},
      {"knots", M::speed, unit::knot.si, 0, si},
      {"N", M::force, unit::newton.si, 0, si},
      {"kN", M::force, unit::kilonewton.si, 0, si},
      {"lbf", M::force, unit::pound_force.si, 0, us},
      {"Pa", M::pressure, unit::pascal.si, 0, si},
      {"kPa", M::pressure, 1e3 * unit::pascal.si, 0, si},
      {"psf", M::pressure, unit::pound_per_square_foot.si, 0, us},
      {"kg/m3", M::density, unit::kilogram_per_cubic_metre.si, 0, si},
      {"kg/m³", M::density, unit::kilogram_per_cubic_metre.si, 0, si},
      {"W", M::power, unit::watt.si, 0, si},
      {"kW", M::power, unit::kilowatt.si, 0, si},
      {"VA", M::power, unit::watt.si, 0, si},
      {"A", M::current, unit::ampere.si, 0, si},
      {"V", M::voltage, unit::volt.si, 0, si},
      {"ohm", M::resistance, unit::ohm.si, 0, si},
      {"dBA", M::sound, unit::decibel_a.si, 0, si},
      {"dBu", M::line, unit::decibel_u.si, 0, si},
      {"dB", M::line, unit::decibel_u.si, 0, si},
      {"C", M::temperature, 1, 273.15, si},
      {"°C", M::temperature, 1, 273.15, si},
      {"F", M::temperature, 5.0 / 9, 459.67 * 5 / 9, us},
      {"°F", M::temperature, 5.0 / 9, 459.67 * 5 / 9, us},
      {"K", M::temperature, 1, 0, si},
      {"deg", M::angle, 3.14159265358979323846 / 180, 0, si},
  };
  return table;
}

namespace {

/// Rounded to a whole number of `step`s the way asked. Negative zero is zero.
double rounded(double value, double step, Rounding way) {
  const double count = value / step;
  double whole = 0;
  switch (way) {
    case Rounding::up:
      whole = steps_up(count);
      break;
    case Rounding::down:
      whole = steps_down(count);
      break;
    case Rounding::nearest:
      whole = std::round(count);
      break;
  }
  return whole * step + 0.0;
}

Printed figure(double value, double step, int decimals, std::string unit, Rounding way) {
  return {rounded(value, step, way), std::move(unit), decimals};
}

}  // namespace

std::string plain(double value, int decimals) {
  assert(std::isfinite(value) && "what is printed is a number");
  std::string text = fmt::format("{:.{}f}", value, decimals);
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
  }
  return text == "-0" ? "0" : text;
}

std::string Printed::number() const { return fmt::format("{:.{}f}", value, decimals); }

std::string Printed::text() const {
  if (unit != feet_and_inches) return number() + " " + unit;
  const long inches = std::lround(std::abs(value));
  const std::string sign = value < 0 ? "-" : "";
  if (inches < 12) return fmt::format("{}{} in", sign, inches);
  if (inches % 12 == 0) return fmt::format("{}{} ft", sign, inches / 12);
  return fmt::format("{}{} ft {} in", sign, inches / 12, inches % 12);
}

Printed print(Mass mass, UnitSystem system, Rounding way) {
  if (system == UnitSystem::us) return figure(mass / unit::pound, 1, 0, "lb", way);
  return figure(mass / unit::kilogram, 0.5, 1, "kg", way);
}

Printed print(Length length, UnitSystem system, Rounding way) {
  if (system == UnitSystem::metric) return figure(length / unit::metre, 0.01, 2, "m", way);
  if (std::abs(length / unit::foot) >= 20) return figure(length / unit::foot, 1, 0, "ft", way);
  return figure(length / unit::inch, 1, 0, feet_and_inches, way);
}

Printed print_small(Length length, UnitSystem system, Rounding way) {
  if (system == UnitSystem::us) return figure(length / unit::inch, 1, 0, "in", way);
  return figure(length / unit::centimetre, 1, 0, "cm", way);
}

Printed print(Force force, UnitSystem system, Rounding way) {
  if (system == UnitSystem::us) return figure(force / unit::pound_force, 1, 0, "lbf", way);
  if (std::abs(force / unit::kilonewton) >= 10) return figure(force / unit::kilonewton, 0.1, 1, "kN", way);
  return figure(force / unit::newton, 1, 0, "N", way);
}

Printed print(Pressure pressure, UnitSystem system, Rounding way) {
  if (system == UnitSystem::us) return figure(pressure / unit::pound_per_square_foot, 0.1, 1, "psf", way);
  return figure(pressure / unit::pascal, 1, 0, "Pa", way);
}

Printed print(Area area, UnitSystem system, Rounding way) {
  if (system == UnitSystem::us) return figure(area / unit::square_foot, 0.1, 1, "ft²", way);
  return figure(area / unit::square_metre, 0.01, 2, "m²", way);
}

Printed print(Volume volume, UnitSystem system, Rounding way) {
  if (system == UnitSystem::us) return figure(volume / unit::us_gallon, 0.5, 1, "gal", way);
  return figure(volume / unit::litre, 0.5, 1, "l", way);
}

Printed print(Temperature temperature, UnitSystem system, Rounding way) {
  if (system == UnitSystem::us) return figure(temperature.in_fahrenheit(), 1, 0, "°F", way);
  return figure(temperature.in_celsius(), 1, 0, "°C", way);
}

Speed meter_step(std::string_view meter) {
  if (meter == "mph") return 1 * unit::mile_per_hour;
  if (meter == "km/h") return 1 * unit::kilometre_per_hour;
  if (meter == "knots") return 1 * unit::knot;
  assert(meter == "m/s" && "the four units that a wind meter reads");
  return 1 * unit::metre_per_second;
}

Printed print(Speed speed, std::string_view meter, Rounding way) {
  const bool tenths = meter == "m/s";
  return figure(speed / meter_step(meter), tenths ? 0.1 : 1, tenths ? 1 : 0, std::string(meter), way);
}

double forecast_figure(Speed speed, std::string_view meter) { return steps_up(speed / meter_step(meter) * 10) / 10; }

std::string forecast_words(Speed speed, std::string_view meter) {
  return plain(forecast_figure(speed, meter), 1) + " " + std::string(meter);
}

}  // namespace dunnage
