// SPDX-License-Identifier: MIT
// A drawn load as its judges see it: boxes in metres, read off the drawing alone. Shares nothing with the planner.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "model/catalogue.h"
#include "model/loading.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// Corners in metres: x from the bulkhead, y from the left wall, z from the floor.
struct Solid {
  std::array<double, 3> from{}, to{};
};
/// Nearer than this is touching: a thousandth of what a drawing is good for.
inline constexpr double touching = 1e-6;
/// Tops and bottoms that meet within it carry: sides are rounded to whole millimetres.
inline constexpr double level = 1e-3;

Solid solid(const Cuboid& box);
bool overlap(const Solid& a, const Solid& b);
/// Seen from above, in square metres.
double shared_floor(const Solid& a, const Solid& b);

/// One piece as it stands.
struct Standing {
  const LoadedPiece* piece = nullptr;
  const Case* box = nullptr;
  std::string code;
  Solid solid;
  Mass mass;
  bool mass_known = false;
};

/// One vehicle with what is drawn in it.
struct Stowage {
  const Vehicle* vehicle = nullptr;
  std::vector<std::string> stops;  ///< as the show types them
  std::vector<Standing> pieces;    ///< in order of loading
  std::vector<Solid> blocks;       ///< wheel arches, steps, rails
  UnitSystem units = UnitSystem::metric;
  HouseLift lift;  ///< whose hands load it
};
/// Null vehicle where the kit has none of that code. Pieces with a unit that does not exist are left out.
Stowage stowage_of(const Catalogue& catalogue, const Show& show, const Plan& plan, const VehicleLoading& loading);

/// Where a piece rests and on what. Of a piece on the floor, nothing.
struct Rest {
  int below = 0;    ///< index in the hold
  double area = 0;  ///< of contact, m2
};
std::vector<Rest> rests_on(const Stowage& hold, std::size_t piece);
bool on_floor(const Standing& piece);

/// Faults of one vehicle as they are found.
class FaultList {
 public:
  FaultList(std::string vehicle, std::vector<LoadFault>& faults) : vehicle_(std::move(vehicle)), faults_(faults) {}
  void add(const std::string& unit, Sentence says) { faults_.push_back({vehicle_, unit, std::move(says)}); }

 private:
  std::string vehicle_;
  std::vector<LoadFault>& faults_;
};

}  // namespace dunnage
