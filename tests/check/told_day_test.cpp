// SPDX-License-Identifier: MIT
// Every sentence of the rules about the day and the site, each where it is due and not where it is not.
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
std::vector<std::string> measures(const Finding& f) {
  std::vector<std::string> out;
  for (const Sentence& one : std::get<WeatherDetail>(f.detail).measures) out.push_back(one.english());
  return out;
}
std::string band(const Finding& f) { return std::get<WeatherDetail>(f.detail).band.english(); }
SmallShow indoors() {
  SmallShow s;
  s.show.setting = given<std::string>("indoor");
  return s;
}
}  // namespace

TEST_CASE("Heat says what it asks of people, more of it the hotter it is") {
  const std::string from =
      "\nfrom: NWS SR 90-23; OSHA proposed rule of 2024\nmind: A forecast is not a reading on site. "
      "Heavy clothes and heavy work are hotter than this.";
  CHECK(whole(day(67, 50).one("heat")) == "does not apply: Too cool for a heat index." + from);
  CHECK(whole(indoors().one("heat")) == "does not apply: Indoors: the forecast is not the room's." + from);
  // The index of 68 F in the shade is below that in the sun by 15 F; the first measures begin at 80 F.
  CHECK(day(68, 0).one("heat").says.english() == "Feels like 67 °F in the shade, up to 82 °F in full sun: caution.");
  CHECK(measures(day(68, 50).one("heat")) ==
        std::vector<std::string>{"Water within reach: a cup of 8 oz (a quarter litre) each 20 minutes.",
                                 "Shade within reach; new people a fifth of the day first, a fifth more each day.",
                                 "Confused, stumbling or fainting: an emergency call; cool them at once."});
  CHECK(measures(day(80, 40).one("heat"))[2] == "Rest of 15 minutes in the shade each 2 hours, or more.");
  const Finding danger = day(95, 45).one("heat");
  CHECK(danger.outcome == Outcome::over);
  CHECK(danger.says.english() ==
        "Feels like 102 °F in the shade, up to 117 °F in full sun: danger. Move the work to "
        "cooler hours, or stop.");
  const Finding beyond = day(113, 10).one("heat");
  CHECK(whole(beyond) ==
        "over limit: 113 °F is beyond the heat index: extreme danger. Stop, or move the work to cooler "
        "hours." +
            from);
  CHECK(band(beyond) == "extreme danger");
  CHECK(measures(beyond).size() == 4);
  CHECK(day(112, 10).one("heat").says.english().find("beyond the heat index") == std::string::npos);
}

TEST_CASE("A WBGT reading says how much of each hour people may work") {
  const auto says = [](double celsius) {
    SmallShow s = day(80, 40);
    s.kit.house.units = UnitSystem::metric;
    s.show.forecast->wbgt = given(Temperature::celsius(celsius));
    return s.one("heat").says.english();
  };
  // Screening limits of the ACGIH for moderate work, people not used to heat, as the OSHA Technical Manual gives them:
  // 25 C all of the hour, 26 C at 50 to 75 %... ; above the last none.
  CHECK(says(25) == "WBGT reading 25 °C: people not used to heat may work moderately all of the hour.");
  CHECK(says(25.1).ends_with("at most three quarters of each hour."));
  CHECK(says(26.5).ends_with("at most half of each hour."));
  CHECK(says(28).ends_with("at most a quarter of each hour."));
  CHECK(says(31).ends_with("not at all."));
}

