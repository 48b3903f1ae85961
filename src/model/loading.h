// SPDX-License-Identifier: MIT
// What stands where in a vehicle. A planner writes it; a checker that shares nothing with the planner judges it.
#pragma once

#include <string>
#include <vector>

#include "base/names.h"
#include "base/quantity.h"
#include "base/sentence.h"

namespace dunnage {

/// A box along the axes of a cargo space: x from the bulkhead towards the rear door, y from the left wall towards the
/// right one as seen looking forward, z from the floor up. In whole millimetres: the sides of a piece are rounded up.
struct Cuboid {
  Length x, y, z, length, width, height;
};  ///< length along x, width along y, height along z

/// upright: as its size is typed; turned: by a quarter, wheels down. The others only where the kit says so
/// (Case::lies): with the longest side up, the middle one, the shortest.
enum class Stance { upright, turned, on_end, on_side, flat };
inline constexpr Named<Stance> stance_names[] = {{Stance::upright, "upright"},
                                                 {Stance::turned, "turned"},
                                                 {Stance::on_end, "on end"},
                                                 {Stance::on_side, "on side"},
                                                 {Stance::flat, "flat"}};
constexpr const char* name(Stance stance) { return name_in(stance_names, stance); }

/// One unit as it stands.
struct LoadedPiece {
  int unit = 0;  ///< index in the catalogue
  Cuboid box;
  Stance stance = Stance::upright;
  int row = 0;   ///< from the bulkhead, from 1; 0: a strip along a wall or a soft piece on top
  int stop = 0;  ///< at which stop it comes off, from 0; after the last stop typed: stays aboard to the end
};

/// A unit that found no room, and by how much.
struct LeftOut {
  int unit = 0;
  enum class Want { size, door, length, volume, floor, mass, room } want = Want::room;
  bool proved = false;  ///< no plan at all could take it, by the sum or side named
  double by = 0;        ///< SI of the want: m, m3, m2 or kg too much; 0 where not known
};

inline constexpr Named<LeftOut::Want> want_names[] = {
    {LeftOut::Want::size, "size"},     {LeftOut::Want::door, "door"},   {LeftOut::Want::length, "length"},
    {LeftOut::Want::volume, "volume"}, {LeftOut::Want::floor, "floor"}, {LeftOut::Want::mass, "mass"},
    {LeftOut::Want::room, "room"}};
constexpr const char* name(LeftOut::Want want) { return name_in(want_names, want); }

/// What the checker holds against a plan, as a sentence about one unit; of a sum, without one.
struct LoadFault {
  std::string vehicle, unit;
  Sentence says;
};

/// One vehicle, its pieces in the order in which two people load them.
struct VehicleLoading {
  std::string vehicle;  ///< code
  std::vector<LoadedPiece> pieces;
  std::vector<LeftOut> left;        ///< asked of this vehicle by kit or show
  long work = 0;                    ///< steps of the search, the measure it stops at
  std::vector<LoadFault> faults{};  ///< the checker's; its pieces are then taken out, so that no sheet can draw them
};

struct Loading {
  std::vector<VehicleLoading> vehicles;  ///< in order of the kit
  std::vector<int> unsized;              ///< units that go whose size nobody typed: in no plan, and said so
  /// Sets of vehicles that take all that goes, lightest first; worked out where somebody asks (`why`, `--json`).
  std::vector<std::vector<std::string>> suffice{};
};

}  // namespace dunnage
