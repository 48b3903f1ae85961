// SPDX-License-Identifier: MIT
// The lifting filter and the team factors, as printed.
#include "formula/team_lift.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/slack.h"

namespace dunnage {
namespace {

struct FilterRow {
  double anyone_close, anyone_far, crew_close, crew_far;
};
constexpr std::array<FilterRow, 5> kFilter{
    {{7, 3, 10, 5}, {13, 7, 20, 10}, {16, 10, 25, 15}, {13, 7, 20, 10}, {7, 3, 10, 5}}};

}  // namespace

Mass filter_limit(Lifter lifter, HandZone zone, Reach reach) {
  const FilterRow& row = kFilter[static_cast<std::size_t>(zone)];
  const bool close = reach == Reach::close;
  const double kg =
      lifter == Lifter::crew ? (close ? row.crew_close : row.crew_far) : (close ? row.anyone_close : row.anyone_far);
  return kg * unit::kilogram;
}

Mass best_zone_limit(Lifter lifter) { return filter_limit(lifter, HandZone::elbow_to_knuckle, Reach::close); }

std::optional<Mass> filter_limit(Lifter lifter, const std::vector<HandZone>& zones, Reach reach) {
  std::optional<Mass> least;
  for (HandZone zone : zones) {
    const Mass here = filter_limit(lifter, zone, reach);
    least = least ? std::min(*least, here) : here;
  }
  return least;
}

std::vector<HandZone> zones_between(Length low, Length high) {
  // The upper end of each zone but the highest, from the top down as the zones are listed.
  constexpr std::array<double, 4> ends{140, 105, 75, 25};
  const auto zone_at = [&](Length height) {
    std::size_t zone = 0;
    while (zone < ends.size() && height <= ends[zone] * unit::centimetre) ++zone;
    return zone;
  };
  std::vector<HandZone> zones;
  for (std::size_t zone = zone_at(high); zone <= zone_at(low); ++zone) zones.push_back(static_cast<HandZone>(zone));
  return zones;
}

std::optional<double> rate_share(double per_minute) {
  if (per_minute <= 0.5) return 1.0;
  if (per_minute >= 1 && per_minute <= 2) return 0.7;
  if (per_minute >= 5 && per_minute <= 8) return 0.5;
  if (per_minute > 12) return 0.2;
  return std::nullopt;
}

double twist_share(double degrees) {
  const double turn = std::abs(degrees);
  return turn > 90 ? 0.8 : turn > 45 ? 0.9 : 1.0;
}

std::optional<Mass> team_limit(const std::vector<Mass>& each) {
  Mass sum;
  for (Mass one : each) sum += one;
  switch (each.size()) {
    case 1:
      return sum;
    case 2:
      return sum * (2.0 / 3.0);
    case 3:
      return sum * 0.5;
    default:
      return std::nullopt;
  }
}

std::optional<TeamFigure> team_figure(int people, const TeamLimits& limits) {
  if (people < 1 || people > 4) return std::nullopt;
  if (const auto& own = limits.own[static_cast<std::size_t>(people - 1)]) return TeamFigure{*own, true};
  const Mass each = limits.own[0].value_or(best_zone_limit(limits.lifter));
  const auto together = team_limit(std::vector<Mass>(static_cast<std::size_t>(people), each));
  if (!together) return std::nullopt;
  return TeamFigure{*together, limits.own[0].has_value()};
}

FewestPeople fewest_people(std::optional<Mass> mass, int grips, const TeamLimits& limits) {
  FewestPeople found;
  const int most = std::clamp(grips, 1, 4);
  for (int people = 1; people <= most && found.people == 0; ++people) {
    const auto figure = team_figure(people, limits);
    if (!figure) continue;
    // Compared at 1e-9 so that a limit converted from pounds still covers its own figure.
    const bool covers = mass && !exceeds(*mass, figure->limit);
    if (covers) found.people = people;
    if (covers || figure->limit >= found.limit) {
      found.limit = figure->limit;
      found.own = figure->own;
    }
  }
  return found;
}

}  // namespace dunnage
