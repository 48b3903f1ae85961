// SPDX-License-Identifier: MIT
// Ballast sheet and weather card: the figures of the findings, and what was not given, said loudly.
#include "document/ballast_sheet.h"
#include "document/safety_walk.h"
#include "document/weather_card.h"
#include "small_house.h"

using namespace dunnage;

namespace {

constexpr auto mph = unit::mile_per_hour;

/// Two canopies: a weak one with a wall up, and a strong one.
struct WindyHouse : SmallHouse {
  WindyHouse() {
    Kit kit = small_kit();
    Structure canopy;
    canopy.code = typed("CAN");
    canopy.legs = {typed("NW"), typed("NE"), typed("SE"), typed("SW")};
    canopy.plan_length = canopy.plan_width = given(10 * unit::foot);
    kit.structures = {canopy};
    catalogue = make_catalogue(kit);
    show.setting = given<std::string>("outdoor");
    show.forecast = Forecast{};
    show.forecast->gust = given(16 * mph);
    show.uses = {use("desk canopy"), use("stage canopy")};
    show.uses[0].walls = {typed("N")};
    findings.list = {finding(0, "desk canopy", 14 * mph, Outcome::over),
                     finding(1, "stage canopy", 25 * mph, Outcome::within)};
  }
  static Use use(const std::string& name) {
    Use out;
    out.structure = typed("CAN");
    out.as = typed(name);
    return out;
  }
  static Finding finding(int use, const std::string& name, Speed down, Outcome outcome) {
    CanopyDetail detail;
    detail.down_at = detail.card.down = down;
    detail.card.start = down * 0.8;
    detail.card.ready = down * 0.6;
    detail.card.meter = "mph";
    detail.card.strike = 6 * unit::minute;
    detail.card.people = 4;
    if (outcome == Outcome::over) detail.card.walls_off = 18 * mph;
    detail.maker = 25 * mph;
    detail.forecast = 16 * mph;
    detail.improvement = said("one more BAG a leg: down at 19 mph");
    for (const char* leg : {"NW", "NE", "SE", "SW"})
      detail.legs.push_back({leg,
                             as_is("1 x BAG"),
                             35.6 * unit::pound,
                             41.2 * unit::pound,
                             true,
                             outcome == Outcome::over ? 1 : 0,
                             "BAG",
                             {}});
    for (int v = 1; v < 40; ++v) detail.curve.push_back({v * mph, 400.0 / (v * v)});
    Finding out;
    out.rule = RuleName::canopy_ballast;
    out.subject = {Subject::Kind::use, use};
    out.called = name;
    out.outcome = outcome;
    out.limit = 99 * mph;  // the level to come down at is the detail's, never this
    out.says = said("Sentence of {}.", name);
    out.detail = detail;
    return out;
  }
};

const Section& section(const Document& document, std::size_t i) { return document.sections.at(i); }

}  // namespace

TEST_CASE("the ballast sheet has a section a structure with its legs, rounded against danger") {
  const WindyHouse house;
  const Document sheet = made(ballast_sheet(house.context()));
  REQUIRE(sheet.sections.size() == 2);
  CHECK(section(sheet, 0).recipient == "desk canopy");
  CHECK(block_text(section(sheet, 0), "over") == "over: OVER LIMIT\n  Sentence of desk canopy.");
  CHECK(block_text(section(sheet, 0), "levels") == "levels:\n  DOWN (gust): 14 mph\n  start: 11 mph\n  ready: 8 mph");
  CHECK(block_text(section(sheet, 0), "legs").find("NW | 1 x BAG | 35 lb | 42 lb | 1 MORE BAG | [ ] | [ ]") !=
        std::string::npos);
  CHECK(block_text(section(sheet, 0), "plan").find("NW: 1 x BAG; has 35 lb; needs 42 lb") != std::string::npos);
  CHECK(block_text(section(sheet, 0), "chart") ==
        "chart: what holds, over what the wind asks over gust, mph\n  curve as planned\n  upright forecast "
        "gust 16\n"
        "  upright DOWN 14\n  upright maker's limit 25\n  floor below 1 it does not hold");
  CHECK(block_text(section(sheet, 0), "facts").find("to bring it down: 6 min with 4 people") != std::string::npos);
}

