// SPDX-License-Identifier: MIT
#include "check/load_stack.h"

#include <algorithm>
#include <array>
#include <numeric>

#include "base/slack.h"
#include "base/unit.h"
#include "check/lifting.h"
#include "formula/team_lift.h"
#include "formula/vehicle_load.h"

namespace dunnage {
namespace {

/// Sides are drawn in whole millimetres: a strip of one along two edges may hang over.
bool whole_base(const Solid& s, double borne) {
  const double length = s.to[0] - s.from[0], width = s.to[1] - s.from[1];
  return borne >= length * width - level * (length + width);
}

/// May anything at all stand on it?
void judge_top(const Standing& below, const Standing& above, FaultList& faults) {
  if (has_mark(*below.box, Mark::no_stack) || (below.box->stack_count && below.box->stack_count->value == 0))
    faults.add(above.code, said("{} stands on {}, on which nothing may stand.", above.code, below.code));
  else if (has_mark(*below.box, Mark::fragile))
    faults.add(above.code, said("{} stands on {}, which is fragile.", above.code, below.code));
  else if (!below.box->stack)
    faults.add(above.code, said("{} stands on {}, and nobody typed what that bears.", above.code, below.code));
  if (!above.mass_known || !below.mass_known)
    faults.add(above.code, said("{} stands on {}, and the mass of one is not known.", above.code, below.code));
  else if (exceeds(above.mass, below.mass))
    faults.add(above.code, said("{} stands on {}, which is lighter.", above.code, below.code));
}

/// Two people set it down there, their hands a little above its base: below the elbow what the team lifts together.
bool within_reach(const Standing& s, const HouseLift& lift) {
  constexpr double hands = 0.1, elbow = 1.05, shoulder = 1.4;  // metres; heights of a body from memory
  const double at = s.solid.from[2] + hands;
  const TeamLimits limits = team_limits(lift);
  if (at <= elbow + touching) {
    const std::optional<TeamFigure> team = team_figure(2, limits);
    if (team && s.mass <= team->limit) return true;
  }
  const Mass each = filter_limit(
      limits.lifter, at <= shoulder + touching ? HandZone::shoulder_to_elbow : HandZone::above_shoulder, Reach::close);
  return s.mass <= team_limit({each, each}).value_or(each);
}

}  // namespace

void judge_stacks(const Stowage& hold, FaultList& faults) {
  std::vector<std::size_t> order(hold.pieces.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return hold.pieces[a].solid.from[2] > hold.pieces[b].solid.from[2];
  });
  std::vector<Mass> carried(hold.pieces.size());
  std::vector<int> above(hold.pieces.size(), 0);  // in the tallest pile on each
  for (const std::size_t i : order) {
    const Standing& s = hold.pieces[i];
    const std::vector<Rest> rests = rests_on(hold, i);
    double borne = 0;
    for (const Rest& rest : rests) borne += rest.area;
    if (!on_floor(s) && !whole_base(s.solid, borne))
      faults.add(s.code, said("{} is not borne on its whole base.", s.code));
    const std::array<double, 3>&from = s.solid.from, &to = s.solid.to;
    if (!on_floor(s) && s.box->wheels &&
        std::min(to[0] - from[0], to[1] - from[1]) < (to[2] - from[2]) * working_load.rearward - touching)
      faults.add(s.code, said("{} is tall, on wheels, and stands off the floor.", s.code));
    if (!on_floor(s) && s.mass_known && !within_reach(s, hold.lift))
      faults.add(s.code, said("{} stands higher than two people may lift it.", s.code));
    for (const Rest& rest : rests) {
      const auto below = static_cast<std::size_t>(rest.below);
      judge_top(hold.pieces[below], s, faults);
      carried[below] += (s.mass + carried[i]) * (rest.area / borne);
      above[below] = std::max(above[below], above[i] + 1);
    }
  }
  for (std::size_t i = 0; i < hold.pieces.size(); ++i) {
    const Standing& s = hold.pieces[i];
    if (s.box->stack && exceeds(carried[i], s.box->stack->value))
      faults.add(s.code,
                 said("{} carries {}, and bears {}.", s.code, print(carried[i], hold.units, Rounding::up).text(),
                      print(s.box->stack->value, hold.units, Rounding::down).text()));
    if (s.box->stack_count && s.box->stack_count->value > 0 && above[i] > s.box->stack_count->value)
      faults.add(s.code, said("{} has {} pieces on it, one above the other, and takes {}.", s.code, above[i],
                              s.box->stack_count->value));
  }
}

}  // namespace dunnage
