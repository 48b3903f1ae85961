// SPDX-License-Identifier: MIT
// `dunnage check` and `dunnage why`: the plan on the terminal.
#include <algorithm>

#include "base/error.h"
#include "base/nearest.h"
#include "check/rules.h"
#include "compare/against.h"
#include "export/plan_json.h"
#include "plan/plan_show.h"
#include "run/commands.h"
#include "run/load_show.h"
#include "run/summary.h"

namespace dunnage {

int check_show(const CheckOptions& options, Desk& desk) {
  Loaded loaded;
  if (!load_show(options.show, loaded, desk.err)) return 1;
  const Plan plan = plan_whole(loaded.catalogue, loaded.show);
  const Findings findings = check_all(loaded.catalogue, loaded.show, plan);
  const UnitSystem units = loaded.catalogue.kit.house.units;
  if (!options.against.empty()) {
    Loaded older;
    if (!load_show(options.against, older, desk.err)) return 1;
    const Plan was = plan_show(older.catalogue, older.show);
    desk.out << changes(change_of({&older.catalogue, &older.show, &was}, {&loaded.catalogue, &loaded.show, &plan}), units);
    return exit_code(plan, findings);
  }
  desk.out << (options.json ? plan_json(loaded.catalogue, plan, findings, units)
                            : summary(loaded.catalogue, plan, findings, units));
  return exit_code(plan, findings);
}

int say_why(const WhyOptions& options, Desk& desk) {
  Loaded loaded;
  if (!load_show(options.show, loaded, desk.err)) return 1;
  const Catalogue& c = loaded.catalogue;
  const int box = c.case_index(options.code);
  const int one = c.unit_index(options.code);
  if (box < 0 && one < 0) {
    std::vector<std::string> known;
    for (const Case& k : c.kit.cases) known.push_back(k.code.value);
    for (const CaseUnit& unit : c.units) known.push_back(unit.code);
    const std::string guess = did_you_mean(options.code, known);
    throw UsageError("the kit has no case \"" + options.code + "\"" + (guess.empty() ? "; see `dunnage list cases`" : ": " + guess));
  }
  const Plan plan = plan_show(c, loaded.show);
  const auto [first, last] = box >= 0 ? c.units_of[static_cast<std::size_t>(box)] : std::pair(one, one + 1);
  for (int u = first; u < last; ++u) desk.out << reasons(c, plan, u, c.kit.house.units);
  return 0;
}

}  // namespace dunnage
