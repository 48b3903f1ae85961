// SPDX-License-Identifier: MIT
// Rule canopy-ballast: required against actual on each leg, the down level, and what would raise it.
#include "check/canopy_ballast.h"

#include <algorithm>

#include "base/slack.h"
#include "check/canopy_site.h"
#include "check/meter.h"
#include "check/say.h"
#include "check/spare_weights.h"

namespace dunnage {
namespace {

Sentence pieces_words(const LegLoad& leg) {
  std::vector<Sentence> words;
  for (const auto& [code, count] : leg.pieces) words.push_back(said("{} x {}", count, code));
  return strung(words, ", ");
}

std::vector<LegRow> leg_rows(const CanopySite& site, const std::vector<SpareWeight>& weights) {
  std::vector<LegRow> rows;
  for (const LegLoad& leg : site.legs) {
    LegRow row;
    row.leg = leg.name;
    row.stands = pieces_words(leg);
    row.actual = leg.mass + leg.staked;
    row.staked = leg.staked;
    if (site.forecast) {
      row.required = ballast_per_leg(site.reading.stand, *site.forecast);
      row.required_known = true;
      if (!weights.empty() && !leg.unknown && exceeds(row.required, row.actual)) {
        row.more = static_cast<int>(steps_up((row.required - row.actual) / weights.front().mass));
        row.more_of = weights.front().code;
      }
    }
    rows.push_back(row);
  }
  return rows;
}

/// The lightest weight that raises the down level by a whole unit when one more stands on every leg.
Sentence improvement_of(const CanopySite& site, const std::vector<SpareWeight>& weights, Speed now,
                        std::string_view meter) {
  std::vector<Sentence> ways;
  const auto holding = [&](Mass more) { return *holding_gust_of(site, more); };
  if (const SpareWeight* best = lightest_that_helps(weights, now, meter, holding)) {
    const int legs = static_cast<int>(site.legs.size());
    const std::string then = gust_words(holding(best->mass), meter);
    ways.push_back(best->free < legs ? said("one more {} a leg: down at {} ({} more needed, {} free)", best->code, then,
                                            legs, free_words(best->free))
                                     : said("one more {} a leg: down at {}", best->code, then));
  }
  const auto better = [&](bool there, const CanopySite& without) {
    const auto then = there ? holding_gust_of(without) : std::nullopt;
    return then && whole_units_down(*then, meter) > now ? gust_words(*then, meter) : std::string();
  };
  if (const std::string then = better(site.shape.walls > 0, without_walls(site)); !then.empty())
    ways.push_back(said("walls off: down at {}", then));
  if (const std::string then = better(!site.shape.hung.empty(), without_hung(site)); !then.empty())
    ways.push_back(said("what hangs on it off: down at {}", then));
  if (ways.empty() && site.maker && whole_units_down(*site.maker, meter) == now)
    return said("more ballast does not help: the maker's limit governs");
  return strung(ways, "; ");
}

std::vector<CurvePoint> curve_of(Speed holds, Speed down, const CanopySite& site, std::string_view meter) {
  Speed end = down * 1.5;
  if (site.forecast) end = std::max(end, *site.forecast);
  if (site.maker) end = std::max(end, *site.maker);
  return margin_curve(holds, end, meter);
}

/// What the ground under the worst leg must bear at a gust: wind x 1.5, the structure x 1.1 (EN 1990 A1.2(A)).
Mass pressed_at(const CanopySite& site, Speed gust) {
  const CanopyStand& stand = site.reading.stand;
  return leg_press(stand, wind_pressure(gust)) * 1.5 / standard_gravity + stand.own * (1.1 / stand.legs);
}

CanopyDetail detail_of(const Catalogue& c, const Plan& plan, const CanopySite& site) {
  const std::string_view meter = meter_of(c.kit.house);
  const auto weights = spare_weights(c, plan, site.use);
  CanopyDetail d;
  d.use = site.use;
  d.legs = leg_rows(site, weights);
  d.maker = site.maker;
  d.forecast = site.forecast;
  d.uplift_coefficient = site.reading.force.up;
  if (site.forecast && site.shape.own) d.pressed = pressed_at(site, *site.forecast);
  const auto holds = holding_gust_of(site);
  d.card = wind_card(*site.structure, holds,
                     holds ? governs_of(site, *holds, sliding_gust_of(site), said("ballast")) : Sentence(), meter);
  d.card.sliding_known = sliding_gust_of(site).has_value();
  if (site.shape.walls > 0)
    if (const auto bare = holding_gust_of(without_walls(site)); bare && (!holds || *bare > *holds))
      d.card.walls_off = whole_units_down(*bare, meter);
  if (holds) {
    d.down_at = whole_units_down(*holds, meter);
    d.improvement = improvement_of(site, weights, *d.down_at, meter);
    if (const auto ballast = lowest({lifting_gust_of(site), sliding_gust_of(site)}))
      d.curve = curve_of(*ballast, *d.down_at, site, meter);
  }
  return d;
}

/// "add 1 BAG at SW (none free)", "add 2 BAG at each leg"; what the kit has no weight for is only named.
Sentence add_words(const CanopyDetail& d, const std::vector<SpareWeight>& weights) {
  std::vector<Sentence> legs;
  int total = 0;
  bool alike = true;
  for (const LegRow& row : d.legs) {
    alike = alike && row.more == d.legs.front().more;
    total += row.more;
    if (row.more > 0) legs.push_back(said("{} {} at {}", row.more, row.more_of, row.leg));
  }
  if (total == 0) return said("add what is lacking");
  const SpareWeight& weight = weights.front();
  const Sentence what = alike ? said("{} {} at each leg", d.legs.front().more, weight.code) : strung(legs, ", ");
  return weight.free < total ? said("add {} ({} free)", what, free_words(weight.free)) : said("add {}", what);
}

bool any_unknown(const CanopySite& site) {
  return std::any_of(site.legs.begin(), site.legs.end(), [](const LegLoad& leg) { return leg.unknown; });
}

/// Outcome, figures and words, once everything needed is there.
void judge(Finding& f, const CanopySite& site, const CanopyDetail& d, const House& house,
           const std::vector<SpareWeight>& weights) {
  const std::string_view meter = meter_of(house);
  const std::string down = gust_words(*d.down_at, meter);
  const auto slides = sliding_gust_of(site), lifts = lowest({lifting_gust_of(site), site.maker});
  if (slides && lifts && *slides < *lifts) assume(f, said("the down level comes from sliding"));
  if (!is_for_ballast(f, site, lifting_gust_of(site), down, meter)) return;
  const std::string forecast = forecast_words(*site.forecast, meter);
  const Mass required = ballast_per_leg(site.reading.stand, *site.forecast);
  const bool enough = !exceeds(required, least_ballast(site));
  const std::string needs = print(required, house.units, Rounding::up).text();
  const std::string least = print(least_ballast(site), house.units, Rounding::down).text();
  if (!enough && any_unknown(site)) {
    f.outcome = Outcome::not_checked;
    f.says = said("A ballast piece has no mass given: weigh it. Each leg needs {} at {} gust. Down at {} gust.", needs,
                  forecast, down);
  } else if (!enough) {
    f.outcome = Outcome::over;
    f.says =
        said("Each leg needs {} at the forecast gust of {}; the least has {}: {}, or leave it down. Down at {} gust.",
             needs, forecast, least, add_words(d, weights), down);
  } else {
    f.outcome = Outcome::within;
    f.says = said("Each leg has the {} that the forecast gust of {} asks. Down at {} gust.", needs, forecast, down);
  }
}

Finding finding_of(const Catalogue& c, const Show& show, const Plan& plan, const CanopySite& site) {
  Finding f = begin_standing(RuleName::canopy_ballast, site);
  f.sources = {as_is("EN 1991-1-4 7.3"), as_is("EN 1990 A1.2(A)")};
  f.caution = said("For the canopy alone, ballast tied tight at the foot. Maker, venue and a competent person decide.");
  if (!is_worked_out(f, show, site, site.missing, said("Measure it and type it; until then it stays down."))) return f;
  const CanopyDetail detail = detail_of(c, plan, site);
  assume_of_standing(f, site);
  f.detail = detail;
  if (!detail.down_at) {
    f.outcome = Outcome::not_checked;
    f.says = said(
        "No table covers this roof and the maker's gust limit is not given: ask the maker; until then it stays down.");
    if (!site.forecast) f.says.then(said("No forecast gust is given."));
    if (least_ballast(site) <= Mass{}) f.says.then(said("A leg has no ballast."));
    return f;
  }
  judge(f, site, detail, c.kit.house, spare_weights(c, plan, site.use));
  return f;
}

}  // namespace

void check_canopy_ballast(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (const CanopySite& site : canopy_sites(catalogue, show, plan))
    findings.list.push_back(finding_of(catalogue, show, plan, site));
}

}  // namespace dunnage
