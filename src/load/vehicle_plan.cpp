// SPDX-License-Identifier: MIT
#include "load/vehicle_plan.h"

#include <algorithm>
#include <numeric>

#include "load/cargo_rules.h"
#include "load/pack.h"
#include "load/rows.h"

namespace dunnage {
namespace {

/// More pieces than a row builder sets down in the time of a search.
constexpr int most_for_rows = 400;
/// Nobody loads so many into one vehicle by a drawing: they are named as left out, and a sum may prove it.
constexpr int most_pieces = 1500;

double volume_left(const Cargo& cargo, const std::vector<int>& left) {
  double sum = 0;
  for (std::size_t k = 0; k < left.size(); ++k) {
    if (cargo.kinds[k].stances.empty()) continue;
    const Spot& s = cargo.kinds[k].stances.front().size;
    sum += 1e-9 * s[0] * s[1] * s[2] * left[k];
  }
  return sum;
}

/// All in goes before legal, legal before even. What cannot be unloaded is no plan.
bool better(const Cargo& cargo, const VehiclePlan& a, const VehiclePlan& b) {
  if (a.ways != b.ways) return a.ways;
  const double va = volume_left(cargo, a.left), vb = volume_left(cargo, b.left);
  if (va != vb) return va < vb;
  return a.trim < b.trim;
}

VehiclePlan finished(const Cargo& cargo, const std::vector<StoodBox>& boxes, std::vector<int> left, double tongue) {
  VehiclePlan plan;
  plan.boxes = loading_order(cargo, trimmed(cargo, boxes, tongue));
  plan.left = std::move(left);
  plan.trim = trim_of(cargo, plan.boxes, tongue);
  plan.ways = ways_free(cargo, plan.boxes);
  return plan;
}

/// Pieces so alike in mass and so strong that no stack of them breaks a rule.
bool any_stack_holds(const Cargo& cargo) {
  double all = 0;
  for (const CargoKind& k : cargo.kinds) all += k.mass * static_cast<double>(k.units.size());
  return std::all_of(cargo.kinds.begin(), cargo.kinds.end(), [&](const CargoKind& k) {
    return k.mass_known && k.mass == cargo.kinds.front().mass && k.highest >= cargo.room[2] && k.bears >= all &&
           k.levels == most_stacked && !k.wheels;
  });
}

/// Stop by stop, last off first, each into what the ones before it left.
VehiclePlan searched(const Cargo& cargo, long budget, double tongue) {
  const CargoRules rules(cargo);
  std::vector<int> left(cargo.kinds.size());
  std::vector<StoodBox> boxes;
  std::vector<int> stops;
  for (std::size_t k = 0; k < cargo.kinds.size(); ++k) {
    left[k] = static_cast<int>(cargo.kinds[k].units.size());
    if (std::find(stops.begin(), stops.end(), cargo.kinds[k].stop) == stops.end()) stops.push_back(cargo.kinds[k].stop);
  }
  std::sort(stops.rbegin(), stops.rend());
  long work = 0;
  for (const int stop : stops) {
    PackProblem problem;
    problem.room = cargo.room;
    problem.obstacles = cargo.obstacles;
    problem.standing = boxes;
    problem.rules = stops.size() == 1 && any_stack_holds(cargo) ? nullptr : &rules;
    for (std::size_t k = 0; k < cargo.kinds.size(); ++k)
      problem.boxes.push_back({cargo.kinds[k].stances, cargo.kinds[k].stop == stop ? left[k] : 0});
    const Packed packed = pack(problem, budget / static_cast<long>(stops.size()));
    work += packed.work;
    for (const StoodBox& b : packed.boxes) {
      boxes.push_back(b);
      --left[static_cast<std::size_t>(b.box)];
    }
  }
  VehiclePlan plan = finished(cargo, boxes, std::move(left), tongue);
  plan.work = work;
  return plan;
}

/// Rows in several orders. What an order leaves out goes in earlier the next time, so that what is hard to place is
/// placed while there is room (the "squeaky wheel" of Joslin & Clements, J. of AI Research 10 (1999) 353-373).
class RowTrials {
 public:
  RowTrials(const Cargo& cargo, double tongue, long budget) : cargo_(cargo), tongue_(tongue), budget_(budget) {}

  /// Tries on until `rounds` have been made in all.
  void run(VehiclePlan& best, int rounds) {
    if (orders_.empty())
      for (const RowOrder first : {RowOrder::heavy, RowOrder::strong, RowOrder::large, RowOrder::wide})
        orders_.push_back(row_order(cargo_, first));
    for (; round_ < rounds && whole_ < most_whole && work_ < budget_; ++round_)
      for (std::vector<int>& order : orders_)
        if (attempt(order, best)) return;
    if (whole_ == 0) take(std::move(part_), best);
    part_ = {};
  }
  long work() const { return work_; }

  static constexpr int most_rounds = 60;

 private:
  static constexpr int most_whole = 12;  // plans that hold all, of which none rests on the axles as it must
  static constexpr int calm_rounds = 8;  // then orders go round in circles

  bool attempt(std::vector<int>& order, VehiclePlan& best) {
    RowPlan rows = build_rows(cargo_, order);
    work_ += rows.work;
    const double left = volume_left(cargo_, rows.left);
    if (left > 0) {
      learn(order, rows.left, round_);
      if (left >= least_left_) return false;
      least_left_ = left;
      part_ = std::move(rows);
      return false;
    }
    ++whole_;
    take(std::move(rows), best);
    stir(order, round_);
    return best.ways && best.trim.over <= 1e-6;
  }

  void take(RowPlan rows, VehiclePlan& best) {
    if (rows.left.empty()) return;
    VehiclePlan plan = finished(cargo_, rows.boxes, std::move(rows.left), tongue_);
    if (!any_ || better(cargo_, plan, best)) best = std::move(plan);
    any_ = true;
  }