TEST_CASE(
    "a structure that the plan is short of is SHORT on its ballast sheet and on the walk, its legs beside what was "
    "typed") {
  WindyHouse house;
  const SourceFile file{"show.toml", "", {}};
  Use& strong = house.show.uses[1];
  strong.place = {&file, 9, 1, 1};
  BallastLine line;
  line.each_leg = true;
  line.code = typed("BAG");
  line.count = 2;
  line.place = {&file, 12, 1, 1};
  strong.ballast = {line};
  for (const int leg : {0, 1, 2, 3}) house.plan.ballast.push_back({1, leg, {}, 1, line.place});
  house.plan.ballast.push_back({1, 3, {}, 2, line.place});
  const auto lacks = [&](const std::string& what, int wanted, int missing, const Place& place) {
    Shortage shortage;
    shortage.what = what;
    shortage.wanted = wanted;
    shortage.missing = missing;
    shortage.place = place;
    house.plan.shortages.push_back(shortage);
  };
  lacks("TENT", 1, 1, strong.place);
  lacks("BAG", 8, 3, line.place);
  lacks("RADIO", 7, 1, {&file, 3, 1, 1});
  const Document sheet = made(ballast_sheet(house.context()));
  CHECK(block_text(section(sheet, 0), "over") == "over: OVER LIMIT\n  Sentence of desk canopy.");
  CHECK(block_text(section(sheet, 1), "over") ==
        "over: SHORT\n  TENT: 1 wanted, 1 missing\n  BAG: 8 wanted, 3 missing");
  const std::string legs = block_text(section(sheet, 1), "legs");
  CHECK(legs.find("NW | 1 x BAG (typed: 2 x BAG) |") != std::string::npos);
  CHECK(legs.find("SW | 1 x BAG |") != std::string::npos);  // two stand there, as typed
  const std::string walk = block_text(section(made(safety_walk(house.context())), 0), "stops");
  CHECK(walk.find("SHORT: TENT, BAG") != std::string::npos);
  CHECK(walk.find("RADIO") == std::string::npos);
  house.findings.list[1].outcome = Outcome::over;
  CHECK(block_text(section(made(ballast_sheet(house.context())), 1), "over") ==
        "over: OVER LIMIT\n  Sentence of stage canopy.\n  SHORT  TENT: 1 wanted, 1 missing\n  SHORT  BAG: 8 wanted, 3 "
        "missing");
}

TEST_CASE("what no check has said is loud on both sheets") {
  WindyHouse house;
  house.findings.list.pop_back();
  const Document sheet = made(ballast_sheet(house.context()));
  CHECK(block_text(section(sheet, 1), "unchecked") ==
        "unchecked: \n  NOT CHECKED  No check of this structure was made.");
  CHECK(block_text(section(sheet, 1), "levels").find("DOWN (gust): NOT CHECKED") != std::string::npos);
  CHECK(block_text(section(sheet, 1), "plan").find("NW: NOT CHECKED") != std::string::npos);
  const Document card = made(weather_card(house.context()));
  CHECK(block_text(section(card, 0), "unchecked")
            .find("NOT CHECKED  No level of wind: stage canopy. Down before any wind.") != std::string::npos);
  CHECK(block_text(section(card, 0), "storm").find("NOT CHECKED  No plan for lightning was checked.") !=
        std::string::npos);
  house.show.forecast.reset();
  CHECK(block_text(section(made(weather_card(house.context())), 0), "meter").find("NOT CHECKED: no forecast gust") !=
        std::string::npos);
}

