// SPDX-License-Identifier: MIT
// A kit's text: read, held against itself, planned for a plain show, labelled, and written out as a spreadsheet.
#include <cassert>
#include <sstream>

#include "check/lifting.h"
#include "document/case_label.h"
#include "export/plan_json.h"
#include "ground.h"
#include "read/case_rows.h"
#include "read/cross_check.h"
#include "read/kit_file.h"
#include "read/show_file.h"
#include "run/load_show.h"
#include "write/csv_out.h"

namespace {

using namespace dunnage;

/// States every fact, so that any rule of the kit can be asked.
constexpr const char* plain_show = R"(kit = "kit"
[show]
title = "Fuzz"
date = 2027-06-19
travel_days = 1
setting = "outdoor"
floor = "grass"
after_dark = true
crew = 7
audience = 300
console = "digital"
with = []
)";

void label(const Catalogue& catalogue) {
  std::vector<Handling> handling;
  std::vector<int> units;
  for (int u = 0; u < static_cast<int>(catalogue.units.size()); ++u) {
    handling.push_back(handling_of(catalogue.case_at(u), catalogue.mass_of(u), catalogue.kit.house.lift));
    if (u < 50) units.push_back(u);
  }
  const Document document = case_labels(catalogue, handling, units, ground().words, catalogue.kit.house.units, "7");
  assert(document.sections.size() == units.size());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, std::size_t size) {
  if (size > most_fuzzed) return -1;
  Sources sources;
  Diagnostics diagnostics;
  const std::vector<NamedText> files{{"kit.toml", std::string(reinterpret_cast<const char*>(data), size)}};
  auto kit = read_kit_texts("kit", files, sources, diagnostics);
  auto show = read_show_text("show.toml", plain_show, sources, diagnostics);
  assert(show);
  if (!kit) return diagnostics.has_errors() ? 0 : (assert(false), 0);
  const Catalogue catalogue = make_catalogue(std::move(*kit));
  cross_check(catalogue, &*show, diagnostics);
  assert(!render(diagnostics, sources).empty() || diagnostics.all().empty());
  if (diagnostics.has_errors()) return 0;
  label(catalogue);
  for (const char* section : {"case", "item", "unit"}) csv_text(section_rows(files, section, sources, diagnostics));
  // A model of thousands of units is the solver's own work, which other tests hold to its limits.
  if (catalogue.units.size() > 300) return 0;
  const Plan plan = plan_whole(catalogue, *show);
  for (const VehicleLoading& load : plan.loading->vehicles)
    assert(load.faults.empty() && "nothing against the planner");
  const Findings findings = check_all(catalogue, *show, plan);
  plan_json(catalogue, plan, findings, catalogue.kit.house.units);
  every_document({catalogue, *show, plan, findings, ground().words, catalogue.kit.house.units, "mph", "7", {}, {}, {}});
  return 0;
}
