// SPDX-License-Identifier: MIT
// What a person types and what is printed back.
#include "base/unit.h"

#include <catch2/catch.hpp>
#include <set>

#include "base/range.h"

using namespace dunnage;

namespace {

double parsed(const char* text, Measure measure) {
  const ParsedQuantity result = parse_quantity(text, measure);
  INFO(text << ": " << result.problem.cause);
  REQUIRE(result.si);
  return *result.si;
}

/// "cause | hint"
std::string problem(const char* text, Measure measure) {
  const ParsedQuantity result = parse_quantity(text, measure);
  CHECK_FALSE(result.si);
  return result.problem.cause + " | " + result.problem.hint;
}

}  // namespace

TEST_CASE("Quantities are read in both systems") {
  CHECK(parsed("27 lb", Measure::mass) == Approx(27 * 0.45359237));
  CHECK(parsed("12.5kg", Measure::mass) == Approx(12.5));
  CHECK(parsed("2 lb 8 oz", Measure::mass) == Approx(2.5 * 0.45359237));
  CHECK(parsed("6 ft 4 in", Measure::length) == Approx(76 * 0.0254));
  CHECK(parsed("-20 in", Measure::length) == Approx(-0.508));
  CHECK(parsed("-1 ft 6 in", Measure::length) == Approx(-18 * 0.0254));
  CHECK(parsed("1 h 30 min", Measure::duration) == Approx(5400));
  CHECK(parsed("25 mph", Measure::speed) == Approx(11.176));
  CHECK(parsed("10 knots", Measure::speed) == Approx(18520.0 / 3600));
  CHECK(parsed("10 kn", Measure::speed) == parsed("10 knots", Measure::speed));
  CHECK(parsed("+4 dBu", Measure::line) == Approx(4));
  CHECK(parsed("4 ft2", Measure::area) == parsed("4 ft²", Measure::area));
  CHECK(parsed("-5 C", Measure::temperature) == Approx(268.15));
  CHECK(parsed("86 °F", Measure::temperature) == Approx(303.15));
  CHECK(parsed("540.125 MHz", Measure::frequency) == Approx(540.125e6));
}

TEST_CASE("What is no quantity is answered with the cause and the remedy") {
  CHECK(problem("27", Measure::mass) == "the number has no unit | write a unit, for example 27 lb or 12.5 kg");
  CHECK(problem("heavy", Measure::mass) ==
        "\"heavy\" is not a mass | write a number and a unit, for example 27 lb or 12.5 kg");
  CHECK(problem("", Measure::area) == "\"\" is not an area | write a number and a unit, for example 4 ft2 or 0.4 m2");
  CHECK(problem("27 KG", Measure::mass) == "\"KG\" is not a unit of mass | did you mean \"kg\"?");
  CHECK(problem("27 lbs", Measure::mass) == "\"lbs\" is not a unit of mass | write \"lb\"");
  CHECK(problem("27 stone", Measure::mass) == "\"stone\" is not a unit of mass | units of mass: kg, g, t, lb, oz");
  CHECK(problem("27 ft", Measure::mass) ==
        "\"ft\" is a unit of length, not of mass | write a mass, for example 27 lb or 12.5 kg");
  CHECK(problem("1,200 lb", Measure::mass) ==
        "there is a comma in the number | write 1200 for a thousand and two hundred, 0.5 for a half");
  CHECK(problem("4 in 6 ft", Measure::length) ==
        "\"ft\" cannot follow \"in\" | write the larger unit first, for example 6 ft 4 in or 1.9 m");
  for (const char* text : {"nan kg", "inf kg", "-inf kg", "1e400 kg", "0x10 kg", "- 5 kg", "5 kg -1 g", "kg"})
    problem(text, Measure::mass);
}

