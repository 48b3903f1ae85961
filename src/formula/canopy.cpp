// SPDX-License-Identifier: MIT
// Canopy roof coefficients as printed in EN 1991-1-4, and the balance of a canopy on its ballasted legs.
#include "formula/canopy.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <span>

#include "base/slack.h"

namespace dunnage {
namespace {

/// One pitch: the largest downward, and the upward values with nothing and with all blocked below.
struct Row {
  double pitch, down, up_clear, up_blocked;
};

// EN 1991-1-4:2005+A1 Table 7.6, overall coefficients.
constexpr std::array<Row, 7> kSingle{{{0, .2, -.5, -1.3},
                                      {5, .4, -.7, -1.4},
                                      {10, .5, -.9, -1.4},
                                      {15, .7, -1.1, -1.4},
                                      {20, .8, -1.3, -1.4},
                                      {25, 1.0, -1.6, -1.4},
                                      {30, 1.2, -1.8, -1.4}}};
// Table 7.7, overall coefficients; there is no row between -5 and 5 degrees.
constexpr std::array<Row, 4> kValley{
    {{-20, .7, -.7, -1.3}, {-15, .5, -.6, -1.4}, {-10, .4, -.6, -1.4}, {-5, .3, -.5, -1.3}}};
constexpr std::array<Row, 6> kRidge{{{5, .3, -.6, -1.3},
                                     {10, .4, -.7, -1.3},
                                     {15, .4, -.8, -1.3},
                                     {20, .6, -.9, -1.3},
                                     {25, .7, -1.0, -1.3},
                                     {30, .9, -1.0, -1.3}}};
// Table 7.6, zones A, B, C.
constexpr std::array<std::array<Row, 7>, 3> kZones{{
    {{{0, .5, -.6, -1.5},
      {5, .8, -1.1, -1.6},
      {10, 1.2, -1.5, -1.6},
      {15, 1.4, -1.8, -1.6},
      {20, 1.7, -2.2, -1.6},
      {25, 2.0, -2.6, -1.5},
      {30, 2.2, -3.0, -1.5}}},
    {{{0, 1.8, -1.3, -1.8},
      {5, 2.1, -1.7, -2.2},
      {10, 2.4, -2.0, -2.6},
      {15, 2.7, -2.4, -2.9},
      {20, 2.9, -2.8, -2.9},
      {25, 3.1, -3.2, -2.5},
      {30, 3.2, -3.8, -2.2}}},
    {{{0, 1.1, -1.4, -2.2},
      {5, 1.3, -1.8, -2.5},
      {10, 1.6, -2.1, -2.7},
      {15, 1.8, -2.5, -3.0},
      {20, 2.1, -2.9, -3.0},
      {25, 2.3, -3.2, -2.8},
      {30, 2.4, -3.6, -2.7}}},
}};

RoofForce at(const Row& row, double blockage) {
  return {row.down, row.up_clear + blockage * (row.up_blocked - row.up_clear)};
}

std::optional<RoofForce> between(std::span<const Row> rows, double pitch, double blockage) {
  // A pitch worked out from heights may miss the first or last row by its last bits.
  if (falls_short(pitch, rows.front().pitch) || exceeds(pitch, rows.back().pitch)) return std::nullopt;
  std::size_t i = 1;
  while (i + 1 < rows.size() && pitch > rows[i].pitch) ++i;
  const Row &a = rows[i - 1], &b = rows[i];
  const double share = std::clamp((pitch - a.pitch) / (b.pitch - a.pitch), 0.0, 1.0);
  const RoofForce low = at(a, blockage), high = at(b, blockage);
  return RoofForce{low.down + share * (high.down - low.down), low.up + share * (high.up - low.up)};
}

bool good_blockage(double blockage) { return blockage >= 0 && blockage <= 1; }

void widen(RoofForce& worst, std::span<const Row> rows, double blockage) {
  for (const Row& row : rows) {
    const RoofForce here = at(row, blockage);
    worst.down = std::max(worst.down, here.down);
    worst.up = std::min(worst.up, here.up);
  }
}

}  // namespace

std::optional<RoofForce> roof_force(RoofTable table, double pitch, double blockage) {
  if (!good_blockage(blockage)) return std::nullopt;
  if (table == RoofTable::single_slope) return between(kSingle, pitch, blockage);
  return pitch < 0 ? between(kValley, pitch, blockage) : between(kRidge, pitch, blockage);
}

RoofForce worst_roof_force(RoofTable table, double blockage) {
  assert(good_blockage(blockage));
  RoofForce worst;
  if (table == RoofTable::single_slope) {
    widen(worst, kSingle, blockage);
  } else {
    widen(worst, kValley, blockage);
    widen(worst, kRidge, blockage);
  }
  return worst;
}

std::optional<RoofForce> zone_force(RoofZone zone, double pitch, double blockage) {
  if (!good_blockage(blockage)) return std::nullopt;
  return between(kZones[static_cast<std::size_t>(zone)], pitch, blockage);
}

namespace {
/// What the tilt asks of one leg of the row that it lifts or presses, for each pascal.
double tilt_area(const CanopyStand& stand) {
  if (stand.wind.span <= Length{}) return 0;
  // That row is taken to have two legs, however many there are.
  return stand.wind.tilt / stand.wind.span.si() / (stand.legs >= 4 ? 2 : 1);
}

/// Pull on the worst leg for each pascal.
double pull_area(const CanopyStand& stand) {
  assert(stand.legs >= 1);
  return stand.wind.lift * stand.lift_share / stand.legs + tilt_area(stand);
}
}  // namespace

Force leg_pull(const CanopyStand& stand, Pressure pressure) { return Force::from_si(pull_area(stand) * pressure.si()); }

Force leg_press(const CanopyStand& stand, Pressure pressure) {
  assert(stand.legs >= 1);
  return Force::from_si((stand.wind.press / stand.legs + tilt_area(stand)) * pressure.si());
}

Mass ballast_per_leg(const CanopyStand& stand, Speed gust, BalanceFactors factors) {
  const Force pull = leg_pull(stand, wind_pressure(gust)) * factors.wind;
  const Mass needed = (pull / standard_gravity) / factors.holds - stand.own / stand.legs;
  return std::max(needed, Mass{});
}

std::optional<Speed> lifting_gust(const CanopyStand& stand, Mass ballast_of_leg, BalanceFactors factors) {
  const double area = pull_area(stand) * factors.wind;
  if (area <= 0) return std::nullopt;
  const Force holds = (ballast_of_leg + stand.own / stand.legs) * standard_gravity * factors.holds;
  return gust_of(Pressure::from_si(holds.si() / area));
}

std::optional<Speed> sliding_gust(const CanopyStand& stand, Mass ballast_in_all, double friction,
                                  BalanceFactors factors) {
  const double area = factors.wind * (friction * stand.wind.lift + stand.wind.side);
  if (area <= 0) return std::nullopt;
  const Force holds = (stand.own + ballast_in_all) * standard_gravity * (factors.holds * friction);
  return gust_of(Pressure::from_si(holds.si() / area));
}

Mass mass_against_sliding(double friction, Force uplift, Force side, BalanceFactors factors) {
  assert(friction > 0);
  const Force needed = side * (factors.wind / friction) + uplift * factors.wind;
  return (needed / standard_gravity) / factors.holds;
}

}  // namespace dunnage
