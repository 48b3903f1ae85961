// SPDX-License-Identifier: MIT
// Every sentence of the rules about canopies, towers and what hangs on them, each where it is due.
#include <catch2/catch.hpp>

#include "small_show.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

namespace {
/// A tripod of 38 kg with a head of 0.42 m2 at 2.4 m.
SmallShow tower() {
  SmallShow s;
  s.kit.house.units = UnitSystem::metric;
  s.kit.house.meter = "m/s";
  Structure t;
  t.code = text("TOWER");
  t.kind = StructureKind::light_tree;
  t.feet = given(3);
  t.foot_radius = given(0.55 * metre);
  t.mast_height = given(2.4 * metre);
  t.head_area = given(0.42 * square_metre);
  t.standing = given(38 * kilogram);
  s.kit.structures = {t};
  s.show.uses[0].structure = text("TOWER");
  s.show.uses[0].as = text("left tower");
  s.forecast(5 * metre_per_second);
  return s;
}
Hung banner() {
  Hung hung;
  hung.what = text("banner");
  hung.area = given(0.5 * square_metre);
  hung.mass = given(2 * kilogram);
  return hung;
}
bool assumes(const Finding& f, std::string_view what) { return assumed(f).find(what) != std::string::npos; }
bool says(const Finding& f, std::string_view what) { return f.says.english().find(what) != std::string::npos; }
}  // namespace

TEST_CASE("A canopy: sources, caution, and indoors no wind") {
  SmallShow s;
  s.bags_a_leg = 3;
  const std::string from =
      "\nfrom: EN 1991-1-4 7.3; EN 1990 A1.2(A)\nmind: For the canopy alone, ballast tied tight at "
      "the foot. Maker, venue and a competent person decide.";
  s.show.setting.reset();
  CHECK(
      whole(s.one("canopy-ballast")) ==
      "within limit: Each leg has the 47 lb that the forecast gust of 20 mph asks. Down at 26 mph gust.\nassumed: "
      "setting not stated: taken as outdoors; four slopes read as two slopes; factors 0.9 and 1.5; minutes and people "
      "to bring it down not given" +
          from);
  s.show.setting = given<std::string>("indoor");
  CHECK(whole(s.one("canopy-ballast")) == "does not apply: Indoors: no wind load." + from);
}

TEST_CASE("A canopy's ballast: where it does not do, what would, and what is not counted") {
  SmallShow s;
  s.bags_a_leg = 1;
  s.kit.cases[0].count = 6;  // two are free, four legs want one more each
  CHECK(s.canopy().improvement.english() == "one more BAG a leg: down at 22 mph (4 more needed, 2 free)");
  s.kit.cases[0].count = 4;
  CHECK(s.canopy().improvement.english() == "one more BAG a leg: down at 22 mph (4 more needed, none free)");
  s.bags_a_leg = 0;  // and nothing in the kit serves as ballast
  CHECK(says(s.one("canopy-ballast"), "the least has 0 lb: add what is lacking, or leave it down."));
  s.bags_a_leg = 1;
  s.kit.changes.push_back({text("BAG-1"), {}, given(60 * pound), {}, {}});
  s.kit.cases[0].weighed.reset();
  CHECK(s.one("canopy-ballast").outcome == Outcome::not_checked);
  CHECK(s.one("canopy-ballast").says.english() ==
        "A ballast piece has no mass given: weigh it. Each leg needs 47 lb at 20 mph gust. Down at 8 mph gust.");
}

TEST_CASE("A canopy that no table covers says all that is missing for its level") {
  SmallShow s;
  s.kit.structures[0].maker_gust.reset();
  s.show.forecast.reset();
  CHECK(
      s.one("canopy-ballast").says.english() ==
      "No table covers this roof and the maker's gust limit is not given: ask the maker; until then it stays down. No "
      "forecast gust is given. A leg has no ballast.");
  CHECK(assumes(s.one("canopy-ballast"), "maker's limit not given"));
}

TEST_CASE("A canopy's ballast that is added up, stands on no leg, or is hung on it") {
  SmallShow s;
  Item sand;
  sand.code = text("SAND");
  sand.mass = given(30 * pound);
  s.kit.items.push_back(sand);
  Content holds;
  holds.item = text("SAND");
  holds.count = 1;
  s.kit.cases[0].weighed.reset();
  s.kit.cases[0].empty = given(1 * pound);
  s.kit.cases[0].holds = {holds};
  s.bags_a_leg = 2;
  s.show.uses[0].hung = {banner()};
  CHECK(assumes(s.one("canopy-ballast"), "what hangs on it adds its area; ballast added up, not weighed"));
  const Catalogue c = make_catalogue(s.kit);
  Plan plan = all_go(c);
  plan.ballast = {{0, -1, {}, 0, {}}, {0, 4, {}, 1, {}}};
  for (const Finding& f : check_all(c, s.show, plan).list)
    if (f.rule == RuleName::canopy_ballast) {
      CHECK(assumes(f, "ballast that stands on no leg is not counted"));
      CHECK(std::get<CanopyDetail>(f.detail).legs[0].actual == Mass{});
    }
}

