// SPDX-License-Identifier: MIT
// Statics of vehicles and the counting of tie-downs.
#include "formula/vehicle_load.h"

#include <algorithm>

namespace dunnage {

TongueFigures tongue_load(Mass empty, Mass empty_tongue, Length coupling_to_axle,
                          const std::vector<PlacedMass>& load) {
  TongueFigures f{empty_tongue, empty - empty_tongue, empty, 0};
  for (const PlacedMass& p : load) {
    const double at = p.behind / coupling_to_axle;
    f.tongue += p.mass * (1 - at);
    f.axle += p.mass * at;
    f.gross += p.mass;
  }
  f.share = f.tongue / f.gross;
  return f;
}

Length shift_for_tongue(Mass change, Mass moved, Length coupling_to_axle) {
  return coupling_to_axle * (change / moved);
}

AxleFigures axle_loads(Mass empty_front, Mass empty_rear, Length wheelbase,
                       const std::vector<PlacedMass>& load, Mass tongue, Length hitch_behind) {
  AxleFigures f{empty_front, empty_rear, empty_front + empty_rear};
  std::vector<PlacedMass> all = load;
  all.push_back({tongue, wheelbase + hitch_behind});
  for (const PlacedMass& p : all) {
    const double at = p.behind / wheelbase;
    f.front += p.mass * (1 - at);
    f.rear += p.mass * at;
    f.total += p.mass;
  }
  return f;
}

int tie_downs(Length length, Mass mass, bool blocked_forward) {
  const double feet = length / unit::foot;
  if (blocked_forward) return std::max(1, static_cast<int>(steps_up(feet / 10)));
  if (feet <= 5 + 1e-9) return mass <= 1100 * unit::pound ? 1 : 2;
  return 2 + static_cast<int>(steps_up(std::max(0.0, feet - 10) / 10));
}

Mass working_load_needed(Mass mass) { return mass * 0.5; }

Mass working_load_counted(Mass limit, TieDownRoute route) {
  return route == TieDownRoute::over_to_other_side ? limit : limit * 0.5;
}

}  // namespace dunnage
