// SPDX-License-Identifier: MIT
// Lifting by one person and by a team.
#include <fmt/format.h>

#include <algorithm>

#include "formula/niosh.h"
#include "formula/team_lift.h"
#include "reckon/answers.h"
#include "reckon/figure_words.h"

namespace dunnage {
namespace {

WorkSpan span_of(double hours) {
  return hours <= 1 ? WorkSpan::one_hour : hours <= 2 ? WorkSpan::two_hours : WorkSpan::eight_hours;
}

Coupling coupling_of(const std::string& word) {
  return word == "good" ? Coupling::good : word == "poor" ? Coupling::poor : Coupling::fair;
}

Lifter lifter_of(const Inputs& in) { return in.word("people", "volunteers") == "crew" ? Lifter::crew : Lifter::anyone; }

}  // namespace

void answer_lift(const Inputs& in, Answer& out, Problems&) {
  LiftPoint from;
  from.out = in.get<Length>("horizontal");
  from.up = from.up_at_origin = in.get<Length>("vertical");
  from.travel = in.get<Length>("travel");
  from.turn = in.number("turn", 0);
  from.per_minute = in.number("rate", 0.2);
  from.span = span_of(in.number("hours", 1));
  from.coupling = coupling_of(in.word("coupling", "fair"));
  LiftPoint to = from;
  to.up = from.up + from.travel;
  const LiftFactors f = lift_factors(from);
  const Mass origin = recommended_weight(f);
  const bool placed = in.word("placed", "no") == "yes";
  const Mass limit = placed ? std::min(origin, recommended_weight(lift_factors(to))) : origin;
  const Mass load = in.get<Mass>("mass");
  result(out, said(limit, in, Rounding::down));
  const auto index = lifting_index(load, limit);
  if (index) {
    const double shown = rounded_to(*index, 2, Rounding::up);
    also(out, "lifting index", plain(shown, 2));
    also(out, "reading",
         *index > 3   ? "nearly all are at increased risk: do not lift it so"
         : *index > 1 ? "above 1: more people, less load or another way"
         : shown >= 1 ? "at the limit"
                      : "below 1");
  } else {
    also(out, "lifting index", "not liftable by this method");
  }
  also(out, "multipliers",
       fmt::format("H {:.2f}, V {:.2f}, D {:.2f}, A {:.2f}, F {:.2f}, C {:.2f}", f.horizontal, f.vertical, f.distance,
                   f.asymmetry, f.frequency, f.coupling));
  also(out, "filter, best zone", said(best_zone_limit(lifter_of(in)), in, Rounding::down).text());
}

void answer_lift_team(const Inputs& in, Answer& out, Problems&) {
  TeamLimits limits;
  limits.lifter = lifter_of(in);
  const char* own[] = {"one", "two", "three", "four"};
  for (std::size_t i = 0; i < limits.own.size(); ++i) limits.own[i] = in.maybe<Mass>(own[i]);
  const int grips = static_cast<int>(in.number("grips", 2));
  const FewestPeople found = fewest_people(in.get<Mass>("mass"), grips, limits);
  result(out, said(found.people, 0, "people", Rounding::up));
  if (found.people == 0) {
    also(out, "reading", "nobody lifts it by hand: roll it, ramp it, carry it in parts or use an aid");
    if (const int more = fewest_people(in.get<Mass>("mass"), 4, limits).people; more > 0)
      also(out, "with a grip for each", fmt::format("{} people", more));
  }
  also(out, "limit", said(found.limit, in, Rounding::down).text());
  also(out, "limit from", found.own ? "the house's own figures" : "the published filter");
  for (int people = 1; people <= 4; ++people)
    if (const auto figure = team_figure(people, limits))
      also(out, fmt::format("limit for {}", people), said(figure->limit, in, Rounding::down).text());
}

}  // namespace dunnage
