// SPDX-License-Identifier: MIT
#include "check/load_faults.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "check/load_place.h"
#include "check/load_stack.h"
#include "check/load_stages.h"
#include "check/load_stowage.h"
#include "check/load_way.h"

namespace dunnage {
namespace {

constexpr double near_enough = 0.1;  ///< kg, between two ways to sum the same moments

/// How often each unit is drawn, left out by name, or known to have no size; and in whose vehicle.
struct Seen {
  int drawn = 0, left = 0, unsized = 0;
  std::string vehicle;
};

std::map<int, Seen> seen_in(const Loading& loading) {
  std::map<int, Seen> seen;
  for (const VehicleLoading& v : loading.vehicles) {
    for (const LoadedPiece& piece : v.pieces) {
      ++seen[piece.unit].drawn;
      seen[piece.unit].vehicle = v.vehicle;
    }
    for (const LeftOut& left : v.left) ++seen[left.unit].left;
  }
  for (const int unit : loading.unsized) ++seen[unit].unsized;
  return seen;
}

/// Every unit that goes in a planned vehicle is drawn once, or named as left out.
void judge_counts(const Catalogue& c, const Plan& plan, const Loading& loading, std::vector<LoadFault>& faults) {
  std::map<int, Seen> seen = seen_in(loading);
  for (const PlanRow& row : plan.rows) {
    const auto found = seen.find(row.unit);
    const Seen one = found == seen.end() ? Seen{} : found->second;
    if (found != seen.end()) seen.erase(found);
    const std::string& code = c.units[static_cast<std::size_t>(row.unit)].code;
    const auto say = [&](const std::string& vehicle, Sentence what) {
      faults.push_back({vehicle, code, std::move(what)});
    };
    const bool planned = std::any_of(loading.vehicles.begin(), loading.vehicles.end(), [&](const VehicleLoading& v) {
      return row.vehicle.empty() || v.vehicle == row.vehicle;
    });
    const int times = one.drawn + one.left + one.unsized;
    if (!row.goes && times > 0)
      say(one.vehicle, said("{} is in the plan, and stays at home.", code));
    else if (times > 1)
      say(one.vehicle, said("{} is in the plan {} times.", code, times));
    else if (row.goes && planned && times == 0)
      say(row.vehicle, said("{} is missing in the plan.", code));
    else if (one.drawn > 0 && !row.vehicle.empty() && row.vehicle != one.vehicle)
      say(one.vehicle, said("{} stands in {}, and goes in {}.", code, one.vehicle, row.vehicle));
  }
  for (const auto& [unit, one] : seen)  // left out or without a size: what is drawn was looked up before
    faults.push_back({one.vehicle, {}, said("Unit {} is in the plan, and the kit has no such unit.", unit)});
}

/// Cargo and its moment about the bulkhead, of what is aboard after some stops, from the corners as drawn.
struct Sum {
  double mass = 0, moment = 0;
};

Sum sum_aboard(const Stowage& hold, const std::vector<std::string>& done) {
  Sum sum;
  for (const Standing& s : hold.pieces) {
    const auto stop = static_cast<std::size_t>(std::max(s.piece->stop, 0));
    if (stop < hold.stops.size() && std::find(done.begin(), done.end(), hold.stops[stop]) != done.end()) continue;
    sum.mass += s.mass.si();
    sum.moment += s.mass.si() * (s.solid.from[0] + s.solid.to[0]) / 2;
  }
  return sum;
}

bool differ(double a, double b) { return std::abs(a - b) > near_enough; }

/// The axles as printed against equilibrium: forces in balance, and moments about the coupling or the front axle.
bool out_of_balance(const Vehicle& v, const Sum& sum, const LoadStage& stage) {
  if (differ(sum.mass, stage.cargo.si()) || differ((stage.left + stage.right).si(), sum.mass)) return true;
  if (stage.axle && stage.tongue) {
    const double empty = v.empty_axle->value.si() + v.empty_tongue->value.si(), arm = v.coupling_to_axle->value.si();
    if (differ(stage.axle->si() + stage.tongue->si(), empty + sum.mass)) return true;
    const double moment = v.empty_axle->value.si() * arm + sum.moment + sum.mass * v.coupling_to_cargo->value.si();
    return differ(stage.axle->si(), moment / arm);
  }
  if (stage.front && stage.rear && stage.total) {
    const double people = v.people_and_fuel ? v.people_and_fuel->value.si() : 0;
    const double bare = v.empty_front->value.si() + v.empty_rear->value.si(), base = v.wheelbase->value.si();
    const double tongue = stage.total->si() - bare - people - sum.mass;  // people count on either axle, once in all
    if (differ(stage.front->si() + stage.rear->si() - people, stage.total->si())) return true;
    const double hitch = base + (v.hitch_behind ? v.hitch_behind->value.si() : 0);
    const double moment =
        v.empty_rear->value.si() * base + sum.moment + sum.mass * v.front_to_cargo->value.si() + tongue * hitch;
    return differ(stage.rear->si() - people, moment / base);
  }
  return false;
}

void judge_sums(const Stowage& hold, const std::vector<LoadStage>& stages, FaultList& faults) {
  std::vector<std::string> done;
  for (const LoadStage& stage : stages) {
    if (!stage.after.empty()) done.push_back(stage.after);
    if (out_of_balance(*hold.vehicle, sum_aboard(hold, done), stage))
      faults.add({}, stage.after.empty() ? said("Its axle loads at departure are not those of the drawing.")
                                         : said("Its axle loads after {} are not those of the drawing.", stage.after));
  }
}

}  // namespace

std::vector<LoadFault> load_faults(const Catalogue& catalogue, const Show& show, const Plan& plan,
                                   const Loading& loading) {
  std::vector<LoadFault> faults;
  std::vector<Stowage> holds;
  for (const VehicleLoading& vehicle : loading.vehicles) {
    holds.push_back(stowage_of(catalogue, show, plan, vehicle));
    if (!holds.back().vehicle || holds.back().pieces.size() != vehicle.pieces.size())
      faults.push_back({vehicle.vehicle, {}, said("The plan names a vehicle or a unit that the kit does not have.")});
  }
  if (!faults.empty()) return faults;  // nothing else can be asked of it
  for (std::size_t i = 0; i < holds.size(); ++i) {
    const VehicleLoading& vehicle = loading.vehicles[i];
    const Stowage& hold = holds[i];
    FaultList list(vehicle.vehicle, faults);
    judge_places(hold, list);
    judge_stances(hold, list);
    judge_stacks(hold, list);
    judge_ways(hold, plan, list);
    judge_sums(hold, load_stages(catalogue, show, plan, loading, vehicle).stages, list);
  }
  judge_counts(catalogue, plan, loading, faults);
  return faults;
}

void judge_loading(const Catalogue& catalogue, const Show& show, const Plan& plan, Loading& loading) {
  for (const LoadFault& fault : load_faults(catalogue, show, plan, loading)) {
    const auto theirs = [&](const VehicleLoading& v) { return v.vehicle == fault.vehicle; };
    const bool nobodys = std::none_of(loading.vehicles.begin(), loading.vehicles.end(), theirs);
    for (VehicleLoading& vehicle : loading.vehicles)
      if (nobodys || theirs(vehicle)) vehicle.faults.push_back(fault);
  }
  for (VehicleLoading& vehicle : loading.vehicles)
    if (!vehicle.faults.empty()) vehicle.pieces.clear();
}

}  // namespace dunnage
