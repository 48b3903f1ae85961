// SPDX-License-Identifier: MIT
// Canopies: required ballast, down level, sliding, and everything that is said when something is missing.
#include <catch2/catch.hpp>

#include "check/meter.h"
#include "small_show.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

TEST_CASE("Enough ballast is within, with the level at which it must be down") {
  SmallShow s;
  s.bags_a_leg = 3;
  const Finding f = s.one("canopy-ballast");
  CHECK(f.outcome == Outcome::within);
  CHECK(f.says.english() == "Each leg has the 47 lb that the forecast gust of 20 mph asks. Down at 26 mph gust.");
  CHECK(assumed(f) ==
        "four slopes read as two slopes; factors 0.9 and 1.5; minutes and people to bring it down not given");
  const CanopyDetail d = s.canopy();
  CHECK(d.legs.size() == 4);
  CHECK(d.legs[0].leg == "NW");
  CHECK(d.legs[0].stands.english() == "3 x BAG");
  CHECK(d.legs[0].more == 0);
  CHECK(d.improvement.english() == "one more BAG a leg: down at 30 mph");
}

TEST_CASE("Too little ballast is over, and says how many more") {
  SmallShow s;
  s.bags_a_leg = 1;
  const Finding f = s.one("canopy-ballast");
  CHECK(f.outcome == Outcome::over);
  CHECK(f.says.english() ==
        "Each leg needs 47 lb at the forecast gust of 20 mph; the least has 30 lb: add 1 BAG at each leg, or leave "
        "it down. Down at 16 mph gust.");
  CHECK(s.canopy().legs[2].more == 1);
  CHECK(s.canopy().legs[2].more_of == "BAG");
}

TEST_CASE("The lightest leg governs") {
  SmallShow s;
  s.bags_a_leg = 3;
  const Speed full = *s.canopy().down_at;
  s.kit.changes.push_back({text("BAG-4"), {}, given(5 * pound), {}, {}});
  CHECK(*s.canopy().down_at < full);
}

TEST_CASE("No ballast at all: over, and the weights that serve are named") {
  SmallShow s;
  s.kit.cases[0].serves = {text("ballast")};
  const Finding f = s.one("canopy-ballast");
  CHECK(f.outcome == Outcome::over);
  CHECK(s.canopy().legs[0].stands.empty());
  CHECK(s.canopy().legs[0].more == 2);
  CHECK(s.canopy().legs[0].more_of == "BAG");
}

TEST_CASE("No forecast gust: not checked, but still the level at which it must be down") {
  SmallShow s;
  s.bags_a_leg = 3;
  s.show.forecast.reset();
  const Finding f = s.one("canopy-ballast");
  CHECK(f.outcome == Outcome::not_checked);
  CHECK(f.says.english() ==
        "No forecast gust, so the ballast asked was not worked out: ask the weather office. Down at 26 mph gust.");
  CHECK(s.canopy().down_at);
  CHECK_FALSE(s.canopy().legs[0].required_known);
}

TEST_CASE("Indoors no rule of wind applies, and the typed line is named") {
  SmallShow s;
  SourceFile file{"show.toml", "setting = \"indoor\""};
  s.show.setting = Sourced<std::string>{"indoor", Place{&file, 1, 1, 1}};
  for (const char* rule : {"canopy-ballast", "canopy-sliding"}) {
    const Finding f = s.one(rule);
    CHECK(f.outcome == Outcome::does_not_apply);
    CHECK(f.place.words() == "show.toml:1:1");
  }
}

TEST_CASE("The maker's limit is never exceeded, and is asked for where no table covers the roof") {
  SmallShow s;
  s.bags_a_leg = 5;
  s.kit.structures[0].maker_gust = given(25 * mile_per_hour);
  CHECK(*s.canopy().down_at / mile_per_hour == Approx(25));
  CHECK(s.canopy().improvement.english() == "more ballast does not help: the maker's limit governs");
  s.forecast(26 * mile_per_hour);
  CHECK(s.one("canopy-ballast").outcome == Outcome::over);
  CHECK(s.one("canopy-ballast").says.english() ==
        "The forecast gust of 26 mph is above the maker's limit of 25 mph: leave it down, no ballast cures that.");
  s.kit.structures[0].maker_gust.reset();
  CHECK(s.one("canopy-ballast").outcome == Outcome::not_checked);
  CHECK(s.one("canopy-ballast").says.english() ==
        "No table covers this roof and the maker's gust limit is not given: ask the maker; until then it stays "
        "down.");
  s.kit.structures[0].roof = Roof::two_slope;
  CHECK(s.one("canopy-ballast").outcome == Outcome::within);
}

