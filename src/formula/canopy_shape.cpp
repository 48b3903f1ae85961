// SPDX-License-Identifier: MIT
// Reading a canopy for the wind, on the safe side wherever something is not stated.
#include "formula/canopy_shape.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/slack.h"
#include "formula/open_roof.h"
#include "formula/overturning.h"

namespace dunnage {
namespace {

/// Where heights are missing, for the push on the roof only: as high and as steep as pop-up canopies come.
constexpr Length assumed_eaves = 2.5 * unit::metre;
constexpr double assumed_pitch = 30;

std::optional<double> pitch_of(const CanopyShape& shape) {
  if (shape.roof == RoofShape::flat) return 0.0;
  if (shape.pitch) return shape.pitch;
  if (!shape.eaves || !shape.peak) return std::nullopt;
  // Over the shorter side the slope is the steeper one.
  const Length short_side = std::min(shape.length, shape.width);
  const double run = short_side / unit::metre * (shape.roof == RoofShape::single_slope ? 1.0 : 0.5);
  return std::atan2((*shape.peak - *shape.eaves) / unit::metre, run) * 180 / std::numbers::pi;
}

std::string whole_degrees(double angle) { return fmt::format("{:.0f}", angle); }

RoofForce larger(RoofForce a, RoofForce b) { return {std::max(a.down, b.down), std::min(a.up, b.up)}; }

/// Where a roof's pitch leads in its table: the pitches to read, of which the worse counts.
std::vector<double> rows_to_read(CanopyReading& r, RoofTable table, double pitch) {
  if (roof_force(table, pitch, 1)) return {pitch};
  if (table == RoofTable::two_slope && std::abs(pitch) < 5) {
    r.assumptions.push_back(said("pitch {} deg: the worse of -5 and +5 deg", whole_degrees(pitch)));
    return {-5, 5};
  }
  const double nearest = pitch > 0 ? 30 : table == RoofTable::two_slope ? -20 : 0;
  r.needs_maker_limit = true;
  r.assumptions.push_back(
      said("pitch {} deg is beyond the table: read at {} deg", whole_degrees(pitch), whole_degrees(nearest)));
  return {nearest};
}

RoofForce force_at(const std::vector<double>& pitches, RoofTable table, double blockage) {
  if (pitches.empty()) return worst_roof_force(table, blockage);
  RoofForce worst = *roof_force(table, pitches.front(), blockage);
  for (double pitch : pitches) worst = larger(worst, *roof_force(table, pitch, blockage));
  return worst;
}

/// Full blockage is the worse but for a steep single slope; both ends of what it could be are read.
void read_blockage(CanopyReading& r, const CanopyShape& shape, const std::vector<double>& pitches, RoofTable table) {
  const double least = shape.blockage.value_or(0.0);
  const bool open_ended = !shape.blockage || (shape.walls > 0 && least < 1);
  r.blockage = open_ended ? 1 : least;
  r.force = force_at(pitches, table, r.blockage);
  if (!open_ended) return;
  const RoofForce clear = force_at(pitches, table, least);
  const bool clear_is_worse = clear.up < r.force.up;
  r.force = larger(r.force, clear);
  if (clear_is_worse) r.blockage = least;
  const Sentence why = shape.blockage ? said("walls up") : said("what is under the roof is not stated");
  r.assumptions.push_back(
      said("{}: {}", why, clear_is_worse ? said("open, which is worse here") : said("full blockage")));
}

/// Over an equal share, what the end row of `rows` along the wind takes of a force on two halves.
double end_row(const HalfForce& halves, double rows) {
  return (halves.windward + halves.leeward) / 2 +
         0.75 * std::abs(halves.windward - halves.leeward) * (rows - 1) / (rows + 1);
}

/// The same of the worst case of ASCE 7-22: up as a magnitude, down, and both over the whole roof.
struct FreeRoof {
  double row_up = 0, row_down = 0;
  RoofForce whole;
};

void widen(FreeRoof& worst, const HalfForce& halves, double rows) {
  const double mean = rigid_gust_effect * (halves.windward + halves.leeward) / 2;
  const HalfForce turned{-halves.windward, -halves.leeward};
  worst.row_up = std::max(worst.row_up, rigid_gust_effect * end_row(turned, rows));
  worst.row_down = std::max(worst.row_down, rigid_gust_effect * end_row(halves, rows));
  worst.whole = larger(worst.whole, {mean, mean});
}

/// Clear counts up to half blocked; where the blockage is not known both are read. A valley has no figure.
FreeRoof free_roof_of(const CanopyReading& r, const CanopyShape& shape, RoofTable table, double rows) {
  FreeRoof worst;
  const double least = shape.blockage.value_or(0.0);
  const bool closed = !shape.blockage || shape.walls > 0 || least > 0.5;
  std::vector<double> pitches = {0, 7.5, 15, 22.5, 30, 37.5, 45};
  if (r.pitch) pitches = {std::min(*r.pitch, 45.0)};
  for (const bool obstructed : {false, true}) {
    if (obstructed ? !closed : least > 0.5) continue;
    for (const double pitch : pitches)
      for (const HalfForce& halves : free_roof_cases(table, pitch, obstructed)) widen(worst, halves, rows);
    if (pitches.front() < 0) continue;
    const RoofForce along = free_roof_along(0, obstructed);
    widen(worst, {along.down, along.down}, rows);
    widen(worst, {along.up, along.up}, rows);
  }
  return worst;
}

/// Both standards on the end row of legs; the larger counts, and which is said.
void read_uneven(CanopyReading& r, const CanopyShape& shape, RoofTable table, bool sloping_once) {
  // Rows of legs along the wind. One slope: the force a quarter in from the windward edge.
  const double rows = shape.legs > 1 ? std::max(2.0, shape.legs / 2.0) : 1.0;
  const double quarter = sloping_once ? 1 + 1.5 * (rows - 1) / (rows + 1) : 1.0;
  double up = -r.force.up * quarter, down = r.force.down * quarter;
  bool american = false;
  if (!shape.own_uplift) {
    const FreeRoof other = free_roof_of(r, shape, table, rows);
    american = exceeds(other.row_up, up) || falls_short(other.whole.up, r.force.up);
    up = std::max(up, other.row_up);
    down = std::max(down, other.row_down);
    r.force = larger(r.force, other.whole);
  }
  const double area = (shape.length * shape.width).si();
  r.stand.wind.lift = -r.force.up * area;
  r.stand.lift_share = r.force.up < 0 ? up / -r.force.up : 1.0;
  r.stand.wind.press = down * area;
  if (american) r.assumptions.push_back(said("uplift by ASCE 7-22, larger here than by EN 1991-1-4"));
  if (exceeds(r.stand.lift_share, 1.0))
    r.assumptions.push_back(said("the legs at the windward edge take the larger share"));
}

void read_roof(CanopyReading& r, const CanopyShape& shape) {
  const bool sloping_once = shape.roof == RoofShape::flat || shape.roof == RoofShape::single_slope;
  const RoofTable table = sloping_once ? RoofTable::single_slope : RoofTable::two_slope;
  r.pitch = pitch_of(shape);
  if (shape.roof == RoofShape::four_slope) {
    r.needs_maker_limit = true;
    r.assumptions.push_back(said("four slopes read as two slopes"));
  }
  if (!r.pitch) r.assumptions.push_back(said("pitch not stated: the largest of the table"));
  read_blockage(r, shape, r.pitch ? rows_to_read(r, table, *r.pitch) : std::vector<double>{}, table);
  if (shape.walls >= 3) {
    r.needs_maker_limit = true;
    r.assumptions.push_back(said("closed on three sides or more, which no canopy table covers: read as full blockage"));
  }
  if (shape.own_uplift) {
    r.force.up = -std::abs(*shape.own_uplift);
    r.needs_maker_limit = false;
    r.assumptions.push_back(said("the maker's own uplift coefficient"));
  }
  read_uneven(r, shape, table, sloping_once);
}

void push(CanopyReading& r, double area, Length height) {
  r.stand.wind.side += area;
  r.stand.wind.tilt += area * height.si();
}

/// The wind on the slope that it meets: sideways, and tilting the canopy from as high as the slope's middle.
void push_on_roof(CanopyReading& r, const CanopyShape& shape, Length long_side) {
  const Length eaves = shape.eaves.value_or(assumed_eaves);
  const double run = r.stand.wind.span.si() * (shape.roof == RoofShape::single_slope ? 1.0 : 0.5);
  const double slope = r.pitch ? std::abs(*r.pitch) : assumed_pitch;
  Length rise = run * std::tan(slope * std::numbers::pi / 180) * unit::metre;
  if (shape.eaves && shape.peak) rise = std::max(Length{}, *shape.peak - *shape.eaves);
  if (!r.side_known)
    r.assumptions.push_back(r.pitch ? said("eaves 2.5 m high, for the push on the roof")
                                    : said("eaves 2.5 m high and a slope of 30 deg, for the push on the roof"));
  const double face = shape.roof == RoofShape::four_slope ? 0.5 : 1.0;  // a triangle is seen, not a rectangle
  const double coefficient = std::max({wall_coefficient, -r.force.up, r.force.down});
  push(r, coefficient * face * (long_side * rise).si(), eaves + rise / 2.0);
}

void read_sides(CanopyReading& r, const CanopyShape& shape) {
  const Length long_side = std::max(shape.length, shape.width);
  r.stand.wind.span = std::min(shape.length, shape.width);
  r.side_known = shape.roof == RoofShape::flat || (shape.eaves && shape.peak);
  if (shape.walls > 0 && !shape.eaves) r.missing.push_back(said("eaves"));
  if (shape.walls > 0 && shape.eaves) {
    const int facing = std::min(shape.walls, 2);
    push(r, wall_coefficient * facing * (long_side * *shape.eaves).si(), *shape.eaves / 2.0);
    r.assumptions.push_back(facing == 1
                                ? said("one wall of the longer side, coefficient 1.3 (common practice, no source)")
                                : said("two walls of the longer side, coefficient 1.3 (common practice, no source)"));
  }
  if (shape.roof != RoofShape::flat) push_on_roof(r, shape, long_side);
  for (const HungArea& hung : shape.hung) {
    const std::optional<Length> height = hung.height ? hung.height : shape.peak ? shape.peak : shape.eaves;
    if (!height)
      r.missing.push_back(said("the height of what hangs on it"));
    else
      push(r, panel_coefficient * hung.area.si(), *height);
  }
}

}  // namespace

CanopyReading read_canopy(const CanopyShape& shape) {
  CanopyReading r;
  r.stand.legs = std::max(1, shape.legs);
  if (shape.own)
    r.stand.own = *shape.own;
  else
    r.assumptions.push_back(said("the structure's own mass is not stated: none counted"));
  read_roof(r, shape);
  read_sides(r, shape);
  return r;
}

}  // namespace dunnage