TEST_CASE("Lengths with x between share the last unit") {
  const ParsedLengths sides = parse_lengths("29 x 21 x 18 in", 3);
  REQUIRE(sides.lengths.size() == 3);
  CHECK(sides.lengths[0] / unit::inch == Approx(29));
  CHECK(sides.lengths[2] / unit::inch == Approx(18));
  CHECK(parse_lengths("0.6 m x 40 cm × 300mm", 3).lengths[1] / unit::metre == Approx(0.4));
  CHECK(parse_lengths("6 ft 4 in x 10 ft", 2).lengths[0] / unit::inch == Approx(76));
  CHECK(parse_lengths("10 x 10", 2).problem.cause == "the number has no unit");
  CHECK(parse_lengths("10 ft", 2).problem.cause == "expected 2 lengths with x between, found 1");
  CHECK(parse_lengths("10 ft", 2).problem.hint == "write it like 10 x 10 ft");
}

TEST_CASE("Every unit reads back what it is") {
  for (const UnitName& unit : unit_names())
    CHECK(parsed(("2 " + std::string(unit.symbol)).c_str(), unit.measure) == Approx(2 * unit.factor + unit.offset));
}

TEST_CASE("A range names a unit, and holds its own bounds") {
  std::set<std::string_view> names;
  for (const Range* range : range::all()) {
    CHECK(names.insert(range->name).second);
    for (const double bound : {range->low, range->high}) {
      const std::string text = plain(bound, 8) + " " + std::string(range->symbol);
      CHECK(within(*range, parsed(text.c_str(), range->measure)));
    }
  }
  CHECK(words(range::case_mass) == "0.01 kg to 2000 kg");
  CHECK_FALSE(within(range::case_mass, 2000.1));
}

TEST_CASE("Masses print in whole pounds or half kilograms") {
  const UnitSystem us = UnitSystem::us, metric = UnitSystem::metric;
  CHECK(print(83 * unit::pound, us, Rounding::up).text() == "83 lb");
  CHECK(print(83 * unit::pound, us, Rounding::down).text() == "83 lb");
  CHECK(print(83.1 * unit::pound, us, Rounding::up).text() == "84 lb");
  CHECK(print(83.9 * unit::pound, us, Rounding::down).text() == "83 lb");
  CHECK(print(12.1 * unit::kilogram, metric, Rounding::up).text() == "12.5 kg");
  CHECK(print(12.9 * unit::kilogram, metric, Rounding::down).text() == "12.5 kg");
  CHECK(print(0.1 * unit::kilogram + 0.2 * unit::kilogram + 0.2 * unit::kilogram, metric, Rounding::up).text() ==
        "0.5 kg");
}

TEST_CASE("Other figures print as a crew reads them") {
  const UnitSystem us = UnitSystem::us, metric = UnitSystem::metric;
  CHECK(print(76 * unit::inch, us, Rounding::nearest).text() == "6 ft 4 in");
  CHECK(print(72 * unit::inch, us, Rounding::nearest).text() == "6 ft");
  CHECK(print(9 * unit::inch, us, Rounding::nearest).text() == "9 in");
  CHECK(print(50 * unit::foot, us, Rounding::nearest).text() == "50 ft");
  CHECK(print(1.9 * unit::metre, metric, Rounding::nearest).text() == "1.90 m");
  CHECK(print_small(29 * unit::inch, us, Rounding::nearest).text() == "29 in");
  CHECK(print_small(29 * unit::inch, metric, Rounding::up).text() == "74 cm");
  CHECK(print(25 * unit::mile_per_hour, "mph", Rounding::down).text() == "25 mph");
  CHECK(print(25 * unit::mile_per_hour, "m/s", Rounding::down).text() == "11.1 m/s");
  CHECK(print(25 * unit::mile_per_hour, "km/h", Rounding::down).text() == "40 km/h");
  CHECK(print(25 * unit::mile_per_hour, "knots", Rounding::down).text() == "21 knots");
  CHECK(print(Temperature::celsius(-0.2), metric, Rounding::nearest).text() == "0 °C");
  CHECK(plain(12.50, 2) == "12.5");
  CHECK(plain(-0.001, 2) == "0");
}
