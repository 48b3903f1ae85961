// SPDX-License-Identifier: MIT
// Wind pressure, exposure and the wind scale.
#include "formula/wind.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace dunnage {

using namespace unit;

Pressure wind_pressure(Speed gust, Density air) { return 0.5 * (air * (gust * gust)); }

Speed gust_of(Pressure pressure, Density air) {
  assert(pressure >= Pressure{});
  return std::sqrt(2 * pressure.si() / air.si()) * metre_per_second;
}

std::optional<ExposureFigures> exposure_at(Terrain terrain, Length height, Speed basic_wind) {
  struct Row {
    double roughness, least_height;
  };
  constexpr std::array<Row, 5> kTable41{{{0.003, 1}, {0.01, 1}, {0.05, 2}, {0.3, 5}, {1.0, 10}}};
  const double above = height / metre;
  if (above < 0 || above > 200) return std::nullopt;
  const Row row = kTable41[static_cast<std::size_t>(terrain)];
  const double log_height = std::log(std::max(above, row.least_height) / row.roughness);
  ExposureFigures f;
  f.terrain_factor = 0.19 * std::pow(row.roughness / 0.05, 0.07);
  f.roughness = f.terrain_factor * log_height;
  f.turbulence = 1 / log_height;
  f.mean = basic_wind * f.roughness;
  f.basic = wind_pressure(basic_wind);
  f.peak = wind_pressure(f.mean) * (1 + 7 * f.turbulence);
  f.exposure = (1 + 7 * f.turbulence) * f.roughness * f.roughness;
  return f;
}

std::optional<double> height_factor_asce(Exposure exposure, Length height) {
  struct Row {
    double power, gradient_feet;
  };
  constexpr std::array<Row, 3> kRows{{{7, 1200}, {9.5, 900}, {11.5, 700}}};
  const Row row = kRows[static_cast<std::size_t>(exposure)];
  const double feet = std::max(height / foot, 15.0);
  if (feet > row.gradient_feet) return std::nullopt;
  return 2.01 * std::pow(feet / row.gradient_feet, 2 / row.power);
}

Pressure wind_pressure_asce(Speed gust, double height_factor, double ground_factor, double direction_factor) {
  const double v = gust / metre_per_second;
  return 0.613 * height_factor * ground_factor * direction_factor * v * v * pascal;
}

namespace {
struct ForceRow {
  int from, to;
  std::string_view name, signs;
};
constexpr std::array<ForceRow, 13> kForces{{
    {0, 0, "calm", "smoke rises straight up"},
    {1, 3, "light air", "smoke drifts; vanes do not turn"},
    {4, 6, "light breeze", "felt on the face; leaves rustle"},
    {7, 10, "gentle breeze", "leaves and twigs move all the time; a light flag stands out"},
    {11, 16, "moderate breeze", "dust and loose paper lift; small branches move"},
    {17, 21, "fresh breeze", "small trees in leaf begin to sway"},
    {22, 27, "strong breeze", "large branches move; an umbrella is hard to hold"},
    {28, 33, "near gale", "whole trees move; walking against it is hard"},
    {34, 40, "gale", "twigs break off; walking is very hard"},
    {41, 47, "strong gale", "slight damage to buildings; branches fall"},
    {48, 55, "storm", "trees are uprooted"},
    {56, 63, "violent storm", "damage far and wide"},
    {64, 0, "hurricane", "destruction"},
}};
const ForceRow& force_row(int force) {
  assert(force >= 0 && force <= 12);
  return kForces[static_cast<std::size_t>(force)];
}
}  // namespace

int wind_force(Speed mean) {
  const double knots = std::round(mean / knot);
  int force = 0;
  while (force < 12 && knots >= force_row(force + 1).from) ++force;
  return force;
}
std::string_view wind_force_name(int force) { return force_row(force).name; }
std::string_view wind_force_signs(int force) { return force_row(force).signs; }
ForceBand wind_force_knots(int force) { return {force_row(force).from, force_row(force).to}; }

}  // namespace dunnage
