// SPDX-License-Identifier: MIT
// The site: ways, extinguishers, inspection dates; and the list of rules itself.
#include <catch2/catch.hpp>
#include <regex>
#include <set>

#include "small_show.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

namespace {
SmallShow step(Length rise) {
  SmallShow s;
  Passage way;
  way.what = text("wagon step");
  way.rise = given(rise);
  s.show.ways = {way};
  return s;
}
}  // namespace

TEST_CASE("A change in level: nothing, a bevel, or a ramp") {
  CHECK(step(0.25 * inch).one("ways").outcome == Outcome::within);
  CHECK(step(0.5 * inch).one("ways").says.english() == "0.5 in: its edge is bevelled 1:2.");
  SmallShow s = step(8 * inch);
  CHECK(s.one("ways").says.english() == "A step of 8 in and no ramp: lay one of 8 ft at 1:12, or show another way.");
  CHECK(s.one("ways").outcome == Outcome::over);
  s.show.ways[0].ramp = given(8 * foot);
  CHECK(s.one("ways").outcome == Outcome::not_checked);
  s.show.ways[0].width = given(36 * inch);
  CHECK(s.one("ways").outcome == Outcome::within);
  s.show.ways[0].width = given(35 * inch);
  CHECK(s.one("ways").outcome == Outcome::over);
  s.show.ways[0].width = given(36 * inch);
  s.show.ways[0].ramp = given(7 * foot);
  CHECK(s.one("ways").outcome == Outcome::over);
}

TEST_CASE("The width of a way counts without a ramp too") {
  SmallShow s = step(Length{});
  s.show.ways[0].width = given(35 * inch);
  CHECK(s.one("ways").outcome == Outcome::over);
  CHECK(s.one("ways").says.english() ==
        "0 in: nothing is asked. It is 2 ft 11 in wide: clear it to 3 ft, or show another way.");
  s.show.ways[0].width = given(36 * inch);
  CHECK(s.one("ways").outcome == Outcome::within);
  s.show.ways[0].rise.reset();
  CHECK(s.one("ways").outcome == Outcome::not_checked);
  s.show.ways[0].width = given(35 * inch);
  CHECK(s.one("ways").outcome == Outcome::over);
}

TEST_CASE("Cables crossed on foot are one row, judged by the highest") {
  SmallShow s;
  CHECK_FALSE(s.told("ways"));
  Run run;
  Crossing feet, wheels;
  feet.crossed_by = given<std::string>("feet");
  wheels.crossed_by = given<std::string>("wheels");
  run.over = {feet, wheels, feet};
  s.show.runs = {run};
  CHECK(s.one("ways").says.english() ==
        "Not given: how high the cable stands at 2 of 2 crossings. Measure it with its cover on and type rise.");
  s.show.runs[0].over[0].rise = given(0.25 * inch);
  CHECK(s.one("ways").outcome == Outcome::not_checked);
  s.show.runs[0].over[2].rise = given(0.5 * inch);
  CHECK(s.one("ways").says.english() == "The highest of 2 stands 0.5 in high: its edges are bevelled 1:2.");
  s.show.runs[0].over[2].rise = given(0.51 * inch);
  CHECK(s.one("ways").outcome == Outcome::over);
}

TEST_CASE("Extinguishers for canopies") {
  SmallShow s;
  CHECK(s.one("extinguishers").outcome == Outcome::not_checked);
  s.kit.cases[0].serves = {text("extinguisher")};
  CHECK(s.one("extinguishers").outcome == Outcome::within);
  s.kit.cases[0].serves.clear();
  s.show.site.has = {{text("extinguisher"), 1, "the venue", {}}};
  CHECK(s.one("extinguishers").outcome == Outcome::within);
  CHECK(assumed(s.one("extinguishers")) == "every point within 75 ft of an extinguisher: pace it out");
  s.show.site.extinguisher_walk = given(75 * foot);
  CHECK(s.one("extinguishers").outcome == Outcome::within);
  s.show.site.extinguisher_walk = given(76 * foot);
  CHECK(s.one("extinguishers").outcome == Outcome::over);
  s.show.site.extinguisher_walk.reset();
  s.kit.structures[0].plan_length = given(301 * foot);
  CHECK(s.one("extinguishers").outcome == Outcome::over);
  CHECK(s.one("extinguishers").says.english().find("2 asked: bring 1 more.") != std::string::npos);
  s.show.setting = given<std::string>("indoor");
  CHECK(s.one("extinguishers").outcome == Outcome::does_not_apply);
}

TEST_CASE("An inspection date before the show is over, on its day it is not") {
  SmallShow s;
  CHECK_FALSE(s.told("inspection"));
  s.kit.cases[0].inspect_by = Sourced<Date>{{2027, 9, 18}, {}};
  s.show.date = Sourced<Date>{{2027, 9, 18}, {}};
  CHECK(s.one("inspection").outcome == Outcome::within);
  s.show.date = Sourced<Date>{{2027, 9, 19}, {}};
  CHECK(s.one("inspection").outcome == Outcome::over);
  CHECK(s.one("inspection").says.english() ==
        "To be inspected by 2027-09-18; the show is on 2027-09-19: have it inspected, or "
        "leave it at home.");
}

TEST_CASE("What is over or not checked says what to do about it") {
  SmallShow s;
  s.show.forecast.reset();
  s.show.mixes.emplace_back();
  s.kit.cases[0].draws = given(50 * watt);
  s.kit.cases[0].weighed.reset();
  Passage way;
  way.what = text("step");
  s.show.ways = {way};
  const std::regex next(
      "(Ask|ask|Type|type|Name|Bring|bring|weigh|Weigh|Measure|Walk|Read|leave it|add|lay|take|Move|move|have it)");
  int told = 0;
  for (const bool windy : {false, true}) {
    if (windy) s.forecast(60 * mile_per_hour);
    for (const Finding& f : s.check().list)
      if (f.outcome == Outcome::over || f.outcome == Outcome::not_checked) {
        const std::string says = f.says.english();
        INFO(name(f.rule) << ": " << says);
        CHECK(std::regex_search(says, next));
        ++told;
      }
  }
  CHECK(told > 20);
}

TEST_CASE("Every finding bears the name of a rule, a source and a caution; none reassures") {
  SmallShow s;
  std::set<std::string> names;
  for (const Rule& r : rules()) names.emplace(name(r.name));
  CHECK(names.size() == rules().size());
  for (const char* setting : {"outdoor", "indoor"}) {
    s.show.setting = given<std::string>(setting);
    for (const Finding& f : s.check().list) {
      INFO(name(f.rule));
      CHECK(names.count(name(f.rule)) == 1);
      CHECK_FALSE(f.sources.empty());
      CHECK_FALSE(f.caution.empty());
      CHECK_FALSE(f.says.empty());
      for (const char* word : {"safe", "pass", " OK"}) CHECK(f.says.english().find(word) == std::string::npos);
    }
  }
}
