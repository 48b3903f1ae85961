// SPDX-License-Identifier: MIT
// From a canopy as people describe it to what the wind does to it, with every assumption in words. The check
// and the single question both read a canopy here, so they cannot disagree.
#pragma once

#include <optional>
#include <vector>

#include "base/quantity.h"
#include "base/sentence.h"
#include "formula/canopy.h"

namespace dunnage {

enum class RoofShape { flat, single_slope, two_slope, four_slope };

/// A banner, screen or sign tied to a canopy.
struct HungArea {
  Area area;
  std::optional<Length> height;
};

struct CanopyShape {
  RoofShape roof = RoofShape::flat;
  Length length, width;               ///< plan
  std::optional<Length> eaves, peak;  ///< heights
  std::optional<double> pitch;        ///< degrees, where known without heights
  std::optional<double> blockage;     ///< 0 to 1; absent: full
  int walls = 0;                      ///< sides with a wall up
  std::vector<HungArea> hung;
  std::optional<Mass> own;  ///< absent: nothing
  int legs = 4;
  std::optional<double> own_uplift;  ///< the maker's coefficient, as a magnitude
};

struct CanopyReading {
  CanopyStand stand;
  RoofForce force;
  std::optional<double> pitch;  ///< as used, degrees
  double blockage = 1;
  bool needs_maker_limit = false;  ///< the table does not cover this roof by itself
  bool side_known = true;          ///< false: heights are missing, so nothing is known of sliding
  std::vector<Sentence> assumptions;
  std::vector<Sentence> missing;  ///< without these there is no figure
};

/// Reads a canopy conservatively:
/// - blockage not stated, or any wall up: full, or open where that is worse (steep single slopes);
/// - pitch not known: the largest coefficients of the table;
/// - two slopes below 5 degrees: the larger of -5 and +5; above 30: the row of 30, maker's limit needed;
/// - four slopes: as two slopes, maker's limit needed (no table has them);
/// - flat and single slope: the force acts a quarter in from the windward edge, so that the legs there take
///   more (EN 1991-1-4 clause 7.3, Figure 7.16, from memory);
/// - the uneven halves of ASCE 7-22 (up to 45 degrees, x 0.85) count instead wherever they are larger, on the
///   end row of legs and on the whole roof; two evenly loaded slopes ask more than one slope loaded alone;
/// - three walls or more: no canopy table covers it, so the maker's limit is needed;
/// - walls: up to two, each the longer side by the eaves height, 1.3 (common practice, no source), tilting
///   the canopy over its shorter side and pushing it sideways;
/// - the slope that the wind meets pushes and tilts likewise, as an upright face of its rise, with 1.3 or the
///   roof's own coefficient if that is larger; heights not known: eaves 2.5 m, 30 degrees.
CanopyReading read_canopy(const CanopyShape& shape);

}  // namespace dunnage
