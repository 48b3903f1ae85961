// SPDX-License-Identifier: MIT
// Rule tower-tip: overturning about the nearest tipping line, both ways.
#include "check/tower_tip.h"

#include <algorithm>

#include "base/slack.h"
#include "check/meter.h"
#include "check/say.h"
#include "check/spare_weights.h"
#include "check/tower_site.h"

namespace dunnage {
namespace {

/// The lightest weight that raises the down level by a whole unit, one more of it in the middle of the base; and
/// what the banners cost.
Sentence improvement_of(const TowerSite& site, const std::vector<SpareWeight>& weights, Speed now,
                        std::string_view meter) {
  std::vector<Sentence> ways;
  const auto holding = [&](Mass more) { return *holding_gust_of(with_more(site, more)); };
  if (const SpareWeight* best = lightest_that_helps(weights, now, meter, holding)) {
    const std::string then = gust_words(holding(best->mass), meter);
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
  d.card = wind_card(*site.structure, holds, governs_of(site, holds, slides, said("tipping")), meter);
  d.card.sliding_known = slides.has_value();
  d.improvement = improvement_of(site, spare_weights(c, plan, site.use), *d.down_at, meter);
  Speed end = holds * 1.5;
  if (site.forecast) end = std::max(end, *site.forecast);
  if (const auto stands = lowest({tips, slides})) d.curve = margin_curve(*stands, end, meter);
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
  const std::string down = gust_words(*detail.down_at, meter);
  const auto tips = tipping_gust_of(site);
  if (detail.card.governs == said("sliding")) assume(f, said("the down level comes from sliding"));
  if (!is_for_ballast(f, site, tips, down, meter)) return;
  const Speed limit = *lowest({tips, site.maker});
  const std::string forecast = forecast_words(*site.forecast, meter);
  if (!exceeds(*site.forecast, limit)) {
    f.outcome = Outcome::within;
    f.says = compared_words(site, limit, down, meter);
    return;
  }
  f.outcome = Outcome::over;
  f.says = said(
      "Lacks {} in the middle of its base at the forecast gust of {}: add it, take banners off, or leave it down. "
      "Down at {} gust.",
      print(detail.more, house.units, Rounding::up).text(), forecast, down);
}

Finding finding_of(const Catalogue& c, const Show& show, const Plan& plan, const TowerSite& site) {
  Finding f = begin_standing(RuleName::tower_tip, site);
  f.sources = {as_is("EN 1991-1-4 7.4.3"), as_is("EN 1990 A1.2(A)")};
  f.caution = said("Level, outriggers locked, cables tied at the foot. Maker, venue and a competent person decide.");
  if (!is_worked_out(f, show, site, site.missing, said("Measure it and type it; until then it stays down."))) return f;
  if (!holding_gust_of(site)) {  // every area that is typed is nothing, and so is a level reckoned from it
    say_not_given(f, {said("head area")}, said("Measure it and type it; until then it stays down."));
    return f;
  }
  assume_of_standing(f, site);
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
