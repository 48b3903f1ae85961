// SPDX-License-Identifier: MIT
// Wind: pressure, canopies, towers, sliding.
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

#include "base/slack.h"
#include "formula/canopy_shape.h"
#include "formula/overturning.h"
#include "reckon/answers.h"
#include "reckon/figure_words.h"

namespace dunnage {
namespace {

/// A level as the meter reads it: down to a whole unit.
std::string level(Speed gust, const Inputs& in) {
  const Said exact = said(gust, in, Rounding::down);
  return plain(std::floor(exact.value), 0) + " " + exact.unit;
}

RoofShape roof_of(const std::string& word) {
  return word == "flat"           ? RoofShape::flat
         : word == "single-slope" ? RoofShape::single_slope
         : word == "two-slope"    ? RoofShape::two_slope
                                  : RoofShape::four_slope;
}

CanopyReading canopy_of(const Inputs& in, Answer& out, Problems& problems) {
  CanopyShape shape;
  shape.roof = roof_of(in.word("roof", "four-slope"));
  std::tie(shape.length, shape.width) = in.sides("plan");
  if (in.has("pitch")) shape.pitch = in.number("pitch", 0);
  shape.eaves = in.maybe<Length>("eaves");
  shape.peak = in.maybe<Length>("peak");
  const std::string under = in.word("under", "");
  if (!under.empty()) shape.blockage = under == "empty" ? 0 : under == "half-full" ? 0.5 : 1.0;
  shape.walls = static_cast<int>(in.number("walls", 0));
  shape.own = in.maybe<Mass>("standing");
  shape.legs = static_cast<int>(in.number("legs", 4));
  const CanopyReading reading = read_canopy(shape);
  for (const Sentence& missing : reading.missing) problems.push_back(missing.english() + " is needed with walls");
  if (!reading.assumptions.empty())
    out.cautions.push_back(fmt::format("Assumed: {}.", strung(reading.assumptions, "; ").english()));
  if (reading.needs_maker_limit && !in.has("maker"))
    out.cautions.push_back("No table covers this roof by itself: the maker's gust limit is needed and comes first.");
  also(out, "uplift coefficient", plain(reading.force.up, 3));
  return reading;
}

/// The same without what pushes sideways and tilts: the figure that plain uplift tables give.
CanopyStand uplift_alone(CanopyStand stand) {
  stand.wind.tilt = 0;
  return stand;
}

/// The least of what the ballast holds and the maker's limit.
std::optional<Speed> held_gust(const CanopyReading& reading, const Inputs& in, BalanceFactors factors) {
  std::optional<Speed> gust = lifting_gust(reading.stand, in.get<Mass>("ballast"), factors);
  if (const auto maker = in.maybe<Speed>("maker")) gust = gust ? std::min(*gust, *maker) : *maker;
  return gust;
}

}  // namespace

void answer_wind_pressure(const Inputs& in, Answer& out, Problems&) {
  const Pressure q = wind_pressure(in.get<Speed>("gust"));
  result(out, said(q, in, Rounding::up));
  if (in.has("area")) {
    const Force force = q * in.get<Area>("area") * in.number("coefficient", panel_coefficient);
    also(out, "force", said(force, in, Rounding::up).text());
  }
  const int force = wind_force(in.get<Speed>("gust"));
  also(out, "as a steady wind",
       fmt::format("force {}, {}: {}", force, wind_force_name(force), wind_force_signs(force)));
}

void answer_canopy_ballast(const Inputs& in, Answer& out, Problems& problems) {
  const CanopyReading reading = canopy_of(in, out, problems);
  if (!problems.empty()) return;
  const Speed gust = in.get<Speed>("gust");
  result(out, said(ballast_per_leg(reading.stand, gust), in, Rounding::up));
  also(out, "without factors", said(ballast_per_leg(reading.stand, gust, no_factors), in, Rounding::up).text());
  const CanopyStand alone = uplift_alone(reading.stand);
  also(out, "for the uplift alone", said(ballast_per_leg(alone, gust), in, Rounding::up).text());
  also(out, "for the uplift alone, without factors",
       said(ballast_per_leg(alone, gust, no_factors), in, Rounding::up).text());
  const Force lift = Force::from_si(wind_pressure(gust).si() * reading.stand.wind.lift);
  also(out, "uplift in all", said(lift, in, Rounding::up).text());
  if (const auto maker = in.maybe<Speed>("maker"); maker && gust > *maker)
    also(out, "maker's limit", "exceeded by this gust: down before, whatever the ballast");
  if (!in.has("ballast")) return;
  if (const auto holds = held_gust(reading, in, {})) also(out, "down at, with that ballast", level(*holds, in));
}

void answer_gust_from_ballast(const Inputs& in, Answer& out, Problems& problems) {
  const CanopyReading reading = canopy_of(in, out, problems);
  if (!problems.empty()) return;
  const auto holds = held_gust(reading, in, {});
  if (!holds) {
    problems.push_back("nothing lifts this canopy: check plan and roof");
    return;
  }
  result(out, said(*holds, in, Rounding::down));
  also(out, "down at", level(*holds, in));
  if (const auto gust = in.maybe<Speed>("gust"))
    also(out, "the gust given", exceeds(*gust, *holds) ? "over limit" : "within limit");
  if (const auto plain_gust = lifting_gust(reading.stand, in.get<Mass>("ballast"), no_factors))
    also(out, "lifts, without factors, at", said(*plain_gust, in, Rounding::down).text());
  if (const auto alone = lifting_gust(uplift_alone(reading.stand), in.get<Mass>("ballast"), no_factors))
    also(out, "by the uplift alone, without factors, at", said(*alone, in, Rounding::down).text());
}

void answer_tower_tip(const Inputs& in, Answer& out, Problems& problems) {
  std::optional<Length> lever;
  if (in.has("feet") && in.has("radius"))
    lever = tipping_lever(static_cast<int>(in.number("feet", 3)), in.get<Length>("radius"));
  if (in.has("base")) lever = std::apply([](Length a, Length b) { return tipping_lever(a, b); }, in.sides("base"));
  if (!lever || *lever <= Length{}) {
    problems.push_back("base, or feet with radius, is needed, for example feet=3 radius=\"55 cm\"");
    return;
  }
  const std::vector<WindArea> head{
      {in.get<Area>("area"), in.number("coefficient", panel_coefficient), in.get<Length>("height")}};
  const Moment holds = holding_moment({{in.get<Mass>("mass") + in.get<Mass>("ballast"), *lever}});
  const auto tips = tipping_gust(head, holds);
  if (!tips) {
    problems.push_back("nothing tips it: area and height must be above 0");
    return;
  }
  const Speed limit = in.has("maker") ? std::min(*tips, in.get<Speed>("maker")) : *tips;
  result(out, said(limit, in, Rounding::down));
  also(out, "down at", level(limit, in));
  also(out, "tips, without factors, at", said(*tipping_gust(head, holds, no_factors), in, Rounding::down).text());
  if (!in.has("gust")) return;
  const Moment over = overturning_moment(head, wind_pressure(in.get<Speed>("gust")));
  also(out, "more in the middle for that gust",
       said(mass_against_tipping(over, holds, *lever), in, Rounding::up).text());
}

void answer_sliding(const Inputs& in, Answer& out, Problems& problems) {
  const auto known = in.has("ground") ? steel_friction(in.word("ground", "")) : std::nullopt;
  if (!in.has("friction") && !known) {
    problems.push_back(in.has("ground") ? "no friction is published for this ground: pull a foot and give friction="
                                        : "friction or ground is needed, for example friction=0.2 or ground=concrete");
    return;
  }
  const double friction = in.number("friction", known.value_or(0));
  CanopyStand stand;
  stand.own = in.get<Mass>("mass");
  stand.wind.lift = in.number("uplift", 1.3) * in.get<Area>("roof").si();
  stand.wind.side = wall_coefficient * in.get<Area>("wall").si();
  const Pressure q = wind_pressure(in.get<Speed>("gust"));
  const Force up = Force::from_si(q.si() * stand.wind.lift), side = Force::from_si(q.si() * stand.wind.side);
  result(out, said(mass_against_sliding(friction, up, side), in, Rounding::up));
  also(out, "without factors", said(mass_against_sliding(friction, up, side, no_factors), in, Rounding::up).text());
  if (in.has("mass"))
    if (const auto slides = sliding_gust(stand, {}, friction)) also(out, "may slide from", level(*slides, in));
}

}  // namespace dunnage