  static void learn(std::vector<int>& order, const std::vector<int>& left, int round) {
    for (std::size_t i = 0; i < order.size(); ++i) {
      if (left[static_cast<std::size_t>(order[i])] == 0) continue;
      const auto at = order.begin() + static_cast<std::ptrdiff_t>(i);
      std::rotate(order.begin() + static_cast<std::ptrdiff_t>(i / 2), at, at + 1);
    }
    if (round >= calm_rounds) stir(order, round);
  }

  /// Two swaps, at places that differ from round to round and not from run to run.
  static void stir(std::vector<int>& order, int round) {
    const auto at = [&](int n) { return static_cast<std::size_t>(n) % order.size(); };
    if (order.empty()) return;
    std::swap(order[at(7 * round + 1)], order[at(13 * round + 5)]);
    std::swap(order[at(11 * round + 2)], order[at(17 * round + 3)]);
  }

  const Cargo& cargo_;
  double tongue_;
  long budget_, work_ = 0;
  RowPlan part_;
  double least_left_ = 1e300;
  std::vector<std::vector<int>> orders_;
  int round_ = 0, whole_ = 0;
  bool any_ = false;
};

/// Something is left that would go in by itself, or nothing can be unloaded.
bool unfinished(const Cargo& cargo, const VehiclePlan& best) {
  for (std::size_t k = 0; k < cargo.kinds.size(); ++k)
    if (best.left[k] > 0 && !cargo.kinds[k].stances.empty()) return true;
  return !best.ways;
}

long search(const Cargo& cargo, long budget, double tongue, VehiclePlan& best) {
  if (!unfinished(cargo, best)) return 0;
  VehiclePlan plan = searched(cargo, budget, tongue);
  const long work = plan.work;
  if (better(cargo, plan, best)) best = std::move(plan);
  return work;
}

/// The last resort, where no order of things gave every piece a way: one piece that bears nothing stays behind, the
/// outermost that frees all others; where no single one does, the outermost, and again.
void leave_stuck(const Cargo& cargo, VehiclePlan& plan, double tongue) {
  while (!plan.ways && !plan.boxes.empty()) {
    std::size_t stuck = plan.boxes.size() - 1;
    for (std::size_t i = plan.boxes.size(); i-- > 0;) {
      std::vector<StoodBox> others = plan.boxes;
      others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
      if (!stands(cargo, others) || !ways_free(cargo, others)) continue;
      stuck = i;
      break;
    }
    ++plan.left[static_cast<std::size_t>(plan.boxes[stuck].box)];
    plan.boxes.erase(plan.boxes.begin() + static_cast<std::ptrdiff_t>(stuck));
    plan.trim = trim_of(cargo, plan.boxes, tongue);
    plan.ways = ways_free(cargo, plan.boxes);
  }
}

}  // namespace

int VehiclePlan::left_out() const { return std::accumulate(left.begin(), left.end(), 0); }

namespace {

VehiclePlan plan_as_is(const Cargo& cargo, const LoadEffort& effort, double tongue) {
  VehiclePlan best;
  best.ways = false;
  for (const CargoKind& kind : cargo.kinds) best.left.push_back(static_cast<int>(kind.units.size()));
  if (best.left_out() > most_pieces) {
    best.ways = true;
    return best;
  }
  const bool plain = best.left_out() > most_for_rows || any_stack_holds(cargo);
  RowTrials trials(cargo, tongue, effort.budget / 8);
  if (!plain) trials.run(best, 1);
  // A little of the search finds most of what there is; then rows have their turn again, which are easier to build.
  long work = search(cargo, plain ? effort.budget : effort.budget / 5, tongue, best);
  if (!plain && (unfinished(cargo, best) || best.trim.over > 1e-6)) {
    trials.run(best, RowTrials::most_rounds);
    work += search(cargo, effort.budget, tongue, best);
  }
  leave_stuck(cargo, best, tongue);
  work += trials.work();
  best.work = work;
  return best;
}

/// Left for right.
Cargo mirrored(Cargo cargo) {
  for (PackObstacle& o : cargo.obstacles) {
    std::swap(o.from[1], o.to[1]);
    o.from[1] = cargo.room[1] - o.from[1];
    o.to[1] = cargo.room[1] - o.to[1];
  }
  for (SideDoor& door : cargo.sides) door.left = !door.left;
  return cargo;
}

Cargo without_sides(Cargo cargo) {
  for (CargoKind& kind : cargo.kinds)
    std::erase_if(kind.stances, [&](const PackStance& stance) { return !rear_takes(cargo, stance); });
  cargo.sides.clear();
  return cargo;
}

}  // namespace

VehiclePlan plan_vehicle(const Cargo& cargo, const LoadEffort& effort, double tongue) {
  VehiclePlan best = plan_as_is(cargo, effort, tongue);
  const auto failed = [&] { return unfinished(cargo, best) && best.left_out() <= most_pieces; };
  if (cargo.sides.empty() || !failed()) return best;
  // Rows begin at the left wall, so that a door there is of less use to them.
  VehiclePlan turned = plan_as_is(mirrored(cargo), effort, tongue);
  for (StoodBox& b : turned.boxes) b.at[1] = cargo.room[1] - b.at[1] - b.size[1];
  const long work = best.work + turned.work;
  if (better(cargo, turned, best)) best = std::move(turned);
  best.work = work;
  if (!failed()) return best;
  VehiclePlan plain = plan_as_is(without_sides(cargo), effort, tongue);
  plain.work += work;
  if (better(cargo, plain, best)) return plain;
  best.work = plain.work;
  return best;
}

}  // namespace dunnage
