// SPDX-License-Identifier: MIT
// Rules canopy-sliding and tower-sliding.
#include "check/sliding.h"

#include "check/canopy_site.h"
#include "check/meter.h"
#include "check/tower_site.h"

namespace dunnage {
namespace {

Finding finding_of(RuleName rule, const Show& show, const StandingSite& site, const std::vector<Sentence>& missing,
                   const std::optional<Speed>& slides, std::string_view meter) {
  Finding f = begin_standing(rule, site);
  begin_slide(f);
  if (is_worked_out(f, show, site, missing, said("Measure it and type it.")) &&
      knows_grip(f, show, site.ground, site.friction))
    judge_slide(f, slides, *site.friction, site.forecast, meter);
  return f;
}

std::vector<Sentence> not_given(const CanopySite& site) {
  if (!site.missing.empty() || site.reading.side_known) return site.missing;
  return {said("eaves and peak heights")};
}

}  // namespace

void check_canopy_sliding(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (const CanopySite& site : canopy_sites(catalogue, show, plan))
    findings.list.push_back(finding_of(RuleName::canopy_sliding, show, site, not_given(site), sliding_gust_of(site),
                                       meter_of(catalogue.kit.house)));
}

void check_tower_sliding(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (const TowerSite& site : tower_sites(catalogue, show, plan))
    findings.list.push_back(finding_of(RuleName::tower_sliding, show, site, site.missing, sliding_gust_of(site),
                                       meter_of(catalogue.kit.house)));
}

}  // namespace dunnage
