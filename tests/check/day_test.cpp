// SPDX-License-Identifier: MIT
// The day: heat, cold, water, rain, lightning, who may stop it, and what the crew hears.
#include <catch2/catch.hpp>

#include "small_show.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

namespace {
SmallShow day(double fahrenheit, double humidity) {
  SmallShow s;
  s.show.forecast->temperature = given(Temperature::fahrenheit(fahrenheit));
  s.show.forecast->humidity = given(humidity);
  return s;
}
}  // namespace

TEST_CASE("An outdoor show that states nothing is told so, one row a subject") {
  SmallShow s;
  s.show.forecast.reset();
  CHECK(s.one("heat").says.english() ==
        "Not given: the temperature, so neither heat, cold nor water was worked out. Ask the "
        "weather office and type it.");
  CHECK_FALSE(s.told("cold"));
  CHECK_FALSE(s.told("water"));
  CHECK(s.one("rain").says.english() ==
        "Not given: the chance of rain. Ask the weather office and type it; until then cover everything.");
  CHECK(s.one("lightning").says.english() ==
        "Not given: how long it takes to clear the site, the shelter. Walk it, agree it with the site, and type it; "
        "until then stop at the first thunder.");
  CHECK(s.one("stop-person").says.english() ==
        "Not given: who may stop the show (stop_person). Name somebody before doors.");
  for (const char* rule : {"heat", "rain", "lightning", "stop-person"})
    CHECK(s.one(rule).outcome == Outcome::not_checked);
}

TEST_CASE("Indoors none of it applies, by the typed line") {
  SmallShow s;
  SourceFile file{"show.toml", "setting = \"indoor\""};
  s.show.setting = Sourced<std::string>{"indoor", Place{&file, 1, 1, 1}};
  s.show.forecast.reset();
  for (const char* rule : {"heat", "water", "cold", "rain", "lightning", "stop-person"}) {
    INFO(rule);
    CHECK(s.one(rule).outcome == Outcome::does_not_apply);
    CHECK(s.one(rule).place.words() == "show.toml:1:1");
  }
}

TEST_CASE("Heat: the index in full sun against the danger band") {
  CHECK(day(60, 50).one("heat").outcome == Outcome::does_not_apply);
  const Finding warm = day(80, 40).one("heat");
  CHECK(warm.outcome == Outcome::within);
  CHECK(warm.says.english() == "Feels like 80 °F in the shade, up to 95 °F in full sun: extreme caution.");
  CHECK(std::get<WeatherDetail>(warm.detail).measures.size() == 4);
  CHECK(day(90, 50).one("heat").outcome == Outcome::over);  // 95 in the shade
  CHECK(day(115, 10).one("heat").outcome == Outcome::over);
  SmallShow s = day(80, 40);
  s.show.forecast->humidity.reset();
  CHECK(s.one("heat").says.english() == "Not given: the humidity. Ask the weather office and type it.");
}

TEST_CASE("A WBGT reading stands above the forecast") {
  SmallShow s = day(80, 40);
  s.show.forecast->wbgt = given(Temperature::celsius(25));
  CHECK(s.one("heat").outcome == Outcome::within);
  s.show.forecast->wbgt = given(Temperature::celsius(26.5));
  CHECK(s.one("heat").outcome == Outcome::over);
  CHECK(s.one("heat").says.english() ==
        "WBGT reading 80 °F: people not used to heat may work moderately at most half of each hour.");
}

TEST_CASE("Hotter is never milder") {
  int worst = 0;
  for (double f = 68; f < 125; f += 1) {
    const int now = day(f, 50).one("heat").outcome == Outcome::over;
    CHECK(now >= worst);
    worst = now;
  }
}

TEST_CASE("Cold: wind chill by the mean wind, or by the gust") {
  CHECK(day(60, 50).one("cold").outcome == Outcome::does_not_apply);
  SmallShow s = day(40, 50);
  s.show.forecast->wind = given(15 * mile_per_hour);
  CHECK(s.one("cold").outcome == Outcome::within);
  CHECK(s.one("cold").says.english().rfind("Feels like 31 °F in the wind.", 0) == 0);
  s.show.forecast->temperature = given(Temperature::fahrenheit(0));
  s.show.forecast->wind = given(30 * mile_per_hour);
  CHECK(s.one("heat").outcome == Outcome::does_not_apply);
  CHECK(s.one("cold").outcome == Outcome::over);  // -26 F; frostbite begins at -27 C, -16.6 F
}