TEST_CASE("Sliding: what is known of the ground, what it says without a forecast, and when it may slide") {
  SmallShow s;
  s.bags_a_leg = 3;
  s.show.site.ground = given<std::string>("asphalt");
  const std::string mind =
      "\nfrom: statics; EN 1990 A1.2(A)\nmind: Grass and wet ground act as a lubricant. Watch the "
      "feet: what walks must come down.";
  const std::string taken =
      "\nassumed: friction 0.2, the least listed for a steel foot (from memory, after EN 13814); "
      "the ground is dry; factors 0.9 and 1.5";
  CHECK(whole(s.one("canopy-sliding")) ==
        "within limit: It may slide from 22 mph gust; the forecast gust is 20 mph." + taken + mind);
  s.forecast(25 * mile_per_hour);
  CHECK(whole(s.one("canopy-sliding")) ==
        "over limit: It may slide from 22 mph gust; the forecast gust is 25 mph: add ballast, take walls and banners "
        "off, "
        "stake and guy it, or leave it down." +
            taken + mind);
  s.show.forecast.reset();
  CHECK(whole(s.one("canopy-sliding")) ==
        "not checked: It may slide from 22 mph gust. No forecast gust: ask the weather office." + taken + mind);
  s.kit.structures[0].eaves.reset();
  s.kit.structures[0].peak.reset();
  CHECK(whole(s.one("canopy-sliding")) ==
        "not checked: Not given: eaves and peak heights. Measure it and type it." + mind);
  s.show.setting = given<std::string>("indoor");
  CHECK(s.one("canopy-sliding").says.english() == "Indoors: no wind load.");
  CHECK(s.one("canopy-sliding").outcome == Outcome::does_not_apply);
}

TEST_CASE("A tower without wind area on a known ground cannot be pushed") {
  SmallShow s = tower();
  s.show.site.ground = given<std::string>("asphalt");
  s.kit.structures[0].mast_height = given(0 * metre);
  s.kit.structures[0].head_height = given(2 * metre);
  s.kit.structures[0].head_area = given(0 * square_metre);
  CHECK(s.one("tower-sliding").says.english() == "Nothing that is typed pushes it sideways: watch the feet.");
  CHECK(s.one("tower-sliding").outcome == Outcome::not_checked);
  CHECK(s.one("tower-tip").outcome == Outcome::not_checked);
  s.show.setting = given<std::string>("indoor");
  CHECK(s.one("tower-sliding").outcome == Outcome::does_not_apply);
}

TEST_CASE("A tower: sources, caution, what it lacks, and which weight would do better") {
  SmallShow s = tower();
  s.forecast(12 * metre_per_second);
  s.kit.cases[0].serves = {text("ballast")};
  s.kit.cases[0].count = 1;
  s.bags_a_leg = 0;
  // 1.5 x 0.625 x 144 x (1.8 x 0.42 x 2.4 + 1.2 x 0.12 x 1.2) N m over 0.275 m x 0.9 x g, less 38 kg.
  CHECK(whole(s.one("tower-tip")) ==
        "over limit: Lacks 73.0 kg in the middle of its base at the forecast gust of 12 m/s: add it, take banners off, "
        "or "
        "leave it down. Down at 7 m/s gust.\nassumed: mast taken as 50 mm wide; factors 0.9 and 1.5; maker's limit not "
        "given; minutes and people to bring it down not given\nfrom: EN 1991-1-4 7.4.3; EN 1990 A1.2(A)\nmind: Level, "
        "outriggers locked, cables tied at the foot. Maker, venue and a competent person decide.");
  CHECK(std::get<TowerDetail>(s.one("tower-tip").detail).improvement.english() ==
        "one more BAG in the middle: down at 8 m/s");
  s.kit.structures[0].maker_gust = given(11 * metre_per_second);
  CHECK(s.one("tower-tip").says.english() ==
        "The forecast gust of 12 m/s is above the maker's limit of 11 m/s: leave it down, no ballast cures that.");
  s.show.forecast.reset();
  CHECK(s.one("tower-tip").says.english() ==
        "No forecast gust, so the ballast asked was not worked out: ask the weather office. Down at 7 m/s gust.");
  s.show.setting = given<std::string>("indoor");
  CHECK(s.one("tower-tip").says.english() == "Indoors: no wind load.");
}

