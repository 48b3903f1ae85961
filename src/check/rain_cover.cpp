// SPDX-License-Identifier: MIT
// Rule rain: what draws power in the open, and the covers that go.
#include "check/rain_cover.h"

#include <algorithm>

#include "check/say.h"
#include "check/standing_site.h"

namespace dunnage {
namespace {

bool canopy_at(const Catalogue& c, const Show& show, const std::string& place) {
  return !place.empty() && std::any_of(show.uses.begin(), show.uses.end(), [&](const Use& use) {
    const Structure* s = c.structure(use.structure.value);
    return s && s->kind == StructureKind::canopy && use.at_place == place;
  });
}

int in_the_open(const Catalogue& c, const Show& show, const Plan& plan) {
  int count = 0;
  for (int unit : plan.pulled()) {
    const CaseUnit& one = c.units[static_cast<std::size_t>(unit)];
    if (draws_of(c, one.case_index) && !canopy_at(c, show, plan.rows[static_cast<std::size_t>(unit)].place)) ++count;
  }
  // What a tower or stand carries is in the open, wherever it stands.
  for (const Use& use : show.uses) {
    const Structure* s = c.structure(use.structure.value);
    if (!s || s->kind == StructureKind::canopy) continue;
    for (const Carried& carried : use.carries) {
      const int i = c.case_index(carried.code.value);
      const Item* item = c.item(carried.code.value);
      if ((i >= 0 && draws_of(c, i)) || (item && item->draws)) count += carried.count;
    }
  }
  return count;
}

void judge_cover(Finding& f, const Catalogue& c, const Show& show, const Plan& plan) {
  const int open = in_the_open(c, show, plan), covers = going_that_serve(c, plan, "rain-cover");
  const double chance = show.forecast->rain->value;
  f.measured = static_cast<double>(open);
  f.limit = static_cast<double>(covers);
  f.outcome = chance <= 0 || open <= covers ? Outcome::within : Outcome::over;
  f.says =
      said("Chance of rain {} %: {} under no canopy; {} go.", plain(chance, 0),
           open == 1 ? said("{} piece that draws power stands", open) : said("{} pieces that draw power stand", open),
           covers == 1 ? said("{} cover", covers) : said("{} covers", covers));
  if (f.outcome == Outcome::over) f.says.then(said("Bring {} more, or move it under a canopy.", open - covers));
  assume(f, said("a canopy at a place is taken to keep dry what stands at that place"));
}

}  // namespace

void check_rain(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  Finding f =
      begin_finding(RuleName::rain, {}, said("equipment"), show.forecast ? show.forecast->place : show.show_place);
  f.sources = {said("common practice, no source")};
  f.caution = said("Wet plugs and racks: power off before anybody touches them. Rain blows in under a roof.");
  if (is_indoor(show))
    say_does_not_apply(f, setting_place(show), said("Indoors: no rain on equipment."));
  else if (!show.forecast || !show.forecast->rain)
    say_not_given(f, {said("the chance of rain")},
                  said("Ask the weather office and type it; until then cover everything."));
  else
    judge_cover(f, catalogue, show, plan);
  findings.list.push_back(f);
}

}  // namespace dunnage
