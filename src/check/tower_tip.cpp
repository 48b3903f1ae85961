// SPDX-License-Identifier: MIT
// Rule tower-tip: overturning about the nearest tipping line, both ways.
#include "check/tower_tip.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "check/canopy_site.h"
#include "check/meter.h"
#include "check/say.h"
#include "check/tower_site.h"

namespace dunnage {
namespace {

void judge(Finding& f, const TowerSite& site, const House& house) {
  const std::string_view meter = meter_of(house);
  const auto tips = tipping_gust_of(site), slides = sliding_gust_of(site);
  // Sliding has a finding of its own; here tipping and the maker are judged.
  std::optional<Speed> limit = tips;
  if (site.maker) limit = limit ? std::min(*limit, *site.maker) : *site.maker;
  const Speed holds = *holding_gust_of(site);
  TowerDetail detail{site.use,   site.ballast,  {}, whole_units_down(holds, meter),
                     site.maker, site.forecast, {}, {}};
  const bool by_maker = site.maker && *site.maker <= holds, by_sliding = slides && *slides <= holds;
  detail.card = wind_card(*site.structure, holds,
                          by_maker     ? "maker's limit"
                          : by_sliding ? "sliding"
                                       : "tipping",
                          meter);
  detail.card.sliding_known = slides.has_value();
  if (by_sliding && !by_maker) assume(f, "the down level comes from sliding");
  if (tips) {
    Speed end = holds * 1.5;
    if (site.forecast) end = std::max(end, *site.forecast);
    detail.curve = margin_curve(slides ? std::min(*tips, *slides) : *tips, end, meter);
  }
  f.limit = *limit;
  const std::string down = gust_words(holds, meter);
  if (!site.forecast) {
    f.detail = detail;
    f.says = fmt::format("No forecast gust, so the ballast asked was not worked out. Down at {} gust.", down);
    return;
  }
  f.measured = *site.forecast;
  const std::string forecast = forecast_words(*site.forecast, meter);
  const Moment over = overturning_moment(site.areas, wind_pressure(*site.forecast));
  const Mass more = mass_against_tipping(over, site.holds, site.lever);
  detail.more = more;
  f.detail = detail;
  if (*site.forecast <= *limit * (1 + 1e-9)) {
    f.outcome = Outcome::within;
    f.says = fmt::format("Stands in the forecast gust of {}. Down at {} gust.", forecast, down);
  } else if (more > Mass{}) {
    f.outcome = Outcome::over;
    f.says = fmt::format("Lacks {} in the middle of its base at the forecast gust of {}. Down at {} gust.",
                         print(more, house.units, Rounding::up).text(), forecast, down);
  } else {
    f.outcome = Outcome::over;
    f.says =
        fmt::format("The forecast gust of {} is above the maker's limit. Down at {} gust.", forecast, down);
  }
}

Finding finding_of(const Catalogue& c, const Show& show, const TowerSite& site) {
  Finding f = begin_finding("tower-tip", site.name, show.uses[static_cast<std::size_t>(site.use)].place);
  f.source = "EN 1991-1-4 7.4.3; EN 1990 A1.2(A)";
  f.caution =
      "Level, outriggers locked, cables tied at the foot. Maker, venue and a competent person decide.";
  if (site.indoor) {
    say_does_not_apply(f, setting_place(show), "Indoors: no wind load.");
    return f;
  }
  if (!site.missing.empty()) {
    say_not_given(f, site.missing);
    return f;
  }
  f.assumption = fmt::format("{}{}factors 0.9 and 1.5", fmt::join(site.assumptions, "; "),
                             site.assumptions.empty() ? "" : "; ");
  if (!site.maker) assume(f, "maker's limit not given");
  if (!site.structure->strike_minutes) assume(f, "minutes and people to bring it down not given");
  judge(f, site, c.kit.house);
  return f;
}

}  // namespace

void check_tower_tip(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (const TowerSite& site : tower_sites(catalogue, show, plan))
    findings.list.push_back(finding_of(catalogue, show, site));
}

}  // namespace dunnage
