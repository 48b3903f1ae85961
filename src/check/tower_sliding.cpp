// SPDX-License-Identifier: MIT
// Rule tower-sliding: friction under all the weight against the push on head, mast and load.
#include "check/tower_sliding.h"

#include "check/canopy_site.h"
#include "check/meter.h"
#include "check/say.h"
#include "check/slide.h"
#include "check/tower_site.h"

namespace dunnage {
namespace {

Finding finding_of(const Show& show, const TowerSite& site, std::string_view meter) {
  Finding f = begin_finding(RuleName::tower_sliding, {Subject::Kind::use, site.use}, site.name,
                            show.uses[static_cast<std::size_t>(site.use)].place);
  begin_slide(f);
  if (site.indoor) {
    say_does_not_apply(f, setting_place(show), said("Indoors: no wind load."));
    return f;
  }
  if (!site.missing.empty()) {
    say_not_given(f, site.missing, said("Measure it and type it."));
    return f;
  }
  if (knows_grip(f, show, site.ground, site.friction))
    judge_slide(f, sliding_gust_of(site), *site.friction, site.forecast, meter);
  return f;
}

}  // namespace

void check_tower_sliding(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (const TowerSite& site : tower_sites(catalogue, show, plan))
    findings.list.push_back(finding_of(show, site, meter_of(catalogue.kit.house)));
}

}  // namespace dunnage
