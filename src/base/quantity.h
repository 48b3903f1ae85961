// SPDX-License-Identifier: MIT
// A number with a dimension. Holds SI inside, goes in and out only through a named unit, so that
// a pound never meets a kilogram and a length on the ground never meets a length on paper.
#pragma once

#include <algorithm>
#include <cmath>
#include <compare>

namespace dunnage {

/// Kinds keep apart quantities of one dimension that must never be mixed.
struct Plain {};       ///< ordinary physics: may be multiplied and divided freely
struct OnPaper {};     ///< a length on a page
struct SoundLevel {};  ///< a sound pressure level in dB(A)
struct LineLevel {};   ///< a voltage level in dBu
struct HeatGap {};     ///< a temperature difference

/// A quantity of dimension kg^Kg * m^M * s^S * A^A. Default: zero.
template <int Kg, int M, int S, int A, class Kind = Plain>
class Quantity {
 public:
  constexpr Quantity() = default;
  /// From and to the coherent SI unit. For the unit table and for formulas that print their unit.
  static constexpr Quantity from_si(double value) { return Quantity(value); }
  constexpr double si() const { return value_; }

  constexpr auto operator<=>(const Quantity&) const = default;
  constexpr Quantity operator+(Quantity o) const { return Quantity(value_ + o.value_); }
  constexpr Quantity operator-(Quantity o) const { return Quantity(value_ - o.value_); }
  constexpr Quantity operator-() const { return Quantity(-value_); }
  constexpr Quantity operator*(double k) const { return Quantity(value_ * k); }
  constexpr Quantity operator/(double k) const { return Quantity(value_ / k); }
  constexpr double operator/(Quantity o) const { return value_ / o.value_; }
  constexpr Quantity& operator+=(Quantity o) {
    value_ += o.value_;
    return *this;
  }
  constexpr Quantity& operator-=(Quantity o) {
    value_ -= o.value_;
    return *this;
  }
  friend constexpr Quantity operator*(double k, Quantity q) { return Quantity(k * q.value_); }

 private:
  constexpr explicit Quantity(double value) : value_(value) {}
  double value_ = 0.0;
};

/// Products and quotients of plain quantities carry the product of their dimensions.
template <int K1, int M1, int S1, int A1, int K2, int M2, int S2, int A2>
constexpr auto operator*(Quantity<K1, M1, S1, A1> a, Quantity<K2, M2, S2, A2> b) {
  if constexpr (K1 + K2 == 0 && M1 + M2 == 0 && S1 + S2 == 0 && A1 + A2 == 0)
    return a.si() * b.si();
  else
    return Quantity<K1 + K2, M1 + M2, S1 + S2, A1 + A2>::from_si(a.si() * b.si());
}
template <int K1, int M1, int S1, int A1, int K2, int M2, int S2, int A2>
requires(K1 != K2 || M1 != M2 || S1 != S2 || A1 != A2) constexpr auto operator/(Quantity<K1, M1, S1, A1> a,
                                                                                Quantity<K2, M2, S2, A2> b) {
  return Quantity<K1 - K2, M1 - M2, S1 - S2, A1 - A2>::from_si(a.si() / b.si());
}

using Mass = Quantity<1, 0, 0, 0>;
using Length = Quantity<0, 1, 0, 0>;
using Paper = Quantity<0, 1, 0, 0, OnPaper>;
using Area = Quantity<0, 2, 0, 0>;
using Volume = Quantity<0, 3, 0, 0>;
using Duration = Quantity<0, 0, 1, 0>;
using Frequency = Quantity<0, 0, -1, 0>;
using Speed = Quantity<0, 1, -1, 0>;
using Acceleration = Quantity<0, 1, -2, 0>;
using Force = Quantity<1, 1, -2, 0>;
using Pressure = Quantity<1, -1, -2, 0>;
using Moment = Quantity<1, 2, -2, 0>;
using Density = Quantity<1, -3, 0, 0>;
using Power = Quantity<1, 2, -3, 0>;
using Current = Quantity<0, 0, 0, 1>;
using Voltage = Quantity<1, 2, -3, -1>;
using Resistance = Quantity<1, 2, -3, -2>;
using Sound = Quantity<0, 0, 0, 0, SoundLevel>;
using Line = Quantity<0, 0, 0, 0, LineLevel>;
using TemperatureGap = Quantity<0, 0, 0, 0, HeatGap>;

/// A temperature, which has no natural zero: it cannot be added, only compared and subtracted.
class Temperature {
 public:
  constexpr Temperature() = default;
  static constexpr Temperature kelvin(double k) { return Temperature(k); }
  static constexpr Temperature celsius(double c) { return Temperature(c + 273.15); }
  static constexpr Temperature fahrenheit(double f) { return Temperature((f + 459.67) * 5.0 / 9.0); }
  constexpr double in_kelvin() const { return kelvin_; }
  constexpr double in_celsius() const { return kelvin_ - 273.15; }
  constexpr double in_fahrenheit() const { return kelvin_ * 9.0 / 5.0 - 459.67; }
  static constexpr Temperature from_si(double k) { return Temperature(k); }
  constexpr double si() const { return kelvin_; }
  constexpr auto operator<=>(const Temperature&) const = default;
  constexpr TemperatureGap operator-(Temperature o) const { return TemperatureGap::from_si(kelvin_ - o.kelvin_); }

