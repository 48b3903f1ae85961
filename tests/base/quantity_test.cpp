// SPDX-License-Identifier: MIT
// Quantities keep dimensions apart, and rounding never lies about a whole number. What must not compile at
// all is also shown in tests/base/does_not_compile.
#include "base/quantity.h"

#include <catch2/catch.hpp>
#include <type_traits>

using namespace dunnage;

namespace {

template <class A, class B>
concept Adds = requires(A a, B b) {
  a + b;
};
template <class A, class B>
concept Compares = requires(A a, B b) {
  a < b;
};
template <class A, class B>
concept Multiplies = requires(A a, B b) {
  a* b;
};

static_assert(Adds<Mass, Mass>);
static_assert(!Adds<Mass, Force>, "a mass is not a weight");
static_assert(!Adds<Mass, Length>);
static_assert(!Adds<Mass, double>, "a bare number has no unit");
static_assert(!Adds<Length, Paper>, "the ground is not the page");
static_assert(!Compares<Length, Paper>);
static_assert(!Multiplies<Paper, Length>);
static_assert(!Adds<Temperature, Temperature>, "20 C and 20 C are not 40 C");
static_assert(!Adds<Sound, Line>);
static_assert(!Adds<Sound, double>);
static_assert(!std::is_convertible_v<double, Mass>);
static_assert(!std::is_convertible_v<Mass, double>);
static_assert(std::is_same_v<decltype(Mass() * Acceleration()), Force>);
static_assert(std::is_same_v<decltype(Force() * Length()), Moment>);
static_assert(std::is_same_v<decltype(Force() / Area()), Pressure>);
static_assert(std::is_same_v<decltype(Mass() / Mass()), double>);
static_assert(std::is_same_v<decltype(Temperature() - Temperature()), TemperatureGap>);

}  // namespace

TEST_CASE("A mass under gravity is a force") {
  const Force weight = (83 * unit::pound) * standard_gravity;
  CHECK(weight / unit::pound_force == Approx(83));
}

TEST_CASE("Loads round up and capacities down, but a whole number stays whole") {
  const Mass mass = 83 * unit::pound;
  const double pounds = Mass::from_si(mass.si() * 3 / 3 + 1e-12) / unit::pound;
  CHECK(steps_up(pounds) == 83);
  CHECK(steps_down(pounds) == 83);
  CHECK(steps_up(83.001) == 84);
  CHECK(steps_down(83.999) == 83);
}

TEST_CASE("Temperatures go in and out by their scale") {
  CHECK(Temperature::fahrenheit(32).in_celsius() == Approx(0).margin(1e-9));
  CHECK(Temperature::celsius(37).in_fahrenheit() == Approx(98.6));
  CHECK((Temperature::celsius(30) - Temperature::celsius(10)) / unit::kelvin == Approx(20));
}
