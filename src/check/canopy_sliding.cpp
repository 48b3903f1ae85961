// SPDX-License-Identifier: MIT
// Rule canopy-sliding: friction under all the weight against the push on walls and roof.
#include "check/canopy_sliding.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "check/canopy_site.h"
#include "check/meter.h"
#include "formula/overturning.h"

namespace dunnage {
namespace {

/// Why nothing can be said; empty where it can.
std::string not_known(const CanopySite& site) {
  if (!site.missing.empty()) return fmt::format("Not given: {}.", fmt::join(site.missing, ", "));
  if (!site.reading.side_known) return "Not given: eaves and peak heights.";
  if (!site.ground) return "Not given: what it stands on.";
  if (!steel_friction(*site.ground))
    return fmt::format("No friction is published for {}: pull each foot, or stake and guy it.", *site.ground);
  return {};
}

Finding finding_of(const Show& show, const CanopySite& site, std::string_view meter) {
  Finding f;
  f.rule = "canopy-sliding";
  f.subject = site.name;
  f.source = "statics; EN 1990 A1.2(A)";
  f.caution = "Grass and wet ground act as a lubricant. Watch the feet: a canopy that walks must come down.";
  f.place = show.uses[static_cast<std::size_t>(site.use)].place;
  if (site.indoor) {
    f.outcome = Outcome::does_not_apply;
    f.place = setting_place(show);
    f.says = "Indoors: no wind load.";
    return f;
  }
  f.says = not_known(site);
  if (!f.says.empty()) return f;
  f.assumption =
      "friction 0.2, the least listed for a steel foot (from memory, after EN 13814); factors 0.9 and 1.5";
  const auto slides = sliding_gust_of(site);
  if (!slides) {
    f.says = "Nothing is known to push it sideways.";
    return f;
  }
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

void check_canopy_sliding(const Catalogue& catalogue, const Show& show, const Plan& plan,
                          Findings& findings) {
  for (const CanopySite& site : canopy_sites(catalogue, show, plan))
    findings.list.push_back(finding_of(show, site, meter_of(catalogue.kit.house)));
}

}  // namespace dunnage