TEST_CASE("What is not stated is taken on the safe side and said") {
  SmallShow s;
  s.bags_a_leg = 3;
  const Speed half = *s.canopy().down_at;
  s.show.uses[0].under = Under::not_stated;
  CHECK(*s.canopy().down_at < half);
  CHECK(assumed(s.one("canopy-ballast")).find("what is under the roof is not stated: full blockage") !=
        std::string::npos);
  s.kit.structures[0].peak.reset();
  CHECK(assumed(s.one("canopy-ballast")).find("pitch not stated: the largest of the table") != std::string::npos);
  s.kit.structures[0].plan_length.reset();
  CHECK(s.one("canopy-ballast").says.english() == "Not given: plan. Measure it and type it; until then it stays down.");
  CHECK(s.one("canopy-ballast").outcome == Outcome::not_checked);
}

TEST_CASE("A wall raises blockage and tilts: the level falls, and taking it down is offered") {
  SmallShow s;
  s.bags_a_leg = 3;
  const Speed open = *s.canopy().down_at;
  s.show.uses[0].walls = {text("N")};
  CHECK(*s.canopy().down_at < open);
  CHECK(s.canopy().improvement.english().find("walls off: down at 26 mph") != std::string::npos);
}

TEST_CASE("Sliding: checked on known ground, not checked on grass") {
  SmallShow s;
  s.bags_a_leg = 3;
  CHECK(s.one("canopy-sliding").says.english() ==
        "Not given: what it stands on. Type ground for the site or for the use.");
  s.show.site.ground = given<std::string>("grass");
  CHECK(s.one("canopy-sliding").outcome == Outcome::not_checked);
  CHECK(s.one("canopy-sliding").says.english() ==
        "Sliding: no friction is published for grass, and ballast alone is no cure. Stake and guy it, ask "
        "the maker, or test a loaded foot (house.friction).");
  const Speed before = *s.canopy().down_at;
  s.show.site.ground = given<std::string>("asphalt");
  s.forecast(25 * mile_per_hour);
  const Finding f = s.one("canopy-sliding");
  CHECK(f.outcome == Outcome::over);
  CHECK(std::get<Speed>(f.limit) / mile_per_hour == Approx(22.9).margin(0.05));
  CHECK(*s.canopy().down_at < before);
  CHECK(assumed(s.one("canopy-ballast")).find("the down level comes from sliding") != std::string::npos);
}

TEST_CASE("More gust never needs less ballast; more ballast never lowers the gust") {
  for (Roof roof : {Roof::flat, Roof::single_slope, Roof::two_slope, Roof::four_slope})
    for (int walls = 0; walls < 3; ++walls) {
      SmallShow s;
      s.kit.structures[0].roof = roof;
      s.show.uses[0].walls.assign(static_cast<std::size_t>(walls), text("N"));
      s.show.site.ground = given<std::string>("asphalt");
      Speed level;
      for (int bags = 0; bags <= 5; ++bags) {
        s.bags_a_leg = bags;
        CHECK(*s.canopy().down_at >= level);
        level = *s.canopy().down_at;
      }
      Mass needed;
      for (double mph = 5; mph < 40; mph += 1) {
        s.forecast(mph * mile_per_hour);
        CHECK(s.canopy().legs[0].required >= needed);
        needed = s.canopy().legs[0].required;
      }
    }
}

TEST_CASE("At the down level the ballast there is enough: rounding never favours danger") {
  for (const char* meter : {"mph", "km/h", "m/s", "knots"})
    for (int bags = 1; bags <= 5; ++bags) {
      SmallShow s;
      s.kit.house.meter = meter;
      s.bags_a_leg = bags;
      s.forecast(*s.canopy().down_at);
      INFO(meter << " " << bags);
      CHECK(s.one("canopy-ballast").outcome == Outcome::within);
      CHECK(s.canopy().legs[0].more == 0);
    }
}

TEST_CASE("The weights said to be lacking are enough once they stand there") {
  SmallShow s;
  s.bags_a_leg = 1;
  for (double mph = 10; mph <= 24; mph += 1) {
    s.bags_a_leg = 1;
    s.forecast(mph * mile_per_hour);
    s.bags_a_leg += s.canopy().legs[0].more;
    CHECK(s.one("canopy-ballast").outcome == Outcome::within);
  }
}

