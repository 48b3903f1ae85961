// SPDX-License-Identifier: MIT
// A show's text against the kit of the examples: read, planned, checked, every sheet in words.
#include <cassert>
#include <sstream>

#include "export/plan_json.h"
#include "ground.h"
#include "read/cross_check.h"
#include "read/show_file.h"
#include "run/load_show.h"
#include "run/summary.h"

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, std::size_t size) {
  using namespace dunnage;
  if (size > most_fuzzed) return -1;
  const Catalogue& catalogue = ground().catalogue;
  Sources sources;
  Diagnostics diagnostics;
  const auto show =
      read_show_text("show.toml", std::string(reinterpret_cast<const char*>(data), size), sources, diagnostics);
  assert(show || diagnostics.has_errors());
  if (!show) return 0;
  cross_check(catalogue, &*show, diagnostics);
  assert(!render(diagnostics, sources).empty() || diagnostics.all().empty());
  if (diagnostics.has_errors()) return 0;
  const Plan plan = plan_whole(catalogue, *show);
  for (const VehicleLoading& load : plan.loading->vehicles)
    assert(load.faults.empty() && "nothing against the planner");
  const Findings findings = check_all(catalogue, *show, plan);
  plan_json(catalogue, plan, findings, UnitSystem::us);
  summary(catalogue, plan, findings, UnitSystem::metric);
  for (const UnitSystem units : {UnitSystem::us, UnitSystem::metric})
    every_document({catalogue, *show, plan, findings, ground().words, units, "mph", "7", {}, {}, {}});
  return 0;
}
