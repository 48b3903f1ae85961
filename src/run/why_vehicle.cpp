// SPDX-License-Identifier: MIT
#include "run/why_vehicle.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "run/on_screen.h"

namespace dunnage {
namespace {

std::string share_words(const Catalogue& catalogue, const Plan& plan, const Vehicle& vehicle, UnitSystem units) {
  int pieces = 0;
  Mass mass;
  bool known = true;
  for (const PlanRow& row : plan.rows) {
    if (!row.goes || row.vehicle != vehicle.code.value) continue;
    ++pieces;
    mass += row.mass;
    known = known && row.mass_known;
  }
  const std::string& name = vehicle.name.value;
  if (pieces == 0)
    return on_screen("{} ({}) stays at home: nothing that goes is meant for it.\n", vehicle.code.value, name);
  std::string out = on_screen("{} ({}) goes with {}, {}{}", vehicle.code.value, name,
                              pieces == 1 ? "1 piece" : on_screen("{} pieces", pieces),
                              print(mass, units, Rounding::up).text(), known ? "" : " and more: a mass is not given");
  for (const VehicleLoading& v : plan.loading->vehicles)
    if (v.vehicle == vehicle.code.value && !v.left.empty()) {
      std::vector<std::string> codes;
      for (const LeftOut& left : v.left) codes.push_back(catalogue.units[static_cast<std::size_t>(left.unit)].code);
      out += on_screen("; left behind, as `check` says why: {}", fmt::join(codes, ", "));
    }
  return out + ".\n";
}

std::string suffice_words(const Catalogue& catalogue, const Plan& plan, const Loading& loading) {
  if (!loading.unsized.empty()) {
    std::vector<std::string> codes;
    for (const int unit : loading.unsized) codes.push_back(catalogue.units[static_cast<std::size_t>(unit)].code);
    return on_screen("Which vehicles suffice was not checked: no size is given of {}.\n", fmt::join(codes, ", "));
  }
  std::vector<std::string> unknown;
  for (const PlanRow& row : plan.rows)
    if (row.goes && !row.mass_known) unknown.push_back(catalogue.units[static_cast<std::size_t>(row.unit)].code);
  if (!unknown.empty())
    return on_screen("Which vehicles suffice was not checked: no mass is given of {}.\n", fmt::join(unknown, ", "));
  for (const Vehicle& v : catalogue.kit.vehicles)
    if (v.cargo && !v.payload && !v.gross)
      return on_screen("Which vehicles suffice was not checked: neither payload nor gross is given of {}.\n",
                       v.code.value);
  if (loading.suffice.empty()) return "No set of the kit's vehicles was found that takes all that goes.\n";
  std::string out =
      "By room and mass these take all that goes, whatever the kit and the show say, the lightest first:\n";
  for (const std::vector<std::string>& set : loading.suffice) out += on_screen("  {}\n", fmt::join(set, " and "));
  return out;
}

}  // namespace

std::string why_vehicle(const Catalogue& catalogue, const Plan& plan, const Vehicle& vehicle, UnitSystem units) {
  return share_words(catalogue, plan, vehicle, units) + suffice_words(catalogue, plan, *plan.loading);
}

}  // namespace dunnage