TEST_CASE("Water: what goes, against a cup each 20 minutes") {
  SmallShow s = day(80, 40);
  CHECK(s.one("water").says.english() == "Not given: crew and hours. Type them under [show].");
  s.show.crew = given(6);
  s.show.volunteers = given(4);
  s.show.hours = given(5 * hour);
  CHECK(s.one("water").outcome == Outcome::over);
  CHECK(s.one("water").says.english() ==
        "10 people for 5 h ask 9.5 gal, 12.5 gal better; 0.0 gal goes. Bring 9.5 gal more, or "
        "find a tap.");
  Item drink;
  drink.code = text("DRINK");
  drink.serves = {text("drinking-water")};
  drink.each_volume = given(5 * us_gallon);
  s.kit.items.push_back(drink);
  Case jug;
  jug.code = text("JUG");
  jug.count = 2;
  Content holds;
  holds.item = text("DRINK");
  holds.count = 1;
  jug.holds = {holds};
  s.kit.cases.push_back(jug);
  CHECK(s.one("water").outcome == Outcome::within);
  s.show.volunteers = given(5);
  CHECK(s.one("water").outcome == Outcome::over);
  SiteHas jug_of_site{text("drinking-water"), 0, "", {}};
  jug_of_site.volume = given(3 * us_gallon);
  s.show.site.has = {jug_of_site, jug_of_site};
  CHECK(s.one("water").outcome == Outcome::within);
  CHECK(s.one("water").says.english().find("6.0 gal of it is the site's.") != std::string::npos);
  s.show.site.has = {{text("drinking-water"), 1, "a tap", {}}};
  CHECK(s.one("water").outcome == Outcome::within);
}

TEST_CASE("Rain: covers for what draws power under no canopy") {
  SmallShow s = day(70, 40);
  s.show.forecast->rain = given(30.0);
  CHECK(s.one("rain").outcome == Outcome::within);
  Case amp;
  amp.code = text("AMP");
  amp.draws = given(900 * watt);
  s.kit.cases.push_back(amp);
  CHECK(s.one("rain").outcome == Outcome::over);
  CHECK(s.one("rain").says.english() ==
        "Chance of rain 30 %: 1 piece that draws power stands under no canopy; 0 covers go. Bring 1 more, or "
        "move it under a canopy.");
  Case cover;
  cover.code = text("COVER");
  cover.serves = {text("rain-cover")};
  s.kit.cases.push_back(cover);
  CHECK(s.one("rain").outcome == Outcome::within);
}

TEST_CASE("Lightning: clearing begins early enough for all to be in shelter") {
  SmallShow s;
  s.show.site.clear = given(12 * minute);
  s.show.site.shelter = given<std::string>("the barn");
  CHECK(s.one("lightning").says.english() ==
        "Begin to clear when lightning is 18 miles away: all in shelter (the barn) before it is 8 miles "
        "away. Again "
        "30 minutes after the last.");
  s.show.forecast->storm = given(25 * mile_per_hour);
  const auto d = std::get<LightningDetail>(s.one("lightning").detail);
  CHECK(*d.clear_from / mile == Approx(13));
  CHECK(s.one("lightning").assumptions.empty());
}

TEST_CASE("Somebody by role may stop the show") {
  SmallShow s;
  s.show.stop_person = given<std::string>("Stage manager");
  CHECK(s.one("stop-person").outcome == Outcome::within);
  CHECK(assumed(s.one("stop-person")) == "no contact of that role is listed");
  s.show.site.contacts = {{text("Stage manager"), text("Rowan"), text("555-0144")}};
  CHECK(s.one("stop-person").assumptions.empty());
}

TEST_CASE("Noise: all that one person hears in a day, by both exchange rates") {
  SmallShow s;
  CHECK(s.one("noise").outcome == Outcome::does_not_apply);
  CHECK(s.one("noise").says.english() == "No mix is listed, so no speaker is said to be near anybody.");
  s.show.mixes.emplace_back();
  CHECK(s.one("noise").outcome == Outcome::not_checked);
  CHECK(s.one("noise").says.english() ==
        "Not given: what the crew hears. Read a level meter at the sound check and type level and hours under "
        "[[noise]]; until then ear plugs for all.");
  const auto heard = [](double dba, double hours) {
    Heard h;
    h.who = text("desk");
    h.level = given(dba * decibel_a);
    h.time = given(hours * hour);
    return h;
  };
  s.show.heard = {heard(95, 2), heard(90, 4), heard(100, 1)};
  CHECK(s.one("noise").outcome == Outcome::over);
  CHECK(s.one("noise").says.english().find("150 % by OSHA") != std::string::npos);  // as the published-rows test
  s.show.heard = {heard(85, 8)};
  CHECK(s.one("noise").outcome == Outcome::within);
  s.show.heard.push_back(heard(116, 0.01));
  CHECK(s.one("noise").outcome == Outcome::over);
  s.show.heard = {heard(80, 2), heard(80, 2)};
  s.show.heard[1].level.reset();
  CHECK(s.one("noise").says.english() == "Not given: a level. Read a level meter and type it.");
}