TEST_CASE("Cold says what it asks, and from when it is too cold to work") {
  const std::string from =
      "\nfrom: Environment Canada and NWS, wind chill, 2001\nmind: For dry skin and people who are "
      "well. Wet clothes are colder than this.";
  CHECK(whole(day(51, 50).one("cold")) == "does not apply: Too warm for a wind chill." + from);
  SmallShow inside = indoors();
  inside.show.forecast->temperature = given(Temperature::celsius(5));
  CHECK(whole(inside.one("cold")) == "does not apply: Indoors: no wind." + from);
  SmallShow s = day(32, 50);
  const std::string comfort = " Warm place, dry gloves, hot drinks; change over often.";
  s.show.forecast->gust = given(2.9 * mile_per_hour);  // the formula begins above 4.8 km/h
  CHECK(whole(s.one("cold")) ==
        "within limit: 32 °F, hardly any wind." + comfort + "\nassumed: gust taken for the mean wind" + from);
  s.show.forecast->wind = given(2 * mile_per_hour);
  CHECK(s.one("cold").assumptions.empty());
  CHECK(band(s.one("cold")) == "cold");
  CHECK(measures(s.one("cold")) ==
        std::vector<std::string>{"A warm place within reach, dry gloves, hot drinks.",
                                 "Change over often at work that stands still.",
                                 "Shivering that stops, slurred speech: an emergency call."});
  // Chart of Environment Canada: -20 C in 40 km/h feels like -34 C, frostbite in 10 to 30 minutes.
  s.kit.house.units = UnitSystem::metric;
  s.show.forecast->temperature = given(Temperature::celsius(-20));
  s.show.forecast->wind = given(40 * kilometre_per_hour);
  const Finding f = s.one("cold");
  CHECK(f.outcome == Outcome::over);
  CHECK(f.says.english() ==
        "Feels like -35 °C in the wind: " + band(f) + ". Stop work in the open, or in turns of minutes." + comfort);
  s.show.forecast->wind.reset();
  s.show.forecast->gust.reset();
  CHECK(s.one("cold").says.english() == "Not given: the wind. Ask the weather office and type it.");
}

TEST_CASE("Water says what the site has, and when no more than usual is asked") {
  const std::string from =
      "\nfrom: OSHA/NIOSH, 8 oz each 20 minutes\nmind: For crew and volunteers, not for the "
      "audience. Nobody drinks more than 48 oz (1.4 l) an hour.";
  CHECK(whole(indoors().one("water")) == "does not apply: Indoors: taps are the building's." + from);
  CHECK(whole(day(64, 50).one("water")) == "does not apply: Not warm enough to ask for more than usual." + from);
  SmallShow s = day(80, 40);
  s.show.crew = given(6);
  s.show.hours = given(5 * hour);
  s.show.site.has = {{text("drinking-water"), 1, "", {}}};
  CHECK(whole(s.one("water")) ==
        "within limit: 6 people for 5 h ask 6.0 gal, 7.5 gal better; 0.0 gal goes. The site has more.\nassumed: "
        "volunteers not stated: none counted" +
            from);
  s.show.site.has[0].from = "tap by the gate";
  CHECK(s.one("water").says.english().ends_with("The site has more: tap by the gate."));
  // Without a humidity the dampest air counts: 66 F and 15 F of sun reach the first trigger of 80 F.
  s.show.forecast->humidity.reset();
  s.show.forecast->temperature = given(Temperature::fahrenheit(69));
  CHECK(s.one("water").outcome == Outcome::within);
}

TEST_CASE("Rain counts what a tower carries and what stands at no canopy") {
  const std::string from =
      "\nfrom: common practice, no source\nmind: Wet plugs and racks: power off before anybody "
      "touches them. Rain blows in under a roof.";
  CHECK(whole(indoors().one("rain")) == "does not apply: Indoors: no rain on equipment." + from);
  SmallShow s;
  s.show.forecast->rain = given(20.0);
  Case lamp;
  lamp.code = text("LAMP");
  lamp.draws = given(300 * watt);
  s.kit.cases.push_back(lamp);
  Structure tower;
  tower.code = text("TOWER");
  tower.kind = StructureKind::light_tree;
  s.kit.structures.push_back(tower);
  Use use;
  use.structure = text("TOWER");
  use.as = text("tower");
  Carried carried;
  carried.code = text("LAMP");
  carried.count = 2;
  use.carries = {carried};
  s.show.uses.push_back(use);
  CHECK(
      whole(s.one("rain")) ==
      "over limit: Chance of rain 20 %: 3 pieces that draw power stand under no canopy; 0 covers go. Bring 3 more, or "
      "move it under a canopy.\nassumed: a canopy at a place is taken to keep dry what stands at that place" +
          from);
  CHECK(s.one("rain").called.english() == "equipment");
  s.show.forecast->rain = given(0.0);
  CHECK(s.one("rain").outcome == Outcome::within);
}