TEST_CASE("The same show in metric and US units has the same outcomes") {
  for (int bags = 0; bags <= 4; ++bags)
    for (double mph = 8; mph < 36; mph += 3) {
      SmallShow us;
      us.bags_a_leg = bags;
      us.forecast(mph * mile_per_hour);
      SmallShow metric = us;
      metric.kit.house.units = UnitSystem::metric;
      metric.kit.house.meter = "m/s";
      metric.kit.cases[0].weighed = given(30 * 0.45359237 * kilogram);
      metric.forecast(mph * 0.44704 * metre_per_second);
      CHECK(us.one("canopy-ballast").outcome == metric.one("canopy-ballast").outcome);
      CHECK(us.canopy().legs[0].more == metric.canopy().legs[0].more);
    }
}

TEST_CASE("The curve falls through 1 at the gust that the ballast holds") {
  SmallShow s;
  s.bags_a_leg = 3;
  const CanopyDetail d = s.canopy();
  REQUIRE(d.curve.size() >= 39);  // 1.5 x 26 mph
  for (const CurvePoint& p : d.curve) CHECK((p.margin >= 1) == (p.gust <= *d.down_at * (1 + 1e-9)));
}

TEST_CASE("The wind card: ready and start at 60 and 80 per cent of down, floored in the meter's unit") {
  SmallShow s;
  s.bags_a_leg = 3;
  s.kit.structures[0].strike_minutes = given(6 * minute);
  s.kit.structures[0].strike_people = given(4);
  WindCard card = s.canopy().card;
  CHECK(card.meter == "mph");
  CHECK(*card.down / mile_per_hour == Approx(26));
  CHECK(*card.start / mile_per_hour == Approx(20));  // 20.8
  CHECK(*card.ready / mile_per_hour == Approx(15));  // 15.6
  CHECK(card.governs.english() == "ballast");
  CHECK(card.maker_known);
  CHECK_FALSE(card.sliding_known);
  CHECK_FALSE(card.walls_off);
  CHECK(*card.strike / minute == Approx(6));
  CHECK(*card.people == 4);
  s.show.uses[0].walls = {text("N")};
  card = s.canopy().card;
  CHECK(*card.walls_off / mile_per_hour == Approx(26));
  CHECK(*card.down < *card.walls_off);
  s.show.uses[0].walls.clear();
  s.show.site.ground = given<std::string>("asphalt");
  card = s.canopy().card;
  CHECK(card.governs.english() == "sliding");
  CHECK(card.sliding_known);
  s.kit.structures[0].maker_gust = given(12 * mile_per_hour);
  CHECK(s.canopy().card.governs.english() == "maker's limit");
  s.kit.structures[0].maker_gust.reset();
  CHECK_FALSE(s.canopy().card.down);  // four slopes without a maker's limit: no level, but who and how long
  CHECK(*s.canopy().card.people == 4);
}

TEST_CASE("Stakes count at half of what the house pulled, only in that ground") {
  SmallShow s;
  s.bags_a_leg = 1;
  const Speed bags = *s.canopy().down_at;
  BallastLine stakes;
  stakes.each_leg = true;
  s.show.uses[0].stakes = {stakes};
  CHECK(*s.canopy().down_at == bags);
  CHECK(assumed(s.one("canopy-ballast")).find("stakes not counted: no tested hold for this ground") !=
        std::string::npos);
  s.kit.house.stake = TestedStake{60 * pound, "grass", "lower meadow, 2027-05-02", {}};
  CHECK(*s.canopy().down_at == bags);  // the ground is not stated
  s.show.site.ground = given<std::string>("grass");
  CHECK(*s.canopy().down_at > bags);
  const CanopyDetail d = s.canopy();
  CHECK(d.legs[0].stands.english() == "1 x BAG, 1 x stake");
  CHECK(d.legs[0].staked / pound == Approx(30));
  CHECK(d.legs[0].actual / pound == Approx(60));
  CHECK(assumed(s.one("canopy-ballast")).find("stakes at half their tested hold (lower meadow, 2027-05-02)") !=
        std::string::npos);
  s.show.uses[0].stakes.clear();
  s.bags_a_leg = 2;
  CHECK(*s.canopy().down_at == *d.down_at);  // as much as a second bag of the same mass
}