TEST_CASE("A weight that already stands there is not free for another tower") {
  SmallShow s = tower();
  s.kit.cases[0].count = 1;
  const Catalogue c = make_catalogue(s.kit);
  Plan plan = all_go(c);
  plan.ballast = {{0, -1, {}, 0, {}}};
  for (const Finding& f : check_all(c, s.show, plan).list)
    if (f.rule == RuleName::tower_tip)
      CHECK(std::get<TowerDetail>(f.detail).improvement.english() ==
            "one more BAG in the middle: down at 9 m/s (none free)");
}

TEST_CASE("What a tower's sums lack, each by name") {
  SmallShow s = tower();
  Structure& t = s.kit.structures[0];
  const auto lacks = [&](std::string_view what) {
    return s.one("tower-tip").outcome == Outcome::not_checked && says(s.one("tower-tip"), what);
  };
  t.feet = given(2);
  CHECK(lacks("Not given: three feet or more."));
  t.feet = given(3);
  t.mast_height.reset();
  CHECK(lacks("Not given: the head's height, head area, mast height."));
  t.head_height = given(2.4 * metre);
  CHECK(lacks("Not given: mast height."));
  CHECK(s.one("tower-sliding").says.english() == "Not given: mast height. Measure it and type it.");
  t.mast_height = given(2.4 * metre);
  Carried lamp;
  lamp.code = text("LAMP");
  s.show.uses[0].carries = {lamp};
  CHECK(lacks("Not given: the wind area of LAMP."));
  s.show.uses[0].carries[0].area = given(0.1 * square_metre);
  t.mast_height.reset();
  t.head_height.reset();
  t.head_area.reset();
  CHECK(lacks("Not given: the height of LAMP, head area, mast height."));
  s.show.uses[0].carries.clear();
  Hung hung = banner();
  s.show.uses[0].hung = {hung};
  CHECK(lacks("Not given: the height of banner, head area, mast height."));
  s.show.uses[0].hung[0].area.reset();
  CHECK(lacks("Not given: the area of banner, head area, mast height."));
}

TEST_CASE("What a tower's sums take for granted") {
  SmallShow s = tower();
  s.kit.structures[0].kind = StructureKind::tower;
  s.kit.structures[0].standing.reset();
  s.show.setting.reset();
  CHECK(assumed(s.one("tower-tip"))
            .starts_with("setting not stated: taken as outdoors; the structure's own mass is not "
                         "stated: none counted; mast taken as 100 mm wide; "));
  s.kit.cases[0].weighed.reset();
  s.kit.cases[0].count = 2;
  s.kit.changes.push_back({text("BAG-1"), {}, given(30 * pound), {}, {}});
  const Catalogue c = make_catalogue(s.kit);
  Plan plan = all_go(c);
  plan.ballast = {{0, -1, {10 * centimetre, {}}, 0, {}}, {0, -1, {}, 1, {}}};
  for (const Finding& f : check_all(c, s.show, plan).list)
    if (f.rule == RuleName::tower_tip) {
      CHECK(assumes(f, "a ballast piece without a mass is not counted"));
      CHECK(assumes(f, "ballast off the middle: the worst wind direction counts"));
    }
}

TEST_CASE("Load on a tower: each sentence, and nothing within what is not rated") {
  SmallShow s = tower();
  s.kit.structures[0].rated_load = given(15 * kilogram);
  s.kit.structures[0].rated_height = given(3 * metre);
  Carried lamp;
  lamp.code = text("LAMP");
  s.show.uses[0].carries = {lamp};
  CHECK(s.one("tower-load").says.english() == "Not given: the mass of LAMP. Weigh it and type it before it goes up.");
  s.show.uses[0].carries[0].mass = given(6 * kilogram);
  CHECK(whole(s.one("tower-load")) ==
        "within limit: Carries 6.0 kg of 15.0 kg rated.\nassumed: only what the show lists is counted; cable and "
        "fittings "
        "are not given\nfrom: maker's rating\nmind: Cable and fittings count as load. Never above people without the "
        "venue's consent.");
  s.show.uses[0].carries[0].at = given(3.01 * metre);
  CHECK(s.one("tower-load").outcome == Outcome::over);
  CHECK(s.one("tower-load").says.english() ==
        "Carries 6.0 kg of 15.0 kg rated. It stands above its rated height of 3.00 m: lower it.");
  s.show.uses[0].carries.clear();
  Hung hung = banner();
  s.show.uses[0].hung = {hung};
  s.show.uses[0].cable = given(1 * kilogram);
  CHECK(s.one("tower-load").says.english() == "Carries 3.0 kg of 15.0 kg rated.");
  CHECK(assumed(s.one("tower-load")) == "only what the show lists is counted");
  s.show.uses[0].hung[0].mass.reset();
  CHECK(says(s.one("tower-load"), "Not given: the mass of banner."));
}