 private:
  constexpr explicit Temperature(double k) : kelvin_(k) {}
  double kelvin_ = 273.15;
};

/// A unit: how much of the SI unit it is. `3 * pound` makes a Mass, `mass.in...` is `mass / pound`.
template <class Q>
struct Unit {
  double si;
};
template <class Q>
constexpr Q operator*(double n, Unit<Q> u) {
  return Q::from_si(n * u.si);
}
/// The number of units in a quantity.
template <int Kg, int M, int S, int A, class Kind>
constexpr double operator/(Quantity<Kg, M, S, A, Kind> q, Unit<Quantity<Kg, M, S, A, Kind>> u) {
  return q.si() / u.si;
}

// Factors are exact: NIST SP 811 (2008), Appendix B.8.
namespace unit {
inline constexpr Unit<Mass> kilogram{1.0}, gram{1e-3}, pound{0.45359237}, ounce{0.45359237 / 16};
inline constexpr Unit<Mass> tonne{1000.0};
inline constexpr Unit<Length> metre{1.0}, centimetre{1e-2}, millimetre{1e-3}, inch{0.0254};
inline constexpr Unit<Length> foot{0.3048}, yard{0.9144}, mile{1609.344}, kilometre{1000.0};
inline constexpr Unit<Paper> paper_mm{1e-3}, paper_in{0.0254}, point{0.0254 / 72};
inline constexpr Unit<Area> square_metre{1.0}, square_foot{0.09290304};
inline constexpr Unit<Volume> litre{1e-3}, us_gallon{3.785411784e-3}, us_quart{0.946352946e-3};
inline constexpr Unit<Duration> second{1.0}, minute{60.0}, hour{3600.0};
inline constexpr Unit<Frequency> hertz{1.0}, kilohertz{1e3}, megahertz{1e6};
inline constexpr Unit<Speed> metre_per_second{1.0}, mile_per_hour{0.44704}, knot{1852.0 / 3600};
inline constexpr Unit<Speed> kilometre_per_hour{1.0 / 3.6};
inline constexpr Unit<Acceleration> metre_per_second2{1.0};
inline constexpr Unit<Force> newton{1.0}, kilonewton{1e3}, pound_force{4.4482216152605};
inline constexpr Unit<Pressure> pascal{1.0}, pound_per_square_foot{4.4482216152605 / 0.09290304};
inline constexpr Unit<Moment> newton_metre{1.0};
inline constexpr Unit<Density> kilogram_per_cubic_metre{1.0};
inline constexpr Unit<Power> watt{1.0}, kilowatt{1e3};
inline constexpr Unit<Current> ampere{1.0};
inline constexpr Unit<Voltage> volt{1.0};
inline constexpr Unit<Resistance> ohm{1.0};
inline constexpr Unit<Sound> decibel_a{1.0};
inline constexpr Unit<Line> decibel_u{1.0};
inline constexpr Unit<TemperatureGap> kelvin{1.0}, fahrenheit_degree{5.0 / 9};
}  // namespace unit

/// Standard acceleration of free fall, exact (NIST SP 811, Appendix B.8).
inline constexpr Acceleration standard_gravity = 9.80665 * unit::metre_per_second2;

/// Whole steps that hold `count` at least: rounds up, after snapping at 1e-9 relative so that what
/// is 83 but for the last bits stays 83. For loads.
inline double steps_up(double count) {
  const double near = std::round(count);
  return std::abs(count - near) <= 1e-9 * std::max(1.0, std::abs(near)) ? near : std::ceil(count);
}
/// Whole steps that `count` holds at most, snapped likewise. For capacities.
inline double steps_down(double count) {
  const double near = std::round(count);
  return std::abs(count - near) <= 1e-9 * std::max(1.0, std::abs(near)) ? near : std::floor(count);
}

}  // namespace dunnage
