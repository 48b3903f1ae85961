// SPDX-License-Identifier: MIT
#include "document/ballast_plan.h"

#include <algorithm>
#include <cmath>

#include "document/phrase.h"

namespace dunnage {
namespace {

using picture::GroundLine;
using picture::GroundSpot;
using Kind = GroundLine::Kind;

constexpr double pi = 3.14159265358979323846;
constexpr Length usual_side = 3 * unit::metre;  // of a structure whose size was not given: the picture still shows legs

Length or_usual(const Maybe<Length>& length) { return length ? length->value : usual_side; }

/// N, NE, E ... as shares of half the plan; nothing for other names.
std::optional<std::pair<double, double>> by_compass(const std::string& name) {
  if (name.empty() || name.size() > 2) return std::nullopt;
  double x = 0, y = 0;
  for (const char c : name) {
    if (c == 'N')
      y += 1;
    else if (c == 'S')
      y -= 1;
    else if (c == 'E')
      x += 1;
    else if (c == 'W')
      x -= 1;
    else
      return std::nullopt;
  }
  if (std::abs(x) > 1 || std::abs(y) > 1 || (x == 0 && y == 0)) return std::nullopt;
  return std::pair{x, y};
}

bool all_by_compass(const Structure& structure) {
  return std::all_of(structure.legs.begin(), structure.legs.end(),
                     [](const Text& leg) { return by_compass(leg.value).has_value(); });
}

/// Around the edge from the upper left corner, clockwise, evenly.
std::pair<double, double> around(std::size_t i, std::size_t count) {
  const double side = 4.0 * static_cast<double>(i) / static_cast<double>(count);
  const double along = 2 * (side - std::floor(side)) - 1;
  switch (static_cast<int>(side)) {
    case 0:
      return {along, 1};
    case 1:
      return {1, -along};
    case 2:
      return {-along, -1};
    default:
      return {-1, along};
  }
}

void add_rectangle(std::vector<GroundLine>& lines, Length w, Length h) {
  const GroundSpot a{w * -0.5, h * 0.5}, b{w * 0.5, h * 0.5}, c{w * 0.5, h * -0.5}, d{w * -0.5, h * -0.5};
  for (const auto& [from, to] : {std::pair{a, b}, {b, c}, {c, d}, {d, a}}) lines.push_back({from, to, Kind::edge});
}

void add_ridges(std::vector<GroundLine>& lines, Roof roof, Length w, Length h) {
  const GroundSpot middle{};
  if (roof == Roof::four_slope)
    for (const auto& [x, y] : {std::pair{-0.5, 0.5}, {0.5, 0.5}, {0.5, -0.5}, {-0.5, -0.5}})
      lines.push_back({middle, {w * x, h * y}, Kind::ridge});
  if (roof == Roof::two_slope) {  // along the longer side
    if (w >= h)
      lines.push_back({{w * -0.5, {}}, {w * 0.5, {}}, Kind::ridge});
    else
      lines.push_back({{{}, h * 0.5}, {{}, h * -0.5}, Kind::ridge});
  }
}

void add_walls(const Context& context, picture::PlanView& plan, const Use& use, Length w, Length h) {
  for (const Text& wall : use.walls) {
    const auto at = by_compass(wall.value);
    if (!at || (at->first != 0 && at->second != 0)) continue;
    const bool level = at->first == 0;
    const Length x = w * (0.5 * at->first), y = h * (0.5 * at->second);
    if (level)
      plan.lines.push_back({{w * -0.5, y}, {w * 0.5, y}, Kind::wall});
    else
      plan.lines.push_back({{x, h * -0.5}, {x, h * 0.5}, Kind::wall});
    plan.walls.push_back(context.words.say("ballast.wall", {{"wall", wall.value}}));
  }
}

picture::Stand leg_stand(const Context& context, const LegRow& row) {
  const Words& words = context.words;
  const auto mass = [&](Mass m, Rounding way) { return print(m, context.units, way).text(); };
  picture::Stand stand;
  stand.name = row.leg;
  stand.lines.push_back(stands_words(words, row));
  stand.lines.push_back(words.say("ballast.has", {{"mass", mass(row.actual, Rounding::down)}}));
  if (!row.required_known) {
    stand.lines.push_back(words("ballast.need-unknown"));
    return stand;
  }
  stand.lines.push_back(words.say("ballast.needs", {{"mass", mass(row.required, Rounding::up)}}));
  const bool enough = row.actual * (1 + 1e-9) >= row.required;
  stand.state = enough ? picture::State::enough : picture::State::lacking;
  return stand;
}

picture::PlanView canopy_plan(const Context& context, const WindUse& wind) {
  const Structure& structure = *wind.structure;
  const Words& words = context.words;
  const Length w = or_usual(structure.plan_length), h = or_usual(structure.plan_width);
  picture::PlanView plan;
  add_rectangle(plan.lines, w, h);
  add_ridges(plan.lines, structure.roof, w, h);
  add_walls(context, plan, *wind.use, w, h);
  const bool compass = all_by_compass(structure);
  if (compass) plan.up = "N";
  for (std::size_t i = 0; i < structure.legs.size(); ++i) {
    const std::string& name = structure.legs[i].value;
    const auto at = compass ? *by_compass(name) : around(i, structure.legs.size());
    picture::Stand stand;
    stand.name = name;
    stand.lines = {words("outcome.not-checked")};
    if (wind.canopy)
      for (const LegRow& row : wind.canopy->legs)
        if (row.leg == name) stand = leg_stand(context, row);
    stand.at = {w * (0.5 * at.first), h * (0.5 * at.second)};
    plan.stands.push_back(std::move(stand));
  }
  if (structure.plan_length && structure.plan_width)
    plan.caption = words.say("ballast.plan", {{"length", print(w, context.units, Rounding::nearest).text()},
                                              {"width", print(h, context.units, Rounding::nearest).text()}});
  else
    plan.caption = words("ballast.plan-no-size");
  return plan;
}

/// Feet on a circle, the first to the top; the lines from foot to foot are where it tips.
void add_feet(std::vector<GroundLine>& lines, int feet, Length radius) {
  std::vector<GroundSpot> spots;
  for (int i = 0; i < feet; ++i) {
    const double angle = pi / 2 + 2 * pi * i / feet;
    spots.push_back({radius * std::cos(angle), radius * std::sin(angle)});
  }
  for (std::size_t i = 0; i < spots.size(); ++i) {
    lines.push_back({{}, spots[i], Kind::edge});
    lines.push_back({spots[i], spots[(i + 1) % spots.size()], Kind::ridge});
  }
}

picture::State state_of(Outcome outcome) {
  switch (outcome) {
    case Outcome::within:
      return picture::State::enough;
    case Outcome::over:
      return picture::State::lacking;
    default:
      return picture::State::unknown;
  }
}

picture::State tipping_state(const WindUse& wind) {
  for (const Finding* finding : wind.findings)
    if (finding->rule == RuleName::tower_tip) return state_of(finding->outcome);
  return picture::State::unknown;
}

picture::PlanView tower_plan(const Context& context, const WindUse& wind) {
  const Structure& structure = *wind.structure;
  const Words& words = context.words;
  const auto small = [&](Length length) { return print_small(length, context.units, Rounding::nearest).text(); };
  picture::PlanView plan;
  plan.mast = true;
  plan.up = words("ballast.front");
  if (structure.feet && structure.foot_radius) {
    add_feet(plan.lines, structure.feet->value, structure.foot_radius->value);
    plan.caption = words.say("ballast.feet-plan", {{"n", std::to_string(structure.feet->value)},
                                                   {"radius", small(structure.foot_radius->value)}});
  } else if (structure.base_length && structure.base_width) {
    add_rectangle(plan.lines, structure.base_length->value, structure.base_width->value);
    plan.caption = words.say("ballast.base-plan", {{"length", small(structure.base_length->value)},
                                                   {"width", small(structure.base_width->value)}});
  } else {
    add_rectangle(plan.lines, usual_side, usual_side);
    plan.caption = words("ballast.plan-no-size");
  }
  for (const BallastLine& line : wind.use->ballast) {
    if (!line.at) continue;
    picture::Stand stand;
    stand.at = {line.at->first, line.at->second};
    stand.name = words.say("thing.count", {{"n", std::to_string(line.count)}, {"name", line.code.value}});
    stand.lines = {spot_words(context, *line.at)};
    stand.state = tipping_state(wind);
    plan.stands.push_back(std::move(stand));
  }
  return plan;
}

void add_upright(picture::Chart& chart, double at, const std::string& name, picture::Pattern pattern, bool heavy) {
  chart.uprights.push_back({at, name, pattern, heavy});
}

}  // namespace

std::string spot_words(const Context& context, const std::pair<Length, Length>& at) {
  const auto way = [&](Length length, const char* ahead, const char* back) {
    if (length == Length{}) return std::string();
    const Length size = length < Length{} ? -length : length;
    return context.words.say(length > Length{} ? ahead : back,
                             {{"length", print_small(size, context.units, Rounding::nearest).text()}});
  };
  const std::string spot =
      joined({way(at.first, "ballast.right", "ballast.left"), way(at.second, "ballast.ahead", "ballast.behind")}, ", ");
  return spot.empty() ? context.words("ballast.middle") : spot;
}

picture::PlanView plan_picture(const Context& context, const WindUse& wind) {
  return wind.structure->kind == StructureKind::canopy ? canopy_plan(context, wind) : tower_plan(context, wind);
}

std::optional<picture::Chart> chart_picture(const Context& context, const WindUse& wind) {
  const Words& words = context.words;
  const std::vector<CurvePoint>* curve = wind.canopy ? &wind.canopy->curve : wind.tower ? &wind.tower->curve : nullptr;
  if (!curve || curve->empty()) return std::nullopt;
  const std::optional<Speed> maker = wind.canopy ? wind.canopy->maker : wind.tower->maker;
  const std::optional<Speed> forecast = wind.canopy ? wind.canopy->forecast : wind.tower->forecast;
  const std::optional<Speed> down = down_of(wind);
  picture::Chart chart;
  chart.up = {words("ballast.margin"), 4, 1, 0};
  chart.floor = 1;
  chart.floor_name = words("ballast.below");
  picture::Curve line{words("ballast.curve"), picture::Pattern::solid, {}};
  for (const CurvePoint& point : *curve) line.points.emplace_back(point.gust / meter_step(context.meter), point.margin);
  double end = line.points.back().first;
  for (const std::optional<Speed>& mark : {maker, forecast, down})
    if (mark) end = std::max(end, *mark / meter_step(context.meter));
  const double step = round_step(end);
  chart.across = {words.say("ballast.gust-axis", {{"meter", context.meter}}), std::ceil(end / step - 1e-9) * step, step,
                  0};
  chart.curves.push_back(std::move(line));
  if (forecast)
    add_upright(chart, *forecast / meter_step(context.meter),
                words.say("ballast.mark-forecast", {{"gust", plain(forecast_figure(*forecast, context.meter), 1)}}),
                picture::Pattern::dashes, false);
  if (down)
    add_upright(chart, *down / meter_step(context.meter),
                words.say("ballast.mark-down", {{"gust", print(*down, context.meter, Rounding::down).number()}}),
                picture::Pattern::solid, true);
  if (maker)
    add_upright(chart, *maker / meter_step(context.meter),
                words.say("ballast.mark-maker", {{"gust", print(*maker, context.meter, Rounding::down).number()}}),
                picture::Pattern::dots, false);
  return chart;
}

}  // namespace dunnage
