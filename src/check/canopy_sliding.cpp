// SPDX-License-Identifier: MIT
// Rule canopy-sliding: friction under all the weight against the push on walls and roof.
#include "check/canopy_sliding.h"

#include <string>
#include <vector>

#include "check/canopy_site.h"
#include "check/meter.h"
#include "check/say.h"
#include "check/slide.h"

namespace dunnage {
namespace {

std::vector<Sentence> not_given(const CanopySite& site) {
  if (!site.missing.empty()) return site.missing;
  if (!site.reading.side_known) return {said("eaves and peak heights")};
  return {};
}

Finding finding_of(const Show& show, const CanopySite& site, std::string_view meter) {
  Finding f = begin_finding(RuleName::canopy_sliding, {Subject::Kind::use, site.use}, site.name,
                            show.uses[static_cast<std::size_t>(site.use)].place);
  begin_slide(f);
  if (site.indoor) {
    say_does_not_apply(f, setting_place(show), said("Indoors: no wind load."));
    return f;
  }
  if (const auto missing = not_given(site); !missing.empty()) {
    say_not_given(f, missing, said("Measure it and type it in the kit."));
    return f;
  }
  if (knows_grip(f, show, site.ground, site.friction))
    judge_slide(f, sliding_gust_of(site), *site.friction, site.forecast, meter);
  return f;
}

}  // namespace

void check_canopy_sliding(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (const CanopySite& site : canopy_sites(catalogue, show, plan))
    findings.list.push_back(finding_of(show, site, meter_of(catalogue.kit.house)));
}

}  // namespace dunnage
