// SPDX-License-Identifier: MIT
// Balance of moments about a tipping line.
#include "formula/overturning.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace dunnage {

std::optional<Length> tipping_lever(int feet, Length radius) {
  if (feet < 3) return std::nullopt;
  return radius * std::cos(std::numbers::pi / feet);
}

Length tipping_lever(Length base_length, Length base_width) { return std::min(base_length, base_width) / 2.0; }

Moment overturning_moment(const std::vector<WindArea>& areas, Pressure pressure) {
  Moment sum;
  for (const WindArea& a : areas) sum += pressure * a.area * a.height * a.coefficient;
  return sum;
}

Moment holding_moment(const std::vector<HoldingMass>& masses) {
  Moment sum;
  for (const HoldingMass& m : masses) sum += m.mass * standard_gravity * m.inside;
  return sum;
}

Mass mass_against_tipping(Moment overturning, Moment holding, Length lever, BalanceFactors factors) {
  const Moment lacks = overturning * factors.wind - holding * factors.holds;
  const Force force = lacks / lever;
  return std::max((force / standard_gravity) / factors.holds, Mass{});
}

std::optional<Speed> tipping_gust(const std::vector<WindArea>& areas, Moment holding, BalanceFactors factors) {
  const double each_pascal = overturning_moment(areas, 1.0 * unit::pascal).si() * factors.wind;
  if (each_pascal <= 0) return std::nullopt;
  const double holds = std::max(0.0, holding.si() * factors.holds);
  return gust_of(Pressure::from_si(holds / each_pascal));
}

std::optional<double> steel_friction(std::string_view ground) {
  for (std::string_view known : {"concrete", "asphalt", "paving", "gravel", "sand", "soil", "clay"})
    if (ground == known) return 0.2;
  return std::nullopt;
}

}  // namespace dunnage
