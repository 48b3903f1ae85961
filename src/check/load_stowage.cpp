// SPDX-License-Identifier: MIT
#include "check/load_stowage.h"

#include <algorithm>
#include <cmath>

namespace dunnage {

Solid solid(const Cuboid& box) {
  const double x = box.x.si(), y = box.y.si(), z = box.z.si();
  return {{x, y, z}, {x + box.length.si(), y + box.width.si(), z + box.height.si()}};
}

bool overlap(const Solid& a, const Solid& b) {
  for (std::size_t i = 0; i < 3; ++i)
    if (a.from[i] > b.to[i] - touching || b.from[i] > a.to[i] - touching) return false;
  return true;
}

double shared_floor(const Solid& a, const Solid& b) {
  double area = 1;
  for (std::size_t i = 0; i < 2; ++i) {
    const double side = std::min(a.to[i], b.to[i]) - std::max(a.from[i], b.from[i]);
    if (side <= touching) return 0;
    area *= side;
  }
  return area;
}

Stowage stowage_of(const Catalogue& catalogue, const Show& show, const Plan& plan, const VehicleLoading& loading) {
  Stowage hold;
  hold.vehicle = catalogue.vehicle(loading.vehicle);
  hold.units = catalogue.kit.house.units;
  hold.lift = catalogue.kit.house.lift;
  if (!hold.vehicle) return hold;
  for (const Load& load : show.loads)
    if (load.vehicle.value == loading.vehicle)
      for (const Text& stop : load.stops) hold.stops.push_back(stop.value);
  for (const CargoBlock& b : hold.vehicle->blocks)
    hold.blocks.push_back(solid({b.x, b.y, b.z, b.length, b.width, b.height}));
  for (const LoadedPiece& piece : loading.pieces) {
    const auto at = static_cast<std::size_t>(piece.unit);
    if (piece.unit < 0 || at >= catalogue.units.size() || at >= plan.rows.size()) continue;
    const PlanRow& row = plan.rows[at];
    hold.pieces.push_back(
        {&piece, &catalogue.case_at(piece.unit), catalogue.units[at].code, solid(piece.box), row.mass, row.mass_known});
  }
  return hold;
}

bool on_floor(const Standing& piece) { return piece.solid.from[2] <= level; }

std::vector<Rest> rests_on(const Stowage& hold, std::size_t piece) {
  std::vector<Rest> rests;
  const Standing& above = hold.pieces[piece];
  if (on_floor(above)) return rests;
  for (std::size_t i = 0; i < hold.pieces.size(); ++i) {
    const Solid& below = hold.pieces[i].solid;
    if (i == piece || std::abs(below.to[2] - above.solid.from[2]) > level) continue;
    const double area = shared_floor(below, above.solid);
    if (area > 0) rests.push_back({static_cast<int>(i), area});
  }
  return rests;
}

}  // namespace dunnage