TEST_CASE("the weather card: weakest first, all levels in the meter's unit, walls off first") {
  const WindyHouse house;
  const Document card = made(weather_card(house.context()));
  const std::string levels = block_text(section(card, 0), "levels");
  CHECK(levels.find("DOWN 14 mph | gust, A: desk canopy") != std::string::npos);
  CHECK(levels.find("START 11 mph") != std::string::npos);
  CHECK(levels.find("READY 8 mph") != std::string::npos);
  CHECK(block_text(section(card, 0), "structures") ==
        "structures:\n -\n  A | desk canopy | 14 | 11 | 8 | 6 | 4 | walls (then 18 mph)\n"
        "  B | stage canopy | 25 | 20 | 15 | 6 | 4 | ");
  CHECK(block_text(section(card, 0), "in-all") == "in-all: In turn: 12 min, 4 people.");
  CHECK(block_text(section(card, 0), "meter").find("Forecast gust 16 mph asks at least: DOWN A, READY B.") !=
        std::string::npos);
  CHECK(block_text(section(card, 0), "signs").find("twigs never still | 8\u201312 | 19 | DOWN A, READY B") !=
        std::string::npos);
}

TEST_CASE("a gust whose printed figure reaches a printed level asks for it") {
  WindyHouse house;
  auto& strong = std::get<CanopyDetail>(house.findings.list[1].detail);
  strong.card.start = 19.4 * mph;  // gusts of 18.5 mph and this level are both printed as 19
  house.show.forecast->gust = given(18.3 * mph);
  const Document card = made(weather_card(house.context()));
  CHECK(block_text(section(card, 0), "structures").find("B | stage canopy | 25 | 19 | 15") != std::string::npos);
  CHECK(block_text(section(card, 0), "signs").find("twigs never still | 8\u201312 | 19 | DOWN A, START B") !=
        std::string::npos);
  CHECK(block_text(section(card, 0), "meter").find("Forecast gust 18.3 mph asks at least: DOWN A, READY B.") !=
        std::string::npos);
}

TEST_CASE("the walk, the card and the ballast sheet say one figure: the detail's, not the finding's limit") {
  const WindyHouse house;
  const Document walk = made(safety_walk(house.context()));
  CHECK(block_text(section(walk, 0), "stop").find("14 mph desk canopy; 25 mph stage canopy") != std::string::npos);
  CHECK(block_text(section(walk, 0), "stops").find("DOWN at 14 mph gust") != std::string::npos);
  CHECK(block_text(section(walk, 0), "stops").find("99") == std::string::npos);
}

TEST_CASE("indoors there is nothing to watch, and the sheets say why they are not there") {
  WindyHouse house;
  house.show.setting = given<std::string>("indoor");
  for (Finding& finding : house.findings.list) finding.outcome = Outcome::does_not_apply;
  CHECK(skipped(weather_card(house.context())).reason == "indoors");
  CHECK(skipped(ballast_sheet(house.context())).reason == "nothing stands in the wind");
  house.show.uses.clear();
  CHECK(skipped(ballast_sheet(house.context())).reason == "no structure is listed");
}

TEST_CASE("lightning by count and by distance, and who alone restarts") {
  WindyHouse house;
  Finding storm;
  storm.rule = RuleName::lightning;
  storm.outcome = Outcome::within;
  LightningDetail detail;
  detail.clear_from = 20.2 * unit::mile;
  detail.shelter_by = 8 * unit::mile;
  detail.count = 30 * unit::second;
  detail.wait = 30 * unit::minute;
  detail.time_to_clear = 15 * unit::minute;
  detail.shelter = "the barn";
  storm.detail = detail;
  house.findings.list.push_back(storm);
  house.show.stop_person = given<std::string>("Stage manager");
  const Document card = made(weather_card(house.context()));
  CHECK(block_text(section(card, 0), "storm") ==
        "storm:\n  Flash to thunder 30 s or less: shelter NOW: the barn.\n"
        "  By distance: clear (15 min) from 21 mi, done by 8 mi.\n  Again 30 min after the last flash or "
        "thunder.");
  CHECK(block_text(section(card, 0), "who") == "who: STOP and RESTART: Stage manager");
}
