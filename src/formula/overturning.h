// SPDX-License-Identifier: MIT
// Towers, light stands and signs that the wind may tip, and what they stand on.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "formula/canopy.h"

namespace dunnage {

/// Shortest distance from the middle to a tipping line of n equal feet on a circle: R cos(pi / n)
/// (statics: three feet R/2, four 0.7071 R). Empty below three feet.
std::optional<Length> tipping_lever(int feet, Length radius);
/// The same of a rectangular base: half its shorter side.
Length tipping_lever(Length base_length, Length base_width);

/// An area that the wind meets, with its force coefficient and the height of its middle.
struct WindArea {
  Area area;
  double coefficient = 1.8;
  Length height;
};
/// Force coefficient of a flat panel clear of the ground. Source: EN 1991-1-4:2005 clause 7.4.3.
inline constexpr double panel_coefficient = 1.8;

/// A mass and how far inside of the tipping line it stands (negative: outside, it then helps to tip).
struct HoldingMass {
  Mass mass;
  Length inside;
};

/// Overturning moment of these areas at a pressure.
Moment overturning_moment(const std::vector<WindArea>& areas, Pressure pressure);
/// Moment that holds, of masses about the tipping line.
Moment holding_moment(const std::vector<HoldingMass>& masses);
/// Mass to add in the middle (at `lever` from the line): (wind M - hold m g b) / (hold g b), at least 0.
Mass mass_against_tipping(Moment overturning, Moment holding, Length lever, BalanceFactors factors = {});
/// The gust at which it tips. Zero where it does not stand by itself; empty where nothing pushes it.
std::optional<Speed> tipping_gust(const std::vector<WindArea>& areas, Moment holding, BalanceFactors factors = {});

/// Friction of a foot on the ground: the lowest value listed for a steel foot there (from memory, after
/// EN 13814:2004 clause 5.5). Grounds: "concrete", "asphalt", "paving", "gravel", "sand", "soil", "clay".
/// Empty for grass, wet ground and anything else: no value is published, a pull test decides.
std::optional<double> steel_friction(std::string_view ground);

}  // namespace dunnage
