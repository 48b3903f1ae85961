// SPDX-License-Identifier: MIT
// Which of the owned vehicles would be enough.
#include <algorithm>
#include <bit>

#include "load/plan_load.h"

namespace dunnage {
namespace {

constexpr std::size_t most_vehicles = 8;  // sets of more are not gone through
constexpr long small_budget = 20'000'000;

Mass empty_mass(const Vehicle& v) {
  Mass sum;
  for (const Maybe<Mass>* part : {&v.empty_front, &v.empty_rear, &v.empty_axle, &v.empty_tongue})
    if (*part) sum += (*part)->value;
  return sum;
}

bool takes_all(const Catalogue& c, const Show& show, const Plan& plan) {
  const Loading loading = plan_load(c, show, plan, {small_budget, LoadEffort{}.hands});
  return !loading.vehicles.empty() && std::all_of(loading.vehicles.begin(), loading.vehicles.end(),
                                                  [](const VehicleLoading& v) { return v.left.empty(); });
}

/// The vehicles of a set, each trailer with what pulls it; empty where one stands without.
std::vector<Vehicle> set_of(const std::vector<Vehicle>& vehicles, unsigned bits) {
  std::vector<Vehicle> out;
  for (std::size_t i = 0; i < vehicles.size(); ++i)
    if (bits >> i & 1U) out.push_back(vehicles[i]);
  for (const Vehicle& v : out) {
    if (v.kind != Vehicle::Kind::trailer || !v.pulled_by) continue;
    if (std::none_of(out.begin(), out.end(), [&](const Vehicle& o) { return o.code.value == v.pulled_by->value; }))
      return {};
  }
  return out;
}

}  // namespace

std::vector<std::vector<std::string>> vehicles_that_suffice(const Catalogue& catalogue, const Show& show,
                                                            const Plan& plan) {
  std::vector<Vehicle> vehicles;
  for (const Vehicle& v : catalogue.kit.vehicles)
    if (v.cargo && vehicles.size() < most_vehicles) vehicles.push_back(v);
  for (const int unit : plan.pulled())
    if (!catalogue.case_at(unit).size) return {};
  Plan anywhere = plan;
  for (PlanRow& row : anywhere.rows) row.vehicle.clear();
  struct Found {
    Mass empty;
    std::vector<std::string> codes;
  };
  std::vector<Found> found;
  for (int size = 1; size <= static_cast<int>(vehicles.size()) && found.empty(); ++size)
    for (unsigned bits = 1; bits < 1U << vehicles.size(); ++bits) {
      if (std::popcount(bits) != size) continue;
      Catalogue some = catalogue;
      some.kit.vehicles = set_of(vehicles, bits);
      if (some.kit.vehicles.empty()) continue;
      Show sends = show;
      std::erase_if(sends.loads, [&](const Load& l) {
        return std::none_of(some.kit.vehicles.begin(), some.kit.vehicles.end(),
                            [&](const Vehicle& v) { return v.code.value == l.vehicle.value; });
      });
      if (sends.loads.size() < some.kit.vehicles.size()) sends.loads.clear();
      if (!takes_all(some, sends, anywhere)) continue;
      Found one;
      for (const Vehicle& v : some.kit.vehicles) {
        one.empty += empty_mass(v);
        one.codes.push_back(v.code.value);
      }
      found.push_back(std::move(one));
    }
  std::stable_sort(found.begin(), found.end(), [](const Found& a, const Found& b) { return a.empty < b.empty; });
  std::vector<std::vector<std::string>> out;
  for (Found& f : found) out.push_back(std::move(f.codes));
  return out;
}

}  // namespace dunnage
