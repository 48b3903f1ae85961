// SPDX-License-Identifier: MIT
// Rule ways: steps, ramps and crossed cables against the accessible route.
#include "check/level_ways.h"

#include <algorithm>

#include "base/slack.h"
#include "check/say.h"
#include "formula/access.h"

namespace dunnage {
namespace {

constexpr Length least_width = 36 * unit::inch;
constexpr Length most_rise_flush = 0.25 * unit::inch, most_rise_bevelled = 0.5 * unit::inch;
/// Source and caution.
Finding begin_way(Subject subject, Sentence called, Place place) {
  Finding f = begin_finding(RuleName::ways, subject, std::move(called), std::move(place));
  f.sources = {as_is("ADA Standards 303, 405")};
  f.caution = said("Walk every route with a wheel and in the dark. The venue and the fire marshal decide.");
  return f;
}

std::string small(Length length, UnitSystem units, Rounding way) {
  // A quarter of an inch must not round to none.
  const double step = units == UnitSystem::us ? 0.0254 / 8 : 0.001;
  const double steps = way == Rounding::up ? steps_up(length.si() / step) : steps_down(length.si() / step);
  return units == UnitSystem::us ? plain(steps / 8, 3) + " in" : plain(steps, 0) + " mm";
}

/// Rise without a ramp, or a ramp that is too short.
void judge_ramp(Finding& f, const Passage& way, UnitSystem units) {
  const RampFigures needed = ramp(way.rise->value);
  const std::string asks = print(needed.slope, units, Rounding::up).text();
  f.limit = most_rise_bevelled;
  if (!way.ramp) {
    f.outcome = Outcome::over;
    f.says = said("A step of {} and no ramp: lay one of {} at 1:12, or show another way.",
                  small(way.rise->value, units, Rounding::up), asks);
    return;
  }
  const bool short_ramp = falls_short(way.ramp->value, needed.slope);
  const std::string lies = print(way.ramp->value, units, Rounding::down).text(),
                    rise = small(way.rise->value, units, Rounding::up),
                    landings = print(needed.total, units, Rounding::up).text();
  f.says = short_ramp ? said("Ramp of {} for {}: {} at 1:12 is asked, with landings {}: lay a longer one.", lies, rise,
                             asks, landings)
                      : said("Ramp of {} for {}: {} at 1:12 is asked, with landings {}.", lies, rise, asks, landings);
  f.outcome = short_ramp ? Outcome::over : Outcome::within;
}

void judge_rise(Finding& f, const Passage& way, UnitSystem units) {
  f.measured = way.rise->value;
  const std::string rise = small(way.rise->value, units, Rounding::up);
  f.outcome = Outcome::within;
  switch (level_change(way.rise->value)) {
    case LevelChange::none_needed:
      f.limit = most_rise_flush;
      f.says = said("{}: nothing is asked.", rise);
      break;
    case LevelChange::bevel:
      f.limit = most_rise_bevelled;
      f.says = said("{}: its edge is bevelled 1:2.", rise);
      break;
    case LevelChange::ramp:
      judge_ramp(f, way, units);
      break;
  }
}

/// Narrower than a wheelchair needs is over; a ramp without a width is not checked.
void judge_width(Finding& f, const Passage& way, UnitSystem units) {
  const std::string least = print(least_width, units, Rounding::up).text();
  if (way.width && falls_short(way.width->value, least_width)) {
    if (f.outcome != Outcome::over) {
      f.measured = way.width->value;
      f.limit = least_width;
    }
    f.outcome = Outcome::over;
    f.says.then(said("It is {} wide: clear it to {}, or show another way.",
                     print(way.width->value, units, Rounding::down).text(), least));
  } else if (!way.width && way.ramp) {
    if (f.outcome == Outcome::within) f.outcome = Outcome::not_checked;
    f.says.then(said("Not given: its width. Measure it: {} at least.", least));
  } else if (way.width && !way.rise) {
    f.says = said("{} wide, {} at least. Not given: its rise. Measure it and type it, 0 where it is level.",
                  print(way.width->value, units, Rounding::down).text(), least);
  }
}

Finding way_finding(const Show& show, const Passage& way, UnitSystem units) {
  Finding f = begin_way(subject_in(show.ways, way, Subject::Kind::way), way.what.value, way.place);
  if (!way.rise && !way.width) {
    say_not_given(f, {said("its rise")}, said("Measure it and type it, 0 where it is level."));
    return f;
  }
  if (way.rise) judge_rise(f, way, units);
  judge_width(f, way, units);
  return f;
}

/// All cables that people cross on foot are one subject: one row on the walk.
void crossings(const Show& show, UnitSystem units, Findings& findings) {
  std::optional<Length> highest;
  int known = 0, unknown = 0;
  Place place, first;
  for (const Run& run : show.runs)
    for (const Crossing& part : run.over) {
      if (!part.crossed_by || part.crossed_by->value != "feet") continue;
      if (!first.known()) first = part.place;
      if (!part.rise) {
        ++unknown;
        continue;
      }
      ++known;
      if (!highest || part.rise->value > *highest) place = part.place;
      highest = highest ? std::max(*highest, part.rise->value) : part.rise->value;
    }
  if (known + unknown == 0) return;
  Finding f = begin_way({}, said("cables crossed on foot"), highest ? place : first);
  f.limit = most_rise_bevelled;
  if (highest) f.measured = *highest;
  if (highest && exceeds(*highest, most_rise_bevelled)) {
    f.outcome = Outcome::over;
    f.says = said("The highest stands {} high, above {}: lay a ramp of {} at 1:12, or lead people another way.",
                  small(*highest, units, Rounding::up), small(most_rise_bevelled, units, Rounding::down),
                  print(ramp(*highest).slope, units, Rounding::up).text());
  } else if (unknown > 0) {
    say_not_given(f, {said("how high the cable stands at {} of {} crossings", unknown, known + unknown)},
                  said("Measure it with its cover on and type rise."));
  } else {
    f.outcome = Outcome::within;
    const std::string high = small(*highest, units, Rounding::up);
    f.says = *highest > most_rise_flush
                 ? said("The highest of {} stands {} high: its edges are bevelled 1:2.", known, high)
                 : said("The highest of {} stands {} high.", known, high);
  }
  findings.list.push_back(f);
}

}  // namespace

void check_ways(const Catalogue& catalogue, const Show& show, const Plan&, Findings& findings) {
  const UnitSystem units = catalogue.kit.house.units;
  for (const Passage& way : show.ways) findings.list.push_back(way_finding(show, way, units));
  crossings(show, units, findings);
}

}  // namespace dunnage
