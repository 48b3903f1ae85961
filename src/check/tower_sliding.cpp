// SPDX-License-Identifier: MIT
// Rule tower-sliding: friction under all the weight against the push on head, mast and load.
#include "check/tower_sliding.h"

#include <fmt/format.h>

#include "check/canopy_site.h"
#include "check/meter.h"
#include "check/say.h"
#include "check/tower_site.h"

namespace dunnage {
namespace {

Finding finding_of(const Show& show, const TowerSite& site, std::string_view meter) {
  Finding f = begin_finding("tower-sliding", site.name, show.uses[static_cast<std::size_t>(site.use)].place);
  f.source = "statics; EN 1990 A1.2(A)";
  f.caution = "Grass and wet ground act as a lubricant. Watch the feet: a tower that walks must come down.";
  if (site.indoor) {
    say_does_not_apply(f, setting_place(show), "Indoors: no wind load.");
    return f;
  }
  if (!site.missing.empty()) {
    say_not_given(f, site.missing);
    return f;
  }
  if (!site.ground) {
    say_not_given(f, {"what it stands on"});
    return f;
  }
  const auto slides = sliding_gust_of(site);
  if (!slides) {
    f.says =
        fmt::format("No friction is published for {}: pull each foot, or stake and guy it.", *site.ground);
    return f;
  }
  f.assumption =
      "friction 0.2, the least listed for a steel foot (from memory, after EN 13814); factors 0.9 and 1.5";
  f.limit = *slides;
  const std::string at = gust_words(*slides, meter);
  if (!site.forecast) {
    f.says = fmt::format("No forecast gust. It may slide from {} gust.", at);
    return f;
  }
  f.measured = *site.forecast;
  f.outcome = *site.forecast <= *slides * (1 + 1e-9) ? Outcome::within : Outcome::over;
  f.says = fmt::format("It may slide from {} gust; the forecast gust is {}.", at,
                       forecast_words(*site.forecast, meter));
  return f;
}

}  // namespace

void check_tower_sliding(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (const TowerSite& site : tower_sites(catalogue, show, plan))
    findings.list.push_back(finding_of(show, site, meter_of(catalogue.kit.house)));
}

}  // namespace dunnage
