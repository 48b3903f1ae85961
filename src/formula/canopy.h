// SPDX-License-Identifier: MIT
// Wind on a canopy roof, the ballast that each leg needs, and the gust that given ballast holds.
#pragma once

#include <optional>
#include <vector>

#include "base/quantity.h"
#include "formula/wind.h"

namespace dunnage {

enum class RoofTable { single_slope, two_slope };

/// Overall force coefficients of a roof: down at least 0, up at most 0.
struct RoofForce {
  double down = 0, up = 0;
};

/// Overall net force on a canopy roof. Pitch in degrees: single slope 0 to 30; two slopes 5 to 30, or
/// -20 to -5 for a valley (there is no row between -5 and 5). Blockage 0 (nothing under the roof) to 1
/// (full to the downwind edge). Linear between rows and in blockage. Empty outside.
/// Source: EN 1991-1-4:2005+A1 clause 7.3, Table 7.6 (single) and Table 7.7 (two slopes).
std::optional<RoofForce> roof_force(RoofTable table, double pitch, double blockage);
/// The largest magnitudes of the whole table at this blockage, for a pitch that is not known.
RoofForce worst_roof_force(RoofTable table, double blockage);

/// A zone of Table 7.6 with its local pressures, for what is fixed to a roof near its edges.
enum class RoofZone { middle, side_edge, wind_edge };  ///< A, B, C
std::optional<RoofForce> zone_force(RoofZone zone, double pitch, double blockage);

/// Partial factors of loss of balance: what holds counts 0.9, wind 1.5.
/// Source: EN 1990:2002+A1, Table A1.2(A) (EQU).
struct BalanceFactors {
  double holds = 0.9, wind = 1.5;
};
inline constexpr BalanceFactors no_factors{1.0, 1.0};

/// What the wind does to a canopy, of one gust, before factors.
struct CanopyWind {
  double lift = 0;   ///< uplift on the roof is pressure x this (m2)
  double side = 0;   ///< sideways force is pressure x this (m2)
  double press = 0;  ///< downforce on the end row of legs, over an equal share, is pressure x this (m2)
  double tilt = 0;   ///< moment of the sideways force about the ground: pressure x this (m3)
  Length span;       ///< between the legs that tilt lifts and those it presses on
};

/// The canopy that stands in it.
struct CanopyStand {
  Mass own;  ///< of the structure, shared equally by the legs
  int legs = 4;
  double lift_share = 1;  ///< the worst leg's share of the uplift over an equal share, at least 1
  CanopyWind wind;
};

/// Uplift and tilt on the worst leg at a pressure, before factors.
Force leg_pull(const CanopyStand& stand, Pressure pressure);
/// What the wind presses the worst leg down with, before factors: the roof's downforce and the tilt.
Force leg_press(const CanopyStand& stand, Pressure pressure);
/// Ballast each leg needs: (wind factor x pull / g - hold factor x own share) / hold factor, at least 0.
Mass ballast_per_leg(const CanopyStand& stand, Speed gust, BalanceFactors factors = {});
/// The gust that a leg with this ballast holds. Empty where nothing lifts it.
std::optional<Speed> lifting_gust(const CanopyStand& stand, Mass ballast_of_leg, BalanceFactors factors = {});
/// The gust at which the whole canopy slides, with all its ballast and this friction.
/// friction x (hold x m g - wind x uplift) = wind x side force. Empty where nothing pushes or lifts it.
std::optional<Speed> sliding_gust(const CanopyStand& stand, Mass ballast_in_all, double friction,
                                  BalanceFactors factors = {});
/// Mass in all, the structure's own included, that does not slide at this gust. Friction above 0.
Mass mass_against_sliding(double friction, Force uplift, Force side, BalanceFactors factors = {});

/// Side force coefficient of a wall or the upright face of a roof (common practice, no source).
inline constexpr double wall_coefficient = 1.3;

}  // namespace dunnage
