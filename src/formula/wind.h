// SPDX-License-Identifier: MIT
// From wind speed to pressure and back, how wind grows with height, and the wind scale of those who have
// no meter.
#pragma once

#include <optional>
#include <string_view>

#include "base/quantity.h"

namespace dunnage {

/// Density of air. Source: EN 1991-1-4:2005 clause 4.5(1), note 2.
inline constexpr Density air_density = 1.25 * unit::kilogram_per_cubic_metre;

/// q = 1/2 rho v^2, with v the 3-second gust at the height of the thing. Not negative.
/// Source: EN 1991-1-4:2005 clause 4.5(1), Expression 4.10.
Pressure wind_pressure(Speed gust, Density air = air_density);
/// The gust of a pressure: sqrt(2 q / rho).
Speed gust_of(Pressure pressure, Density air = air_density);

/// Terrain of EN 1991-1-4:2005 Table 4.1: sea, flat, open, suburb or wood, town.
enum class Terrain { zero, one, two, three, four };
/// How much stronger the peak pressure is at a height than the basic one.
struct ExposureFigures {
  double terrain_factor = 0;  ///< kr
  double roughness = 0;       ///< cr
  double turbulence = 0;      ///< Iv
  Speed mean;                 ///< vm
  Pressure basic, peak;       ///< qb, qp
  double exposure = 0;        ///< ce = qp / qb
};
/// EN 1991-1-4:2005 clauses 4.3 to 4.5, flat ground (c0 = 1). Empty above 200 m or below ground.
std::optional<ExposureFigures> exposure_at(Terrain terrain, Length height, Speed basic_wind);

/// ASCE 7 exposure categories.
enum class Exposure { b, c, d };
/// Kz = 2.01 (max(z, 15 ft)/zg)^(2/alpha). Source: ASCE 7-16 Table 26.10-1 (as in 7-05 and 7-10).
/// Empty above zg.
std::optional<double> height_factor_asce(Exposure exposure, Length height);
/// qz = 0.613 Kz Kzt Kd V^2 in Pa. Source: ASCE 7-16 Equation 26.10-1. Factors are plain numbers.
Pressure wind_pressure_asce(Speed gust, double height_factor, double ground_factor, double direction_factor);

/// Force of the wind scale, 0 to 12, by the 10-minute mean at 10 m, read in whole knots as the scale is
/// defined. Source: WMO, Manual on Codes, code table 1100.
int wind_force(Speed mean);
/// "fresh breeze". `force` 0 to 12.
std::string_view wind_force_name(int force);
/// What is seen on land, for those without a meter (from memory: WMO land signs).
std::string_view wind_force_signs(int force);
/// Least and most mean speed of a force, in whole knots. The most of force 12 is 0: none.
struct ForceBand {
  int from, to;
};
ForceBand wind_force_knots(int force);

/// 3-second gust over hourly mean in open country, about 1.53. Source: Durst curve, ASCE 7 commentary
/// (as cited elsewhere). For reading a mean only; never used to lower a gust.
inline constexpr double gust_over_hourly_mean = 1.53;

/// Shares of a structure's largest gust at which people act: first they get ready, then they start.
/// Source: Cardiff Council, Bute Park event guide, wind, 22 April 2020 (action at 60 % and 80 % of the maximum).
inline constexpr double ready_share = 0.6, start_share = 0.8;

}  // namespace dunnage
