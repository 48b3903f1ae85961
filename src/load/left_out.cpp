// SPDX-License-Identifier: MIT
#include "load/left_out.h"

#include <algorithm>
#include <limits>

#include "load/rows.h"

namespace dunnage {
namespace {

constexpr double cubic_mm = 1e-9, square_mm = 1e-6, mm = 1e-3;
constexpr std::size_t most_for_length = 400;  // pieces: rows of more take long
constexpr int longer = 20000;                 // mm by which a room is drawn out to see how much length is short

/// How far the best stance reaches out of the empty room, mm; 0: it fits.
int too_big(const Cargo& cargo, const std::vector<PackStance>& stances) {
  int least = std::numeric_limits<int>::max();
  for (const PackStance& s : stances) {
    int over = 0;
    for (std::size_t k = 0; k < 3; ++k) over = std::max(over, s.size[k] - cargo.room[k]);
    least = std::min(least, over);
  }
  return stances.empty() ? 0 : least;
}

/// How far the best stance reaches out of the best door, mm; 0: it passes.
int past_doors(const Vehicle& vehicle, const std::vector<PackStance>& stances) {
  int least = std::numeric_limits<int>::max();
  for (const DoorOpening& door : vehicle.doors)
    for (const PackStance& s : stances) {
      if (passes_door(s, door)) return 0;
      const int wide = std::min(s.size[0], s.size[1]) - mm_down(door.width), high = s.size[2] - mm_down(door.height);
      least = std::min(least, std::max({wide, high, 1}));
    }
  return vehicle.doors.empty() ? 0 : least;
}

double room_volume(const Cargo& cargo) {
  double sum = cubic_mm * cargo.room[0] * cargo.room[1] * cargo.room[2];
  if (cargo.obstacles.size() > 1)
    return sum;  // several may lie in each other: none is taken off, the bound holds still
  for (const PackObstacle& o : cargo.obstacles) {
    double part = cubic_mm;
    for (std::size_t k = 0; k < 3; ++k) part *= std::max(0, std::min(o.to[k], cargo.room[k]) - std::max(o.from[k], 0));
    sum -= part;
  }
  return sum;
}

/// Too much for the room by volume, m3.
double volume_short(const Cargo& cargo) {
  double sum = -room_volume(cargo);
  for (const CargoKind& kind : cargo.kinds)
    if (!kind.stances.empty()) {
      const Spot& s = kind.stances.front().size;
      sum += cubic_mm * s[0] * s[1] * s[2] * static_cast<double>(kind.units.size());
    }
  return sum;
}

/// Neither bears anything that is asked for nor may stand on any of it.
bool alone_on_floor(const Cargo& cargo, const CargoKind& kind) {
  for (const CargoKind& other : cargo.kinds) {
    if (&other == &kind && kind.units.size() < 2) continue;
    const auto on = [](const CargoKind& above, const CargoKind& below) {
      return above.mass_known && below.mass_known && above.highest > 0 && below.bears >= above.mass &&
             above.mass <= below.mass;
    };
    if (on(kind, other) || on(other, kind)) return false;
  }
  return true;
}

/// Too much for the floor by what can only stand there, m2.
double floor_short(const Cargo& cargo) {
  double sum = -square_mm * cargo.room[0] * cargo.room[1];
  for (const CargoKind& kind : cargo.kinds) {
    if (kind.stances.empty() || !alone_on_floor(cargo, kind)) continue;
    double least = std::numeric_limits<double>::max();
    for (const PackStance& s : kind.stances) least = std::min(least, square_mm * s.size[0] * s.size[1]);
    sum += least * static_cast<double>(kind.units.size());
  }
  return sum;
}

/// How much longer the room would have to be for rows of the best order, mm; 0: not even that helps.
int length_short(const Cargo& cargo) {
  std::size_t pieces = 0;
  for (const CargoKind& kind : cargo.kinds) pieces += kind.units.size();
  if (pieces > most_for_length) return 0;
  Cargo drawn_out = cargo;
  drawn_out.room[0] += longer;
  int least = longer;
  for (const RowOrder order : {RowOrder::heavy, RowOrder::large, RowOrder::wide}) {
    const RowPlan rows = build_rows(drawn_out, row_order(drawn_out, order));
    if (std::any_of(rows.left.begin(), rows.left.end(), [](int left) { return left > 0; })) continue;
    int reach = 0;
    for (const StoodBox& b : rows.boxes) reach = std::max(reach, b.at[0] + b.size[0]);
    least = std::min(least, reach - cargo.room[0]);
  }
  return least == longer ? 0 : std::max(0, least);
}

LeftOut of_all(const Cargo& cargo) {
  LeftOut out;
  out.proved = true;
  out.want = LeftOut::Want::volume;
  out.by = volume_short(cargo);
  if (out.by > 0) return out;
  out.want = LeftOut::Want::floor;
  out.by = floor_short(cargo);
  if (out.by > 0) return out;
  out.proved = false;
  out.want = LeftOut::Want::length;
  out.by = mm * length_short(cargo);
  if (out.by > 0) return out;
  out.want = LeftOut::Want::room;
  return out;
}

}  // namespace

double most_cargo(const Vehicle& v, double tongue) {
  const double people = v.people_and_fuel ? v.people_and_fuel->value.si() : 0;
  double most = -1;
  const auto limit = [&](double kg) { most = most < 0 ? std::max(0.0, kg) : std::min(most, std::max(0.0, kg)); };
  if (v.payload) limit(v.payload->value.si() - people - tongue);
  const bool van = v.kind == Vehicle::Kind::van;
  const Maybe<Mass>& one = van ? v.empty_front : v.empty_axle;
  const Maybe<Mass>& other = van ? v.empty_rear : v.empty_tongue;
  if (v.gross && one && other) limit((v.gross->value - one->value - other->value).si() - people - tongue);
  return most;
}

std::vector<LeftOut> reasons_left(const Catalogue& catalogue, const Cargo& asked, const std::vector<int>& units) {
  std::vector<LeftOut> out;
  LeftOut all;
  bool all_known = false;
  for (const int unit : units) {
    const std::vector<PackStance> stances = stances_of(catalogue.case_at(unit));
    LeftOut one;
    one.unit = unit;
    one.proved = true;
    if (const int over = too_big(asked, stances); over > 0) {
      one.want = LeftOut::Want::size;
      one.by = mm * over;
    } else if (const int past = past_doors(*asked.vehicle, stances); past > 0) {
      one.want = LeftOut::Want::door;
      one.by = mm * past;
    } else {
      if (!all_known) all = of_all(asked);
      all_known = true;
      one = all;
      one.unit = unit;
    }
    out.push_back(one);
  }
  return out;
}

}  // namespace dunnage
