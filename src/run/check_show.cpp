// SPDX-License-Identifier: MIT
// `dunnage check` and `dunnage why`: the plan on the terminal.
#include <algorithm>

#include "base/error.h"
#include "base/nearest.h"
#include "check/rules.h"
#include "compare/against.h"
#include "export/plan_json.h"
#include "load/plan_load.h"
#include "plan/plan_show.h"
#include "run/check_style.h"
#include "run/commands.h"
#include "run/load_show.h"
#include "run/summary.h"
#include "run/why_vehicle.h"

namespace dunnage {

int check_show(const CheckOptions& options, Desk& desk) {
  Loaded loaded(desk.share);
  if (!load_show(options.show, loaded, desk.err)) return 1;
  if (!check_style(loaded, desk)) return 1;
  Plan plan = plan_whole(loaded.catalogue, loaded.show);
  if (options.json) plan.loading->suffice = vehicles_that_suffice(loaded.catalogue, loaded.show, plan);
  const Findings findings = check_all(loaded.catalogue, loaded.show, plan);
  const UnitSystem units = loaded.catalogue.kit.house.units;
  if (!options.against.empty()) {
    Loaded older(desk.share);
    if (!load_show(options.against, older, desk.err)) return 1;
    const Plan was = plan_show(older.catalogue, older.show);
    desk.out << changes(change_of({&older.catalogue, &older.show, &was}, {&loaded.catalogue, &loaded.show, &plan}), was,
                        plan, units);
    return exit_code(plan, findings);
  }
  desk.out << (options.json ? plan_json(loaded.catalogue, plan, findings, units)
                            : summary(loaded.catalogue, plan, findings, units));
  return exit_code(plan, findings);
}

namespace {

/// Tells of a vehicle of that code; false where there is none.
bool say_why_vehicle(const Loaded& loaded, const std::string& code, Desk& desk) {
  const Vehicle* vehicle = loaded.catalogue.vehicle(code);
  if (!vehicle) return false;
  Plan plan = plan_whole(loaded.catalogue, loaded.show);
  plan.loading->suffice = vehicles_that_suffice(loaded.catalogue, loaded.show, plan);
  desk.out << why_vehicle(loaded.catalogue, plan, *vehicle, loaded.catalogue.kit.house.units);
  return true;
}

}  // namespace

int say_why(const WhyOptions& options, Desk& desk) {
  Loaded loaded(desk.share);
  if (!load_show(options.show, loaded, desk.err)) return 1;
  const Catalogue& c = loaded.catalogue;
  const int box = c.case_index(options.code);
  const int one = c.unit_index(options.code);
  if (box < 0 && one < 0) {
    if (say_why_vehicle(loaded, options.code, desk)) return 0;
    std::vector<std::string> known;
    for (const Case& k : c.kit.cases) known.push_back(k.code.value);
    for (const CaseUnit& unit : c.units) known.push_back(unit.code);
    for (const Vehicle& vehicle : c.kit.vehicles) known.push_back(vehicle.code.value);
    const std::string guess = did_you_mean(options.code, known);
    throw UsageError("the kit has no case or vehicle \"" + options.code + "\"" +
                     (guess.empty() ? "; see `dunnage list cases`" : ": " + guess));
  }
  const Plan plan = plan_show(c, loaded.show);
  const auto [first, last] = box >= 0 ? c.units_of[static_cast<std::size_t>(box)] : std::pair(one, one + 1);
  for (int u = first; u < last; ++u) desk.out << reasons(c, plan, u, c.kit.house.units);
  return 0;
}

}  // namespace dunnage
