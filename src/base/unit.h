// SPDX-License-Identifier: MIT
// Text to quantities and back. The one table of units, the one place that rounds.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"

namespace dunnage {

enum class UnitSystem { metric, us };

/// What a unit measures; also the word used in messages ("expected a mass").
enum class Measure {
  mass,
  length,
  paper,
  area,
  volume,
  duration,
  frequency,
  speed,
  force,
  pressure,
  density,
  power,
  current,
  voltage,
  resistance,
  sound,
  line,
  temperature,
  angle
};
const char* name(Measure measure);

/// The measure of a quantity type; nothing for types that are never typed by a person.
template <class Q>
inline constexpr std::optional<Measure> measure_of = std::nullopt;
template <>
inline constexpr std::optional<Measure> measure_of<Mass> = Measure::mass;
template <>
inline constexpr std::optional<Measure> measure_of<Length> = Measure::length;
template <>
inline constexpr std::optional<Measure> measure_of<Paper> = Measure::paper;
template <>
inline constexpr std::optional<Measure> measure_of<Area> = Measure::area;
template <>
inline constexpr std::optional<Measure> measure_of<Volume> = Measure::volume;
template <>
inline constexpr std::optional<Measure> measure_of<Duration> = Measure::duration;
template <>
inline constexpr std::optional<Measure> measure_of<Frequency> = Measure::frequency;
template <>
inline constexpr std::optional<Measure> measure_of<Speed> = Measure::speed;
template <>
inline constexpr std::optional<Measure> measure_of<Force> = Measure::force;
template <>
inline constexpr std::optional<Measure> measure_of<Pressure> = Measure::pressure;
template <>
inline constexpr std::optional<Measure> measure_of<Density> = Measure::density;
template <>
inline constexpr std::optional<Measure> measure_of<Power> = Measure::power;
template <>
inline constexpr std::optional<Measure> measure_of<Current> = Measure::current;
template <>
inline constexpr std::optional<Measure> measure_of<Voltage> = Measure::voltage;
template <>
inline constexpr std::optional<Measure> measure_of<Resistance> = Measure::resistance;
template <>
inline constexpr std::optional<Measure> measure_of<Sound> = Measure::sound;
template <>
inline constexpr std::optional<Measure> measure_of<Line> = Measure::line;
template <>
inline constexpr std::optional<Measure> measure_of<Temperature> = Measure::temperature;

/// One spelling of one unit. Temperatures: si = value * factor + offset.
struct UnitName {
  std::string_view symbol;
  Measure measure;
  double factor;
  double offset;
  UnitSystem system;
};
/// Every unit that can be typed, in the order `list units` prints.
const std::vector<UnitName>& unit_names();

/// A number between zero and what anybody would type in any unit: a slip, which formulas would divide by.
constexpr bool is_too_small(double typed) { return typed != 0 && typed > -1e-9 && typed < 1e-9; }

/// Why a text is no quantity of the wanted measure.
struct QuantityProblem {
  std::string cause;  ///< "the number has no unit"
  std::string hint;   ///< "write a unit, for example 27 lb or 12.5 kg"
};
struct ParsedQuantity {
  std::optional<double> si;
  QuantityProblem problem;
};
/// "27 lb", "12.5kg", "6 ft 4 in" (parts of one measure, each finer than the one before), "-5 C".
/// A decimal point, no comma. Not-a-number, infinity and a bare number are problems.
ParsedQuantity parse_quantity(std::string_view text, Measure measure);

/// "29 x 21 x 18 in", "10 x 10 ft", "0.6 m x 0.4 m x 0.3 m": `count` lengths, a unit after the last serves
/// those without one.
struct ParsedLengths {
  std::vector<Length> lengths;
  QuantityProblem problem;  ///< cause empty: fine
};
ParsedLengths parse_lengths(std::string_view text, std::size_t count);

/// Which way a number printed may err. Loads round up, capacities down, measurements to nearest.
enum class Rounding { up, down, nearest };

/// The unit of a ground length printed in feet and inches: its `value` counts inches.
inline constexpr const char* feet_and_inches = "ft in";

/// A figure rounded for print: value in the unit printed, its unit, and how many decimals.
struct Printed {
  double value = 0;
  std::string unit;
  int decimals = 0;
  std::string text() const;    ///< "83 lb"
  std::string number() const;  ///< "83"; of feet and inches, the inches
};

/// Masses print in whole pounds or half kilograms.
Printed print(Mass, UnitSystem, Rounding);
/// Ground lengths: feet and inches as "6 ft 4 in" below 20 ft, else feet; metres to 0.01.
Printed print(Length, UnitSystem, Rounding);
/// Case sizes and grip heights: whole inches or centimetres.
Printed print_small(Length, UnitSystem, Rounding);
Printed print(Force, UnitSystem, Rounding);
Printed print(Pressure, UnitSystem, Rounding);
Printed print(Area, UnitSystem, Rounding);
Printed print(Volume, UnitSystem, Rounding);
Printed print(Temperature, UnitSystem, Rounding);
/// A speed in the unit that the house's meter reads: "mph", "km/h", "m/s" or "knots". Whole units;
/// tenths for m/s.
Printed print(Speed, std::string_view meter, Rounding);
/// One of the unit that a meter reads.
Speed meter_step(std::string_view meter);
/// A forecast as typed, up to tenths of the meter's unit, whatever the meter shows: it is not changed.
double forecast_figure(Speed, std::string_view meter);
std::string forecast_words(Speed, std::string_view meter);
/// Plain number with at most `decimals` places and no trailing zeros.
std::string plain(double value, int decimals);

}  // namespace dunnage
