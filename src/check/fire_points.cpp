// SPDX-License-Identifier: MIT
// Rule extinguishers: one for each 3000 square feet of canopies or part.
#include "check/fire_points.h"

#include <fmt/format.h>

#include "check/canopy_site.h"
#include "check/say.h"
#include "formula/access.h"

namespace dunnage {

void check_extinguishers(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  constexpr const char* word = "extinguisher";
  Area area;
  int canopies = 0, unknown = 0;
  for (const Use& use : show.uses) {
    const Structure* s = catalogue.structure(use.structure.value);
    if (!s || s->kind != StructureKind::canopy) continue;
    ++canopies;
    if (s->plan_length && s->plan_width)
      area += s->plan_length->value * s->plan_width->value;
    else
      ++unknown;
  }
  if (canopies == 0) return;
  int have = going_that_serve(catalogue, plan, word);
  bool provided = false;
  for (const SiteHas& has : show.site.has)
    if (has.what.value == word) {
      have += has.enough() ? 1 : has.count;
      provided = true;
    }
  const UnitSystem units = catalogue.kit.house.units;
  Finding f = begin_finding("extinguishers", "canopies", show.show_place);
  f.source = "a city's tent permit page; 29 CFR 1910.157(d)";
  f.caution = fmt::format("Every point within {} of one. The fire marshal's list wins.",
                          print(extinguisher_reach_a, units, Rounding::down).text());
  const int needed = extinguishers(area);
  f.measured = static_cast<double>(have);
  f.limit = static_cast<double>(needed);
  if (unknown > 0) {
    say_not_given(f, {"the plan of a canopy"});
  } else if (!provided && !catalogue.knows(word)) {
    say_not_given(f,
                  {"an extinguisher: nothing in the kit serves as \"extinguisher\" and the site has none"});
  } else {
    f.outcome = have >= needed ? Outcome::within : Outcome::over;
    f.says = fmt::format("{} for {} of canopies: {} asked.", have, print(area, units, Rounding::up).text(),
                         needed);
  }
  findings.list.push_back(f);
}

}  // namespace dunnage