TEST_CASE("Lightning and who stops the show") {
  SmallShow s;
  s.show.site.clear = given(12 * minute);
  s.show.site.shelter = given<std::string>("the barn");
  CHECK(whole(s.one("lightning")) ==
        "within limit: Begin to clear when lightning is 18 miles away: all in shelter (the barn) before it is 8 miles "
        "away. Again 30 minutes after the last.\nassumed: a storm that moves at 50 mph (80 km/h), common practice, no "
        "source\nfrom: NWS; NCAA guideline 1.E as cited in 2016 (8 miles, 30 minutes)\nmind: Thunder is heard too late "
        "for "
        "a crowd: somebody watches a lightning service. Canopies and stages are no shelter.");
  s.kit.house.units = UnitSystem::metric;
  CHECK(s.one("lightning").says.english().starts_with("Begin to clear when lightning is 29 km away"));
  CHECK(indoors().one("lightning").says.english() == "Indoors: in shelter already.");
  CHECK(indoors().one("stop-person").says.english() == "Indoors: no stop for weather. Name one all the same.");
  s.show.stop_person = given<std::string>("Stage manager");
  CHECK(whole(s.one("stop-person")) ==
        "within limit: Stage manager may stop the show, and alone restarts it.\nassumed: no contact of that role is "
        "listed\nfrom: common practice, no source\nmind: Anyone may call a stop. Only the person named calls the "
        "restart.");
}

TEST_CASE("Noise tells levels and times as they were heard") {
  SmallShow s;
  const auto heard = [](double dba, Duration time) {
    Heard h;
    h.who = text("desk");
    h.level = given(dba * decibel_a);
    h.time = given(time);
    return h;
  };
  s.show.heard = {heard(95, 2 * hour), heard(90, 40 * minute)};
  // NIOSH: 95 dBA for 47 min 37 s, 90 dBA for 2 h 31 min; OSHA: 4 h and 8 h.
  CHECK(
      whole(s.one("noise")) ==
      "over limit: 95 dBA for 2 h, 90 dBA for 40 min: 279 % of a day's dose by NIOSH (3 dB), 59 % by OSHA (5 dB). Ear "
      "plugs and shorter turns, or turn it down.\nfrom: NIOSH 98-126; OSHA 29 CFR 1910.95 App. A\nmind: For people at "
      "work: hearing protection and shorter turns. The audience is the licence's matter.");
  s.show.heard = {heard(116, 1 * minute)};
  CHECK(s.one("noise").says.english() ==
        "A level above 115 dBA, the ceiling: nobody stays there, protected or not. OSHA dose 8 %.");
  s.show.heard = {heard(80, 1 * hour), heard(80, 1 * hour)};
  s.show.heard[1].time.reset();
  CHECK(s.one("noise").says.english() == "Not given: the hours of a level. Read a level meter and type it.");
}

TEST_CASE("Ways: each sentence of a step, a ramp and a width") {
  SmallShow s;
  Passage way;
  way.what = text("stage door");
  s.show.ways = {way};
  const auto says = [&] { return s.one("ways").says.english(); };
  CHECK(whole(s.one("ways")) ==
        "not checked: Not given: its rise. Measure it and type it, 0 where it is level.\nfrom: ADA Standards 303, "
        "405\nmind: Walk every route with a wheel and in the dark. The venue and the fire marshal decide.");
  s.show.ways[0].width = given(40 * inch);
  CHECK(says() == "3 ft 4 in wide, 3 ft at least. Not given: its rise. Measure it and type it, 0 where it is level.");
  s.show.ways[0].rise = given(6 * inch);
  s.show.ways[0].ramp = given(6 * foot);
  CHECK(says() == "Ramp of 6 ft for 6 in: 6 ft at 1:12 is asked, with landings 16 ft.");
  s.show.ways[0].ramp = given(5.9 * foot);
  CHECK(says() == "Ramp of 5 ft 10 in for 6 in: 6 ft at 1:12 is asked, with landings 16 ft: lay a longer one.");
  s.show.ways[0].ramp = given(6 * foot);
  s.show.ways[0].width.reset();
  CHECK(says().ends_with(" Not given: its width. Measure it: 3 ft at least."));
  CHECK(s.one("ways").outcome == Outcome::not_checked);
  s.kit.house.units = UnitSystem::metric;
  s.show.ways[0].rise = given(7 * millimetre);
  s.show.ways[0].ramp.reset();
  CHECK(says() == "7 mm: its edge is bevelled 1:2.");
}

TEST_CASE("Crossed cables: flat, bevelled, or a ramp") {
  SmallShow s;
  Run run;
  Crossing feet;
  feet.crossed_by = given<std::string>("feet");
  feet.rise = given(0.2 * inch);
  run.over = {feet};
  s.show.runs = {run};
  CHECK(s.one("ways").called.english() == "cables crossed on foot");
  CHECK(s.one("ways").says.english() == "The highest of 1 stands 0.25 in high.");
  CHECK(s.one("ways").outcome == Outcome::within);
  s.show.runs[0].over[0].rise = given(1 * inch);
  CHECK(s.one("ways").says.english() ==
        "The highest stands 1 in high, above 0.5 in: lay a ramp of 1 ft at 1:12, or lead people another way.");
}

