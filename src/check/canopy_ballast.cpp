// SPDX-License-Identifier: MIT
// Rule canopy-ballast: required against actual on each leg, the down level, and what would raise it.
#include "check/canopy_ballast.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "check/canopy_site.h"
#include "check/meter.h"
#include "check/say.h"

namespace dunnage {
namespace {

/// A weight that the house owns and could add, and how many are free.
struct SpareWeight {
  std::string code;
  Mass mass;
  int free = 0;
};

void add_weight(std::vector<SpareWeight>& weights, const Catalogue& c, const Plan& plan, int case_index) {
  const Case& box = c.kit.cases[static_cast<std::size_t>(case_index)];
  for (const SpareWeight& w : weights)
    if (w.code == box.code.value) return;
  SpareWeight weight{box.code.value, {}, 0};
  const auto [first, last] = c.units_of[static_cast<std::size_t>(case_index)];
  for (int unit = first; unit < last; ++unit) {
    const UnitMass mass = c.mass_of(unit);
    if (c.units[static_cast<std::size_t>(unit)].out_of_service || !(mass.known || box.filled)) continue;
    // The lightest of several alike speaks for all.
    weight.mass = weight.mass > Mass{} ? std::min(weight.mass, mass.as_ballast) : mass.as_ballast;
    const bool used = std::any_of(plan.ballast.begin(), plan.ballast.end(),
                                  [&](const BallastPiece& p) { return p.unit == unit; });
    if (!used) ++weight.free;
  }
  if (weight.mass > Mass{}) weights.push_back(weight);
}

/// Weights of the kind already on this canopy; else what serves as "ballast".
std::vector<SpareWeight> spare_weights(const Catalogue& c, const Plan& plan, int use) {
  std::vector<SpareWeight> weights;
  for (const BallastPiece& p : plan.ballast)
    if (p.use == use) add_weight(weights, c, plan, c.units[static_cast<std::size_t>(p.unit)].case_index);
  if (weights.empty())
    for (int i : c.cases_serving("ballast")) add_weight(weights, c, plan, i);
  return weights;
}

std::string pieces_words(const LegLoad& leg) {
  std::string words;
  for (const auto& [code, count] : leg.pieces)
    words += fmt::format("{}{} x {}", words.empty() ? "" : ", ", count, code);
  return words.empty() ? "nothing" : words;
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
      if (!weights.empty() && row.required > row.actual * (1 + 1e-9)) {
        row.more = static_cast<int>(steps_up((row.required - row.actual) / weights.front().mass));
        row.more_of = weights.front().code;
      }
    }
    rows.push_back(row);
  }
  return rows;
}

/// The lightest weight that raises the down level by a whole unit when one more stands on every leg.
std::string improvement_of(const CanopySite& site, const std::vector<SpareWeight>& weights, Speed now,
                           std::string_view meter) {
  std::vector<std::string> ways;
  const SpareWeight* best = nullptr;
  for (const SpareWeight& w : weights) {
    const Speed then = whole_units_down(*holding_gust_of(site, w.mass), meter);
    if (then > now && (!best || w.mass < best->mass)) best = &w;
  }
  if (best) {
    const int legs = static_cast<int>(site.legs.size());
    std::string way = fmt::format("one more {} a leg: down at {}", best->code,
                                  gust_words(*holding_gust_of(site, best->mass), meter));
    if (best->free < legs) way += fmt::format(" ({} more needed, {} free)", legs, best->free);
    ways.push_back(way);
  }
  if (site.shape.walls > 0) {
    const auto then = holding_gust_of(without_walls(site));
    if (then && whole_units_down(*then, meter) > now)
      ways.push_back(fmt::format("walls off: down at {}", gust_words(*then, meter)));
  }
  if (ways.empty() && site.maker && whole_units_down(*site.maker, meter) == now)
    return "more ballast does not help: the maker's limit governs";
  return fmt::format("{}", fmt::join(ways, "; "));
}

