// SPDX-License-Identifier: MIT
// Free roofs by the American standard, half by half: the second opinion beside the European tables, so that the
// larger of the two counts.
#pragma once

#include <vector>

#include "formula/canopy.h"

namespace dunnage {

/// Net coefficients on the windward and the leeward half of a roof: above 0 toward, below 0 away from its top.
struct HalfForce {
  double windward = 0, leeward = 0;
};

/// Every load case at a pitch (0 to 45 degrees), wind from either side of the slope. Up to half blocked below
/// counts as clear, more as obstructed. Linear from 7.5 degrees up; flatter is one row. Empty outside.
/// Source: ASCE 7-22 Figures 27.3-4 (single slope) and 27.3-5 (two slopes), as copied; for mean heights of 0.25
/// to 1 of the roof's length along the wind.
std::vector<HalfForce> free_roof_cases(RoofTable table, double pitch, bool obstructed);

/// Wind along the ridge, one value by the distance from the windward edge in mean heights: up and down.
/// Source: ASCE 7-22 Figure 27.3-7, as copied.
RoofForce free_roof_along(double distance_in_heights, bool obstructed);

/// G of rigid structures: pressure is q x G x coefficient. Source: ASCE 7-22 Equation 27.3-2.
inline constexpr double rigid_gust_effect = 0.85;

}  // namespace dunnage
