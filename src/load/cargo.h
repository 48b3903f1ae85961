// SPDX-License-Identifier: MIT
// One vehicle and what it is asked to carry, in whole millimetres: rooms rounded down, pieces up.
#pragma once

#include <string>
#include <vector>

#include "load/pack_problem.h"
#include "model/catalogue.h"
#include "model/loading.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// Units that no rule of loading tells apart.
struct CargoKind {
  std::vector<int> units;
  std::vector<PackStance> stances;  ///< through a door as it stands; word: a Stance
  double mass = 0;                  ///< kg; 0 where not known
  bool mass_known = false;
  double bears = 0;           ///< kg that may stand on it
  int levels = most_stacked;  ///< pieces that may stand on it one above the other
  int highest = 0;            ///< mm that its base may stand above the floor
  bool wheels = false;
  bool strip = false;  ///< long and thin: lies along a wall
  bool soft = false;   ///< a bag that is no ballast: goes in last
  int stop = 0;
};

/// A door in a side wall of which somebody typed where it is: what lies within it leaves straight sideways.
struct SideDoor {
  int from = 0, to = 0, height = 0;
  bool left = false;
};

struct Cargo {
  const Vehicle* vehicle = nullptr;
  const Vehicle* puller = nullptr;  ///< the van whose hitch a trailer rests on; null where none was typed
  std::vector<SideDoor> sides;
  Spot room{};
  std::vector<PackObstacle> obstacles;
  std::vector<CargoKind> kinds;
  int stops = 0;   ///< as the show types them
  int hands = 0;   ///< mm between two rows
  int lintel = 0;  ///< top of the highest rear door, mm; 0 where none was typed
};

/// Whole millimetres that hold a side, or that a room holds.
int mm_up(Length side);
int mm_down(Length side);

/// The vehicle's `cargo` is typed, and so are the sizes of all units.
Cargo make_cargo(const Catalogue& catalogue, const Show& show, const Plan& plan, const Vehicle& vehicle,
                 const std::vector<int>& units, int hands);

/// A piece that stands so passes an opening: upright, rolled or carried with its narrower side ahead; else end first.
bool passes_door(const PackStance& stance, const DoorOpening& door);
bool at_rear(const DoorOpening& door);
/// It may leave towards the rear: where there are no side doors to leave by, whatever was let in may.
bool rear_takes(const Cargo& cargo, const PackStance& stance);
/// Straight sideways through the opening, as it stands.
bool side_takes(const SideDoor& door, const PackStance& stance);
/// All ways in which a case may stand, whatever the vehicle.
std::vector<PackStance> stances_of(const Case& box);

}  // namespace dunnage
