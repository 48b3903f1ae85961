// SPDX-License-Identifier: MIT
// Statics of vehicles and the counting of tie-downs.
#include "formula/vehicle_load.h"

#include <algorithm>

#include "base/slack.h"

namespace dunnage {

TongueFigures tongue_load(Mass empty, Mass empty_tongue, Length coupling_to_axle, const std::vector<PlacedMass>& load) {
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

AxleFigures axle_loads(Mass empty_front, Mass empty_rear, Length wheelbase, const std::vector<PlacedMass>& load,
                       Mass tongue, Length hitch_behind) {
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

namespace {

/// Keeps the least of several limits, none of which is below nothing.
class Least {
 public:
  void take(Mass limit) {
    const Mass held = std::max(limit, Mass{});
    least_ = least_ ? std::min(*least_, held) : held;
  }
  /// Cargo of which a share rests on something that bears `left`.
  void take_share(Mass left, double share) {
    if (share > 1e-12) take(left * (1 / share));
  }
  std::optional<Mass> get() const { return least_; }

 private:
  std::optional<Mass> least_;
};

}  // namespace

std::optional<Mass> allowed_cargo(const AxleLimits& limits, Length centre) {
  Least least;
  const double rear = centre / limits.wheelbase, front = 1 - rear;
  const Mass bare = limits.front0 + limits.rear0;
  if (limits.gross) least.take(*limits.gross - bare);
  if (limits.front) least.take_share(*limits.front - limits.front0, front);
  if (limits.rear) least.take_share(*limits.rear - limits.rear0, rear);
  least.take_share(limits.front0 - bare * limits.steered, limits.steered - front);
  return least.get();
}

std::optional<Mass> allowed_cargo(const TongueLimits& limits, Length centre) {
  Least least;
  const double axle = centre / limits.coupling_to_axle, tongue = 1 - axle;
  if (limits.gross) least.take(*limits.gross - limits.empty);
  if (limits.axle) least.take_share(*limits.axle - (limits.empty - limits.tongue0), axle);
  if (limits.tongue) least.take_share(*limits.tongue - limits.tongue0, tongue);
  if (limits.share_to) least.take_share(limits.empty * *limits.share_to - limits.tongue0, tongue - *limits.share_to);
  if (limits.share_from && limits.tongue0 >= limits.empty * *limits.share_from)
    least.take_share(limits.tongue0 - limits.empty * *limits.share_from, *limits.share_from - tongue);
  return least.get();
}

int tie_downs(Length length, Mass mass, bool blocked_forward) {
  const double feet = length / unit::foot;
  if (blocked_forward) return std::max(1, static_cast<int>(steps_up(feet / 10)));
  if (!exceeds(feet, 5.0)) return mass <= 1100 * unit::pound ? 1 : 2;
  return 2 + static_cast<int>(steps_up(std::max(0.0, feet - 10) / 10));
}

Mass working_load_needed(Mass mass) { return mass * 0.5; }

Mass working_load_counted(Mass limit, TieDownRoute route) {
  return route == TieDownRoute::over_to_other_side ? limit : limit * 0.5;
}

}  // namespace dunnage
