// SPDX-License-Identifier: MIT
// The lifting rule: mass and grips against what a team may lift.
#include "check/lifting.h"

#include <algorithm>
#include <optional>

#include "base/slack.h"
#include "check/say.h"
#include "formula/niosh.h"

namespace dunnage {
namespace {

bool aid_typed(const HouseLift& lift) { return !lift.aid.empty() && lift.aid != HouseLift{}.aid; }

Sentence count_words(int people) {
  switch (people) {
    case 1:
      return said("one person");
    case 2:
      return said("two people");
    case 3:
      return said("three people");
    default:
      return said("four people");
  }
}

Sentence lifts_words(int people, const std::string& limit) {
  switch (people) {
    case 1:
      return said("One person lifts it: limit {}.", limit);
    case 2:
      return said("Two people lift it: limit {}.", limit);
    case 3:
      return said("Three people lift it: limit {}.", limit);
    default:
      return said("Four people lift it: limit {}.", limit);
  }
}

/// A house may set its own limits; where they are above the published screen, the sheet says so.
void say_of_house_limit(Finding& f, const Handling& handling, const House& house) {
  if (!handling.above_screen) return;
  const Sentence who = count_words(handling.people);
  const std::string limit = print(handling.limit, house.units, Rounding::down).text();
  if (handling.screen) {
    assume(f, said("house limit of {} for {}, above the published screen of {}", limit, who,
                   print(*handling.screen, house.units, Rounding::down).text()));
    return;
  }
  assume(f, said("house limit of {} for {}", limit, who));
  assume(f, said("nothing is published for that many"));
}

Finding begin_lift(const Catalogue& c, int unit, bool house_limit, const Place& place) {
  Finding f = begin_finding(RuleName::lifting, {Subject::Kind::unit, unit},
                            c.units[static_cast<std::size_t>(unit)].code, place);
  // Tens of thousands of findings share these.
  static const Sentence own = said("house limit"), published = as_is("HSE INDG143, L23"),
                        caution = said(
                            "A screen for an easy lift, not a legal maximum: wide, low, wet, steps or a turn need "
                            "a new look.");
  f.sources = {house_limit ? own : published};
  f.caution = caution;
  return f;
}

Finding lifting_finding(const Catalogue& c, int unit, const Handling& handling) {
  const Case& box = c.case_at(unit);
  const UnitMass mass = c.mass_of(unit);
  const UnitSystem units = c.kit.house.units;
  Finding f = begin_lift(c, unit, handling.house_limit, box.place);
  f.detail = handling;
  if (!handling.known) {
    f.outcome = Outcome::not_checked;
    f.says = said("Its mass, or that of a part of it, is not given: weigh it before anybody lifts it.");
    return f;
  }
  f.measured = mass.mass;
  const std::string limit = print(handling.limit, units, Rounding::down).text();
  if (mass.estimated) assume(f, said("mass added up, not weighed"));
  if (handling.people > 0) {
    f.outcome = Outcome::within;
    f.limit = handling.limit;
    say_of_house_limit(f, handling, c.kit.house);
    f.says = lifts_words(handling.people, limit);
  } else if (box.wheels || aid_typed(c.kit.house.lift)) {
    f.outcome = Outcome::does_not_apply;
    f.place = box.wheels ? box.place : c.kit.house.lift.place;
    f.says = said("Not lifted by hand, beyond {}: {}.", limit, handling.aid);
  } else {
    f.outcome = Outcome::over;
    f.limit = handling.limit;
    f.says =
        said("Beyond {} by hand, and it has neither wheels nor an aid: carry it in parts, or bring a ramp or a lift.",
             limit);
  }
  return f;
}

/// The lift that asks for the most people, where the show has not so many. Nothing of a show that does not state its
/// crew.
std::optional<Finding> too_few_finding(const Catalogue& c, const Show& show, const std::vector<int>& pulled,
                                       const std::vector<Handling>& handling) {
  if (!show.crew || pulled.empty()) return std::nullopt;
  const auto people = [&](int unit) { return handling[static_cast<std::size_t>(unit)].people; };
  const int most = *std::max_element(pulled.begin(), pulled.end(), [&](int a, int b) { return people(a) < people(b); });
  const int has = show.crew->value + (show.volunteers ? show.volunteers->value : 0);
  if (people(most) <= has) return std::nullopt;
  const std::string& code = c.units[static_cast<std::size_t>(most)].code;
  Finding f = begin_lift(c, most, handling[static_cast<std::size_t>(most)].house_limit, show.crew->place);
  f.outcome = Outcome::over;
  f.says = said("{} must be lifted by {} or more people; the show has {}.", code, people(most), has);
  if (!show.volunteers) assume(f, said("volunteers not stated: none counted"));
  f.detail = handling[static_cast<std::size_t>(most)];
  return f;
}

}  // namespace

TeamLimits team_limits(const HouseLift& lift) {
  return {lift.people == People::crew ? Lifter::crew : Lifter::anyone, lift.own()};
}

Handling handling_of(const Case& box, const UnitMass& mass, const HouseLift& lift) {
  const auto known = mass.known ? std::optional<Mass>(mass.mass) : std::nullopt;
  const FewestPeople found = fewest_people(known, box.grips, team_limits(lift));
  Handling h;
  h.known = mass.known;
  h.move = box.wheels ? Handling::Move::roll : Handling::Move::carry;
  h.people = found.people;
  h.limit = found.limit;
  h.house_limit = found.own;
  if (h.known && h.people == 0) h.aid = aid_typed(lift) ? Sentence(lift.aid) : said("lifting aid");
  if (box.wheels) h.ramp_people = h.people == 1 ? 1 : 2;
  if (h.house_limit && h.people > 0) {
    TeamLimits published = team_limits(lift);
    published.own = {};
    if (const auto screen = team_figure(h.people, published)) h.screen = screen->limit;
    h.above_screen = !h.screen || exceeds(h.limit, *h.screen);
  }
  if (const auto loading = loading_lift(box, mass, lift)) {
    h.zone_limit = loading->filter;
    h.loading_index = loading->index;
    h.not_liftable = !loading->index;
  }
  return h;
}

std::optional<LoadingLift> loading_lift(const Case& box, const UnitMass& mass, const HouseLift& lift) {
  if (!box.grip_height || !box.size || !lift.deck || !mass.known) return std::nullopt;
  LiftPoint from;
  from.up = from.up_at_origin = box.grip_height->value;
  from.out = hands_out(std::min(box.size->value.length, box.size->value.width), from.up);
  from.travel = lift.deck->value;
  from.coupling = box.hold == Hold::good ? Coupling::good : box.hold == Hold::fair ? Coupling::fair : Coupling::poor;
  LiftPoint to = from;
  to.up = from.up + lift.deck->value;
  LoadingLift out;
  out.limit = std::min(recommended_weight(lift_factors(from)), recommended_weight(lift_factors(to)));
  out.index = lifting_index(mass.mass, out.limit);
  const Lifter lifter = lift.people == People::crew ? Lifter::crew : Lifter::anyone;
  const Reach reach = exceeds(from.out, arms_length) ? Reach::far : Reach::close;
  out.filter = *filter_limit(lifter, zones_between(from.up, to.up), reach);
  return out;
}

void check_lifting(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  const HouseLift& lift = catalogue.kit.house.lift;
  for (int unit = 0; unit < static_cast<int>(catalogue.units.size()); ++unit)
    findings.handling.push_back(handling_of(catalogue.case_at(unit), catalogue.mass_of(unit), lift));
  const std::vector<int> pulled = plan.pulled();
  findings.list.reserve(findings.list.size() + pulled.size() + 100);  // and what the other rules say
  for (int unit : pulled) {
    Finding f = lifting_finding(catalogue, unit, findings.handling[static_cast<std::size_t>(unit)]);
    // Units of a case say the same; sharing it keeps a large kit small.
    if (!findings.list.empty() && findings.list.back().says == f.says) f.says = findings.list.back().says;
    findings.list.push_back(std::move(f));
  }
  if (auto f = too_few_finding(catalogue, show, pulled, findings.handling)) findings.list.push_back(std::move(*f));
}

}  // namespace dunnage
