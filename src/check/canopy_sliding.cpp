// SPDX-License-Identifier: MIT
// Rule canopy-sliding: friction under all the weight against the push on walls and roof.
#include "check/canopy_sliding.h"

#include <string>
#include <vector>

#include "check/canopy_site.h"
#include "check/meter.h"
#include "check/say.h"
#include "check/slide.h"
#include "formula/overturning.h"

namespace dunnage {
namespace {

std::vector<std::string> not_given(const CanopySite& site) {
  if (!site.missing.empty()) return site.missing;
  if (!site.reading.side_known) return {"eaves and peak heights"};
  if (!site.ground) return {"what it stands on"};
  return {};
}

Finding finding_of(const Show& show, const CanopySite& site, std::string_view meter) {
  Finding f = begin_finding("canopy-sliding", site.name, show.uses[static_cast<std::size_t>(site.use)].place);
  begin_slide(f, "canopy");
  if (site.indoor) {
    say_does_not_apply(f, setting_place(show), "Indoors: no wind load.");
    return f;
  }
  if (const auto missing = not_given(site); !missing.empty()) {
    say_not_given(f, missing);
    return f;
  }
  if (!steel_friction(*site.ground)) {
    say_no_friction(f, *site.ground);
    return f;
  }
  assume_friction(f);
  if (const auto slides = sliding_gust_of(site))
    judge_slide(f, *slides, site.forecast, meter);
  else
    f.says = "Nothing is known to push it sideways.";
  return f;
}

}  // namespace

void check_canopy_sliding(const Catalogue& catalogue, const Show& show, const Plan& plan,
                          Findings& findings) {
  for (const CanopySite& site : canopy_sites(catalogue, show, plan))
    findings.list.push_back(finding_of(show, site, meter_of(catalogue.kit.house)));
}

}  // namespace dunnage