std::vector<CurvePoint> curve_of(Speed holds, Speed down, const CanopySite& site, std::string_view meter) {
  Speed end = down * 1.5;
  if (site.forecast) end = std::max(end, *site.forecast);
  if (site.maker) end = std::max(end, *site.maker);
  return margin_curve(holds, end, meter);
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
  d.assumption = fmt::format("{}", fmt::join(site.assumptions, "; "));
  const auto holds = holding_gust_of(site);
  d.card = wind_card(*site.structure, holds, governs_of(site), meter);
  d.card.sliding_known = sliding_gust_of(site).has_value();
  if (site.shape.walls > 0)
    if (const auto bare = holding_gust_of(without_walls(site)); bare && (!holds || *bare > *holds))
      d.card.walls_off = whole_units_down(*bare, meter);
  if (holds) {
    d.down_at = whole_units_down(*holds, meter);
    d.improvement = improvement_of(site, weights, *d.down_at, meter);
    std::optional<Speed> ballast = lifting_gust_of(site);
    if (const auto slides = sliding_gust_of(site)) ballast = ballast ? std::min(*ballast, *slides) : *slides;
    if (ballast) d.curve = curve_of(*ballast, *d.down_at, site, meter);
  }
  return d;
}

bool any_unknown(const CanopySite& site) {
  return std::any_of(site.legs.begin(), site.legs.end(), [](const LegLoad& leg) { return leg.unknown; });
}

/// Outcome, figures and words, once everything needed is there.
void judge(Finding& f, const CanopySite& site, const CanopyDetail& d, const House& house) {
  const std::string_view meter = meter_of(house);
  const std::string down = gust_words(*d.down_at, meter);
  // Sliding has a finding of its own; here the ballast and the maker are judged.
  std::optional<Speed> limit = lifting_gust_of(site);
  if (site.maker) limit = limit ? std::min(*limit, *site.maker) : *site.maker;
  if (limit) f.limit = *limit;
  if (const auto slides = sliding_gust_of(site); slides && limit && *slides < *limit)
    f.assumption += "; the down level comes from sliding";
  if (!site.forecast) {
    f.outcome = Outcome::not_checked;
    f.says = fmt::format("No forecast gust, so the ballast asked was not worked out. Down at {} gust.", down);
    return;
  }
  f.measured = *site.forecast;
  const std::string forecast = forecast_words(*site.forecast, meter);
  const Mass required = ballast_per_leg(site.reading.stand, *site.forecast);
  const bool enough = least_ballast(site) * (1 + 1e-9) >= required;
  const bool above_maker = site.maker && *site.forecast > *site.maker * (1 + 1e-9);
  const std::string needs = print(required, house.units, Rounding::up).text();
  const std::string least = print(least_ballast(site), house.units, Rounding::down).text();
  if (!enough && any_unknown(site)) {
    f.outcome = Outcome::not_checked;
    f.says = fmt::format("A ballast piece has no mass given. Each leg needs {} at {} gust. Down at {} gust.",
                         needs, forecast, down);
  } else if (!enough) {
    f.outcome = Outcome::over;
    f.says = fmt::format("Each leg needs {} at the forecast gust of {}; the least has {}. Down at {} gust.",
                         needs, forecast, least, down);
  } else if (above_maker) {
    f.outcome = Outcome::over;
    f.says =
        fmt::format("The forecast gust of {} is above the maker's limit. Down at {} gust.", forecast, down);
  } else {
    f.outcome = Outcome::within;
    f.says = fmt::format("Each leg has the {} that the forecast gust of {} asks. Down at {} gust.", needs,
                         forecast, down);
  }
}

Finding finding_of(const Catalogue& c, const Show& show, const Plan& plan, const CanopySite& site) {
  Finding f = begin_finding("canopy-ballast", site.name, show.uses[static_cast<std::size_t>(site.use)].place);
  f.source = "EN 1991-1-4 7.3; EN 1990 A1.2(A)";
  f.caution =
      "For the canopy alone, ballast tied tight at the foot. Maker, venue and a competent person decide.";
  if (site.indoor) {
    say_does_not_apply(f, setting_place(show), "Indoors: no wind load.");
    return f;
  }
  if (!site.missing.empty()) {
    say_not_given(f, site.missing);
    return f;
  }
  const CanopyDetail detail = detail_of(c, plan, site);
  assume(f, detail.assumption);
  assume(f, "factors 0.9 and 1.5");
  if (!site.maker) assume(f, "maker's limit not given");
  if (!detail.card.strike) assume(f, "minutes and people to bring it down not given");
  f.detail = detail;
  if (!detail.down_at) {
    f.outcome = Outcome::not_checked;
    f.says = "No table covers this roof and the maker's gust limit is not given.";
    return f;
  }
  judge(f, site, detail, c.kit.house);
  return f;
}

}  // namespace

void check_canopy_ballast(const Catalogue& catalogue, const Show& show, const Plan& plan,
                          Findings& findings) {
  for (const CanopySite& site : canopy_sites(catalogue, show, plan))
    findings.list.push_back(finding_of(catalogue, show, plan, site));
}

}  // namespace dunnage
