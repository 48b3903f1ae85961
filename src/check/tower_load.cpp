// SPDX-License-Identifier: MIT
// Rule tower-load: load on the head against the maker's rating.
#include "check/tower_load.h"

#include "base/slack.h"
#include "check/say.h"
#include "check/tower_site.h"

namespace dunnage {
namespace {

Finding finding_of(const Catalogue& c, const Show& show, const Use& use, const Structure& s) {
  const UnitSystem units = c.kit.house.units;
  Finding f = begin_finding(RuleName::tower_load, subject_in(show.uses, use, Subject::Kind::use),
                            use.as.value.empty() ? use.structure.value : use.as.value, use.place);
  f.sources = {said("maker's rating")};
  f.caution = said("Cable and fittings count as load. Never above people without the venue's consent.");
  const HeadLoad load = head_load(c, s, use);
  if (!s.rated_load) {
    say_not_given(f, {said("its rated load")}, said("Ask the maker; until then nothing hangs on it."));
    return f;
  }
  if (!load.missing.empty()) {
    say_not_given(f, load.missing, said("Weigh it and type it before it goes up."));
    return f;
  }
  f.measured = load.mass;
  f.limit = s.rated_load->value;
  const bool heavy = exceeds(load.mass, s.rated_load->value);
  const bool high = s.rated_height && load.highest && exceeds(*load.highest, s.rated_height->value);
  const bool mast = s.kind == StructureKind::tower || s.kind == StructureKind::light_tree;
  const bool unrated = mast && load.highest && !s.rated_height;
  f.outcome = heavy || high ? Outcome::over : unrated ? Outcome::not_checked : Outcome::within;
  const std::string carries = print(load.mass, units, Rounding::up).text(),
                    rated = print(s.rated_load->value, units, Rounding::down).text();
  f.says = heavy ? said("Carries {} of {} rated: take load off before it goes up.", carries, rated)
                 : said("Carries {} of {} rated.", carries, rated);
  if (high)
    f.says.then(said("It stands above its rated height of {}: lower it.",
                     print(s.rated_height->value, units, Rounding::down).text()));
  if (unrated)
    f.says.then(said("Not given: {}.", said("its rated height")))
        .then(said("Ask the maker; until then nothing hangs on it."));
  assume(f, said("only what the show lists is counted"));
  if (!use.cable) assume(f, said("cable and fittings are not given"));
  return f;
}

}  // namespace

void check_tower_load(const Catalogue& catalogue, const Show& show, const Plan&, Findings& findings) {
  for (const Use& use : show.uses) {
    const Structure* s = catalogue.structure(use.structure.value);
    if (!s || (use.carries.empty() && use.hung.empty())) continue;
    findings.list.push_back(finding_of(catalogue, show, use, *s));
  }
}

}  // namespace dunnage