TEST_CASE("Extinguishers: how many, and how far they are") {
  SmallShow s;
  const std::string from =
      "\nfrom: City of Fort Worth (Texas), tent permit page, year not seen; 29 CFR 1910.157(d)\nmind: Within 50 ft of "
      "one where fuel "
      "is. The fire marshal's list wins.";
  CHECK(whole(s.one("extinguishers")) ==
        "not checked: Not given: an extinguisher: nothing in the kit serves as \"extinguisher\" and the site has none. "
        "Ask "
        "the venue or bring one, and type it." +
            from);
  s.kit.cases[0].serves = {text("extinguisher")};
  s.kit.cases[0].count = 1;
  s.show.site.extinguisher_walk = given(70 * foot);
  CHECK(whole(s.one("extinguishers")) ==
        "within limit: 1 for 100.0 ft² of canopies: 1 asked. The longest walk to one is 70 ft, 75 ft at most." + from);
  s.show.site.extinguisher_walk = given(76 * foot);
  s.kit.structures[0].plan_length = given(301 * foot);
  CHECK(
      s.one("extinguishers").says.english() ==
      "1 for 3010.0 ft² of canopies: 2 asked: bring 1 more. The longest walk to one is 76 ft, 75 ft at most: move one "
      "nearer, or bring another.");
  s.kit.structures[0].plan_width.reset();
  CHECK(s.one("extinguishers").says.english() == "Not given: the plan of a canopy. Measure it and type it in the kit.");
  s.show.setting = given<std::string>("indoor");
  CHECK(s.one("extinguishers").says.english() == "Indoors: the building's own. Know where they hang.");
}

TEST_CASE("Inspection without the show's date") {
  SmallShow s;
  s.kit.cases[0].inspect_by = Sourced<Date>{{2027, 9, 18}, {}};
  CHECK(whole(s.one("inspection")) ==
        "not checked: Not given: the show's date. Type it under [show].\nfrom: the date in the kit\nmind: A date is no "
        "inspection: look at it as well.");
}

TEST_CASE("Lifting: how many people, what the house allows beyond what is published") {
  SmallShow s;
  s.kit.house.lift.people = People::crew;
  const auto says = [&](double pounds, int grips) {
    s.kit.cases[0].weighed = given(pounds * pound);
    s.kit.cases[0].grips = grips;
    return s.one("lifting").says.english();
  };
  CHECK(
      whole(s.one("lifting")) ==
      "within limit: One person lifts it: limit 55 lb.\nfrom: HSE INDG143, L23\nmind: A screen for an easy lift, not a "
      "legal maximum: wide, low, wet, steps or a turn need a new look.");
  CHECK(says(60, 2) == "Two people lift it: limit 73 lb.");    // 2/3 of 50 kg
  CHECK(says(80, 3) == "Three people lift it: limit 82 lb.");  // 1/2 of 75 kg
  CHECK(says(200, 4) ==
        "Beyond 82 lb by hand, and it has neither wheels nor an aid: carry it in parts, or bring a ramp "
        "or a lift.");
  s.kit.cases[0].wheels = true;
  CHECK(says(200, 4) == "Not lifted by hand, beyond 82 lb: lifting aid.");
  s.kit.cases[0].wheels = false;
  s.kit.house.lift.three = given(100 * pound);
  s.kit.house.lift.four = given(220 * pound);
  CHECK(says(90, 3) == "Three people lift it: limit 100 lb.");
  CHECK(assumed(s.one("lifting")) == "house limit of 100 lb for three people, above the published screen of 82 lb");
  CHECK(says(200, 4) == "Four people lift it: limit 220 lb.");
  CHECK(assumed(s.one("lifting")) == "house limit of 220 lb for four people; nothing is published for that many");
  s.kit.cases[0].weighed.reset();
  Item part;
  part.code = text("PART");
  part.mass = given(10 * pound);
  s.kit.items.push_back(part);
  Content holds;
  holds.item = text("PART");
  holds.count = 2;
  s.kit.cases[0].holds = {holds};
  s.kit.cases[0].empty = given(5 * pound);
  CHECK(assumed(s.one("lifting")) == "mass added up, not weighed");
}
