// SPDX-License-Identifier: MIT
// How many people lift a case: limits, grips, wheels, the house's own figures.
#include "check/lifting.h"

#include <catch2/catch.hpp>

#include "small_show.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

namespace {
Handling handling(Mass mass, int grips, HouseLift lift = {}, bool wheels = false) {
  Case box;
  box.grips = grips;
  box.wheels = wheels;
  UnitMass m;
  m.mass = mass;
  m.known = true;
  return handling_of(box, m, lift);
}
HouseLift crew() {
  HouseLift lift;
  lift.people = People::crew;
  lift.aid = "ramp";
  return lift;
}
}  // namespace

TEST_CASE("The fewest people whose limit covers the mass") {
  CHECK(handling(25 * kilogram, 2, crew()).people == 1);
  CHECK(handling(25.1 * kilogram, 2, crew()).people == 2);
  CHECK(handling(33.3 * kilogram, 2, crew()).people == 2);
  CHECK(handling(33.4 * kilogram, 3, crew()).people == 3);
  CHECK(handling(37.6 * kilogram, 4, crew()).people == 0);  // no published figure for four
  CHECK(handling(37.6 * kilogram, 4, crew()).aid.english() == "ramp");
  CHECK(handling(16 * kilogram, 2).people == 1);  // volunteers
  CHECK(handling(21.4 * kilogram, 2).people == 0);
}

TEST_CASE("Never more people than grips, and one may always lift what one may lift") {
  CHECK(handling(30 * kilogram, 1, crew()).people == 0);
  CHECK(handling(20 * kilogram, 0, crew()).people == 1);
  CHECK(handling(36 * kilogram, 2, crew()).people == 0);
  CHECK(handling(36 * kilogram, 2, crew()).limit / kilogram == Approx(100.0 / 3));
}

TEST_CASE("A house's own figures are used and said") {
  HouseLift lift = crew();
  lift.one = given(16 * kilogram);
  lift.four = given(60 * kilogram);
  const Handling one = handling(16 * kilogram, 2, lift), four = handling(50 * kilogram, 4, lift);
  CHECK(one.people == 1);
  CHECK(one.house_limit);
  CHECK(handling(20 * kilogram, 2, lift).people == 2);  // 2/3 of twice the house's own figure
  CHECK(four.people == 4);
  CHECK(four.limit / kilogram == Approx(60));
  CHECK_FALSE(handling(20 * kilogram, 2, crew()).house_limit);
}

TEST_CASE("Wheels roll: two on a ramp unless one could lift it") {
  const Handling heavy = handling(80 * kilogram, 2, crew(), true), light = handling(10 * kilogram, 2, crew(), true);
  CHECK(heavy.move == Handling::Move::roll);
  CHECK(heavy.ramp_people == 2);
  CHECK(light.ramp_people == 1);
  CHECK(handling(10 * kilogram, 2, crew()).move == Handling::Move::carry);
}

TEST_CASE("Findings of lifting say what a crew does") {
  SmallShow s;
  CHECK(s.one("lifting").outcome == Outcome::within);
  CHECK(s.one("lifting").says.english() == "One person lifts it: limit 35 lb.");
  s.kit.cases[0].weighed = given(81 * pound);
  CHECK(s.one("lifting").outcome == Outcome::over);
  CHECK(s.one("lifting").says.english() ==
        "Beyond 35 lb by hand, and it has neither wheels nor an aid: carry it in parts, or "
        "bring a ramp or a lift.");
  s.kit.house.lift.aid = "ramp";
  CHECK(s.one("lifting").outcome == Outcome::does_not_apply);
  CHECK(s.one("lifting").says.english() == "Not lifted by hand, beyond 35 lb: ramp.");
  s.kit.cases[0].weighed.reset();
  CHECK(s.one("lifting").outcome == Outcome::not_checked);
  CHECK(s.one("lifting").says.english() ==
        "Its mass, or that of a part of it, is not given: weigh it before anybody lifts it.");
}

TEST_CASE("A show with fewer people than a lift asks for is told, once") {
  SmallShow s;
  s.kit.cases[0].weighed = given(45 * pound);
  s.kit.cases[0].grips = 2;
  const auto told = [&] {
    std::string all;
    for (const Finding& f : s.check().list)
      if (name(f.rule) == std::string("lifting") && f.says.english().find("the show has") != std::string::npos)
        all += std::string(name(f.outcome)) + ": " + f.says.english() + " " + assumed(f) + "\n";
    return all;
  };
  s.show.crew.reset();
  CHECK(told().empty());
  s.show.crew = given(1);
  s.show.volunteers.reset();
  const std::string code = s.one("lifting").called.english();
  CHECK(told() == "over limit: " + code +
                      " must be lifted by 2 or more people; the show has 1. volunteers not stated: none counted\n");
  s.show.volunteers = given(0);
  CHECK(told() == "over limit: " + code + " must be lifted by 2 or more people; the show has 1. \n");
  s.show.volunteers = given(1);
  CHECK(told().empty());
}

TEST_CASE("A house limit above the published screen is said to be so") {
  SmallShow s;
  s.kit.house.lift.one = given(50 * pound);
  s.kit.cases[0].weighed = given(45 * pound);
  CHECK(s.one("lifting").outcome == Outcome::within);
  CHECK(s.one("lifting").sources == std::vector{said("house limit")});
  CHECK(assumed(s.one("lifting")) == "house limit of 50 lb for one person, above the published screen of 35 lb");
  s.kit.house.lift.one = given(34 * pound);
  s.kit.cases[0].weighed = given(30 * pound);
  CHECK(s.one("lifting").assumptions.empty());
}

TEST_CASE("More mass never needs fewer people") {
  for (int grips = 0; grips <= 4; ++grips) {
    int before = 1;
    for (double kg = 1; kg < 60; kg += 0.5) {
      const int people = handling(kg * kilogram, grips, crew()).people;
      const int effective = people == 0 ? 99 : people;
      CHECK(effective >= before);
      before = effective;
    }
  }
}

TEST_CASE("The lift into the vehicle has an index only where everything is given") {
  Case box;
  HouseLift lift = crew();
  UnitMass mass;
  mass.mass = 20 * kilogram;
  mass.known = true;
  CHECK_FALSE(loading_lift(box, mass, lift));
  box.grip_height = given(30 * centimetre);
  box.size = given(Size{60 * centimetre, 40 * centimetre, 50 * centimetre});
  lift.deck = given(80 * centimetre);
  const auto figures = loading_lift(box, mass, lift);
  REQUIRE(figures);
  REQUIRE(figures->index);
  // origin: 23 x 25/40 x (1 - .003 x 45) x (.82 + 4.5/80) x 1 x 1 x .95, by hand
  CHECK(figures->limit / kilogram == Approx(23 * 0.625 * 0.865 * 0.87625 * 0.95));
  CHECK(*figures->index == Approx(20 / (figures->limit / kilogram)));
  CHECK(*handling_of(box, mass, lift).loading_index == Approx(*figures->index));
  box.size = given(Size{130 * centimetre, 120 * centimetre, 50 * centimetre});
  CHECK_FALSE(handling_of(box, mass, lift).loading_index);
  CHECK(handling_of(box, mass, lift).not_liftable);
}