TEST_CASE("A banner on a canopy adds its area; its area missing, nothing is worked out") {
  SmallShow s;
  s.bags_a_leg = 3;
  const Speed bare = *s.canopy().down_at;
  Hung banner;
  banner.what = text("banner");
  s.show.uses[0].hung = {banner};
  CHECK(s.one("canopy-ballast").says.english() ==
        "Not given: the area of banner. Measure it and type it; until then it stays down.");
  s.show.uses[0].hung[0].area = given(12 * square_foot);
  CHECK(*s.canopy().down_at < bare);
  CHECK(s.canopy().improvement.english().find("what hangs on it off: down at 26 mph") != std::string::npos);
  CHECK(s.one("tower-load").says.english() ==
        "Not given: its rated load. Ask the maker; until then nothing hangs on it.");
}

TEST_CASE("One leg short: where and how many, and what is free") {
  SmallShow s;
  s.bags_a_leg = 2;
  s.kit.cases[0].count = 8;
  s.kit.changes.push_back({text("BAG-3"), {}, given(10 * pound), {}, {}});
  CHECK(s.one("canopy-ballast")
            .says.english()
            .find("the least has 40 lb: add 1 BAG at NE (none free), or leave it down.") != std::string::npos);
}

TEST_CASE("A house's own friction counts at half, only on that ground") {
  SmallShow s;
  s.bags_a_leg = 3;
  s.show.site.ground = given<std::string>("grass");
  s.kit.house.friction = {{0.4, "grass", "lower meadow, wet, 2027-05-02", {}}};
  const Finding f = s.one("canopy-sliding");
  CHECK(f.outcome == Outcome::within);
  CHECK(assumed(f) ==
        "friction 0.2, half of what the house tested (lower meadow, wet, 2027-05-02); factors 0.9 and 1.5");
  CHECK(s.canopy().card.sliding_known);
  const Speed grass = std::get<Speed>(f.limit);
  s.show.site.ground = given<std::string>("asphalt");  // published, 0.2: the same
  CHECK(std::get<Speed>(s.one("canopy-sliding").limit) / metre_per_second == Approx(grass / metre_per_second));
  s.show.site.ground = given<std::string>("wet grass");
  CHECK(s.one("canopy-sliding").outcome == Outcome::not_checked);
}

TEST_CASE("More gust presses harder on the ground") {
  SmallShow s;
  s.bags_a_leg = 3;
  Mass before;
  for (double mph = 5; mph < 35; mph += 5) {
    s.forecast(mph * mile_per_hour);
    CHECK(*s.canopy().pressed > before);
    before = *s.canopy().pressed;
  }
  s.kit.structures[0].standing.reset();
  CHECK_FALSE(s.canopy().pressed);  // its own weight presses too
}

TEST_CASE("No friction is published for what may be wet; a house's own test stands") {
  SmallShow s;
  s.bags_a_leg = 3;
  s.show.site.ground = given<std::string>("concrete");
  s.show.forecast->rain = given(40.0);
  CHECK(s.one("canopy-sliding").outcome == Outcome::within);
  CHECK(assumed(s.one("canopy-sliding")).find("the ground is dry") != std::string::npos);
  s.show.forecast->rain = given(50.0);
  CHECK(s.one("canopy-sliding").outcome == Outcome::not_checked);
  CHECK(s.one("canopy-sliding")
            .says.english()
            .starts_with("Sliding: no friction is published for concrete that is wet,"));
  s.kit.house.friction = {{0.4, "concrete", "yard, wet, 2027-05-02", {}}};
  CHECK(s.one("canopy-sliding").outcome == Outcome::within);
}

TEST_CASE("Where a weight on a leg has no mass, nobody says how many more it wants") {
  SmallShow s;
  s.bags_a_leg = 1;
  s.forecast(30 * mile_per_hour);
  CHECK(s.canopy().legs[0].more > 0);
  s.kit.cases[0].weighed.reset();
  UnitChange weighed;
  weighed.code = text("BAG-9");
  weighed.weighed = given(30 * pound);
  s.kit.changes = {weighed};
  CHECK(s.canopy().legs[0].more == 0);
}

TEST_CASE("Levels are said in the meter's whole units, never above what holds") {
  CHECK(gust_words(10 * metre_per_second, "mph") == "22 mph");
  CHECK(gust_words(10 * metre_per_second, "km/h") == "36 km/h");
  CHECK(gust_words(10 * metre_per_second, "knots") == "19 knots");
  CHECK(gust_words(10.9 * metre_per_second, "m/s") == "10 m/s");
}
