// SPDX-License-Identifier: MIT
// Rule extinguishers: one for each 3000 square feet of canopies or part.
#include "check/fire_points.h"

#include "base/slack.h"
#include "check/say.h"
#include "check/standing_site.h"
#include "formula/access.h"

namespace dunnage {
namespace {

/// Number first, then the walk to the nearest one.
void judge(Finding& f, const Show& show, Area area, int have, int needed, UnitSystem units) {
  f.outcome = have >= needed ? Outcome::within : Outcome::over;
  const std::string covered = print(area, units, Rounding::up).text();
  f.says = have >= needed
               ? said("{} for {} of canopies: {} asked.", have, covered, needed)
               : said("{} for {} of canopies: {} asked: bring {} more.", have, covered, needed, needed - have);
  const std::string most = print(extinguisher_reach_a, units, Rounding::down).text();
  if (!show.site.extinguisher_walk) {
    assume(f, said("every point within {} of an extinguisher: pace it out", most));
    return;
  }
  const Length walk = show.site.extinguisher_walk->value;
  const bool far = exceeds(walk, extinguisher_reach_a);
  if (far) f.outcome = Outcome::over;
  const std::string longest = print(walk, units, Rounding::up).text();
  f.says.then(far ? said("The longest walk to one is {}, {} at most: move one nearer, or bring another.", longest, most)
                  : said("The longest walk to one is {}, {} at most.", longest, most));
}

}  // namespace

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
  Finding f = begin_finding(RuleName::extinguishers, {}, said("canopies"), show.show_place);
  f.sources = {said("City of Fort Worth (Texas), tent permit page, year not seen"), as_is("29 CFR 1910.157(d)")};
  f.caution = said("Within {} of one where fuel is. The fire marshal's list wins.",
                   print(extinguisher_reach_b, units, Rounding::down).text());
  const int needed = extinguishers(area);
  f.measured = static_cast<double>(have);
  f.limit = static_cast<double>(needed);
  if (is_indoor(show))
    say_does_not_apply(f, setting_place(show), said("Indoors: the building's own. Know where they hang."));
  else if (unknown > 0)
    say_not_given(f, {said("the plan of a canopy")}, said("Measure it and type it in the kit."));
  else if (!provided && !catalogue.knows(word))
    say_not_given(f, {said("an extinguisher: nothing in the kit serves as \"extinguisher\" and the site has none")},
                  said("Ask the venue or bring one, and type it."));
  else
    judge(f, show, area, have, needed, units);
  findings.list.push_back(f);
}

}  // namespace dunnage
