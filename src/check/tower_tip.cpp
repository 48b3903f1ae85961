// SPDX-License-Identifier: MIT
// Rule tower-tip: overturning about the nearest tipping line, both ways.
#include "check/tower_tip.h"

#include <algorithm>

#include "check/canopy_site.h"
#include "check/meter.h"
#include "check/say.h"
#include "check/spare_weights.h"
#include "check/tower_site.h"

namespace dunnage {
namespace {

Sentence governs_of(const TowerSite& site, Speed holds) {
  if (site.maker && *site.maker <= holds) return said("maker's limit");
  const auto slides = sliding_gust_of(site);
  return slides && *slides <= holds ? said("sliding") : said("tipping");
}

/// The lightest weight that raises the down level by a whole unit, one more of it in the middle of the base; and
/// what the banners cost.
Sentence improvement_of(const TowerSite& site, const std::vector<SpareWeight>& weights, Speed now,
                        std::string_view meter) {
  std::vector<Sentence> ways;
  const SpareWeight* best = nullptr;
  for (const SpareWeight& w : weights) {
    const Speed then = whole_units_down(*holding_gust_of(with_more(site, w.mass)), meter);
    if (then > now && (!best || w.mass < best->mass)) best = &w;
  }
  if (best) {
    const std::string then = gust_words(*holding_gust_of(with_more(site, best->mass)), meter);
    ways.push_back(best->free < 1 ? said("one more {} in the middle: down at {} (none free)", best->code, then)
                                  : said("one more {} in the middle: down at {}", best->code, then));
  }
  const auto bare = site.hung.empty() ? std::nullopt : holding_gust_of(without_hung(site));
  if (bare && whole_units_down(*bare, meter) > now)
    ways.push_back(said("what hangs on it off: down at {}", gust_words(*bare, meter)));
  if (ways.empty() && site.maker && whole_units_down(*site.maker, meter) == now)
    return said("more ballast does not help: the maker's limit governs");
  return strung(ways, "; ");
}

TowerDetail detail_of(const Catalogue& c, const Plan& plan, const TowerSite& site) {
  const std::string_view meter = meter_of(c.kit.house);
  const Speed holds = *holding_gust_of(site);
  const auto tips = tipping_gust_of(site), slides = sliding_gust_of(site);
  TowerDetail d;
  d.use = site.use;
  d.ballast = site.ballast;
  d.down_at = whole_units_down(holds, meter);
  d.maker = site.maker;
  d.forecast = site.forecast;
  d.card = wind_card(*site.structure, holds, governs_of(site, holds), meter);
  d.card.sliding_known = slides.has_value();
  d.improvement = improvement_of(site, spare_weights(c, plan, site.use), *d.down_at, meter);
  if (tips) {
    Speed end = holds * 1.5;
    if (site.forecast) end = std::max(end, *site.forecast);
    d.curve = margin_curve(slides ? std::min(*tips, *slides) : *tips, end, meter);
  }
  if (!site.forecast) return d;
  const Moment over = overturning_moment(site.areas, wind_pressure(*site.forecast));
  d.more = mass_against_tipping(over, site.holds, site.lever);
  d.required = mass_against_tipping(over, site.bare, site.lever);
  return d;
}

/// Two figures side by side, and nothing of whether it stands: sliding is not in them. Figures that rounding would turn
/// round are left out.
Sentence compared_words(const TowerSite& site, Speed limit, const std::string& down, std::string_view meter) {
  const bool maker = site.maker && *site.maker <= limit;
  const std::string forecast = forecast_words(*site.forecast, meter);
  const double gust = steps_up(*site.forecast / meter_step(meter) * 10),
               tenths = steps_down(limit / meter_step(meter) * 10);
  const std::string least = plain(tenths / 10, 1) + " " + std::string(meter);
  if (gust > tenths)
    return maker ? said("The maker's limit is little above the forecast gust of {}. Down at {} gust.", forecast, down)
                 : said("Tips at little more than the forecast gust of {}. Down at {} gust.", forecast, down);
  return maker ? said("The maker's limit is {}, the forecast gust {}. Down at {} gust.", least, forecast, down)
               : said("Tips above {}, the forecast gust is {}. Down at {} gust.", least, forecast, down);
}

void judge(Finding& f, const TowerSite& site, const TowerDetail& detail, const House& house) {
  const std::string_view meter = meter_of(house);
  // Sliding has a finding of its own; here tipping and the maker are judged.
  std::optional<Speed> limit = tipping_gust_of(site);
  if (site.maker) limit = limit ? std::min(*limit, *site.maker) : *site.maker;
  if (detail.card.governs == said("sliding")) assume(f, said("the down level comes from sliding"));
  f.limit = *limit;
  const std::string down = gust_words(*detail.down_at, meter);
  if (!site.forecast) {
    f.says = said("No forecast gust, so the ballast asked was not worked out: ask the weather office. Down at {} gust.",
                  down);
    return;
  }
  f.measured = *site.forecast;
  const std::string forecast = forecast_words(*site.forecast, meter);
  if (*site.forecast <= *limit * (1 + 1e-9)) {
    f.outcome = Outcome::within;
    f.says = compared_words(site, *limit, down, meter);
    return;
  }
  f.outcome = Outcome::over;
  if (site.maker && *site.forecast > *site.maker * (1 + 1e-9))
    f.says = said("The forecast gust of {} is above the maker's limit of {}: leave it down, no ballast cures that.",
                  forecast, gust_words(*site.maker, meter));
  else
    f.says = said(
        "Lacks {} in the middle of its base at the forecast gust of {}: add it, take banners off, or leave it down. "
        "Down at {} gust.",
        print(detail.more, house.units, Rounding::up).text(), forecast, down);
}

Finding finding_of(const Catalogue& c, const Show& show, const Plan& plan, const TowerSite& site) {
  Finding f = begin_finding(RuleName::tower_tip, {Subject::Kind::use, site.use}, site.name,
                            show.uses[static_cast<std::size_t>(site.use)].place);
  f.sources = {as_is("EN 1991-1-4 7.4.3"), as_is("EN 1990 A1.2(A)")};
  f.caution = said("Level, outriggers locked, cables tied at the foot. Maker, venue and a competent person decide.");
  if (site.indoor) {
    say_does_not_apply(f, setting_place(show), said("Indoors: no wind load."));
    return f;
  }
  if (!site.missing.empty()) {
    say_not_given(f, site.missing, said("Measure it and type it; until then it stays down."));
    return f;
  }
  f.assumptions = site.assumptions;
  assume(f, said("factors 0.9 and 1.5"));
  if (!site.maker) assume(f, said("maker's limit not given"));
  if (!site.structure->strike_minutes) assume(f, said("minutes and people to bring it down not given"));
  const TowerDetail detail = detail_of(c, plan, site);
  judge(f, site, detail, c.kit.house);
  f.detail = detail;
  return f;
}

}  // namespace

void check_tower_tip(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (const TowerSite& site : tower_sites(catalogue, show, plan))
    findings.list.push_back(finding_of(catalogue, show, plan, site));
}

}  // namespace dunnage
