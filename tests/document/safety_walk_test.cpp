// SPDX-License-Identifier: MIT
#include "document/safety_walk.h"

#include "document/use_line.h"
#include "document/walk_stops.h"
#include "small_house.h"

using namespace dunnage;

namespace {

Finding canopy_finding(int use, std::string called, Outcome outcome, Speed down) {
  CanopyDetail detail;
  detail.down_at = down;
  detail.legs = {{"N", as_is("2 x BAG"), {}, {}, false, 0, {}}, {"S", as_is("1 x BAG"), {}, {}, false, 0, {}}};
  Finding finding;
  finding.rule = RuleName::canopy_ballast;
  finding.subject = {Subject::Kind::use, use};
  finding.called = std::move(called);
  finding.outcome = outcome;
  finding.limit = down;
  finding.says = said("Each leg needs 42 lb.");
  finding.sources = {said("A"), said("B")};
  finding.caution = said("Tied tight.");
  finding.detail = detail;
  return finding;
}

Use small_use(std::string as) {
  Use use;
  use.structure = typed("CAN");
  use.as = typed(std::move(as));
  use.at_place = "foh";
  use.walls = {typed("N")};
  use.under = Under::half_full;
  return use;
}

Section walk(const SmallHouse& house) { return made(safety_walk(house.context())).sections.at(0); }

}  // namespace

TEST_CASE("a structure's line says what stands on each leg and how each rule came out") {
  SmallHouse house;
  house.show.uses = {small_use("desk canopy")};
  Finding sliding = canopy_finding(0, "desk canopy", Outcome::not_checked, 90 * unit::mile_per_hour);
  sliding.rule = RuleName::canopy_sliding;
  sliding.detail = {};
  house.findings.list = {canopy_finding(0, "desk canopy", Outcome::over, 14.9 * unit::mile_per_hour), sliding};
  const std::string stops = block_text(walk(house), "stops");
  CHECK(stops.find("  desk canopy, Front of house: N 2 x BAG; S 1 x BAG; walls N; half full under the roof; "
                   "DOWN at 14 mph gust | "
                   "over limit: ballast/NOT CHECKED: sliding | [ ] | [ ]") != std::string::npos);
}

TEST_CASE("what is called like a structure keeps its own line, and two structures of one name their own state") {
  SmallHouse house;
  house.show.uses = {small_use("left tower"), small_use("left tower")};
  Finding circuit;
  circuit.rule = RuleName::circuit;
  circuit.subject = {Subject::Kind::circuit, 0};
  circuit.called = as_is("left tower");
  circuit.outcome = Outcome::over;
  circuit.says = said("More than its breaker takes: move load to another circuit.");
  house.findings.list = {canopy_finding(0, "left tower", Outcome::within, 20 * unit::mile_per_hour),
                         canopy_finding(1, "left tower", Outcome::over, 14 * unit::mile_per_hour), circuit};
  const std::string stops = block_text(walk(house), "stops");
  CHECK(stops.find("left tower: More than its breaker takes: move load to another circuit. | over limit") !=
        std::string::npos);
  CHECK(stops.find("DOWN at 20 mph gust | within limit") != std::string::npos);
  CHECK(stops.find("DOWN at 14 mph gust | over limit") != std::string::npos);
}

TEST_CASE("gusts to come down at stand in the frame, the lowest first, rounded down") {
  SmallHouse house;
  house.show.uses = {small_use("one"), small_use("two"), small_use("three")};
  Finding unknown = canopy_finding(2, "three", Outcome::not_checked, {});
  unknown.detail = {};
  house.findings.list = {canopy_finding(0, "one", Outcome::within, 25.4 * unit::mile_per_hour),
                         canopy_finding(1, "two", Outcome::within, 14.9 * unit::mile_per_hour), unknown};
  CHECK(down_words(house.context()) == "14 mph two; 25 mph one; NOT CHECKED three");
}

TEST_CASE("a structure that no rule looked at is not checked; one that no rule applies to says so") {
  SmallHouse house;
  house.show.uses = {small_use("canopy")};
  CHECK(block_text(walk(house), "stops").find("under the roof | NOT CHECKED |") != std::string::npos);
  house.findings.list = {canopy_finding(0, "canopy", Outcome::does_not_apply, {})};
  CHECK(block_text(walk(house), "stops").find("under the roof | does not apply/Each leg needs 42 lb. |") !=
        std::string::npos);
}

TEST_CASE("what is over a limit is told first and in full, what was not checked by name") {
  SmallHouse house;
  for (int i = 0; i < 6; ++i) {
    Finding finding;
    finding.rule = RuleName::ways;
    finding.outcome = Outcome::over;
    finding.says = said("Reason {}.", i);
    house.findings.list.push_back(finding);
  }
  CHECK(block_text(walk(house), "decide-first") ==
        "decide-first: DECIDE FIRST\n"
        "  OVER LIMIT  Reason 0.\n  OVER LIMIT  Reason 1.\n  OVER LIMIT  Reason 2.\n  OVER LIMIT  Reason 3.\n"
        "  OVER LIMIT  + 2 more: see the cover");
  house.findings.list.resize(1);
  for (const char* name : {"gate", "ramp", "gate"}) {
    Finding finding;
    finding.rule = RuleName::ways;
    finding.outcome = Outcome::not_checked;
    finding.called = std::string(name);
    house.findings.list.push_back(finding);
  }
  CHECK(block_text(walk(house), "decide-first") ==
        "decide-first: DECIDE FIRST\n  OVER LIMIT  Reason 0.\n  NOT CHECKED  gate; ramp");
}

TEST_CASE("the worst lifts: what only an aid moves before what is near its limit, one line a case") {
  SmallHouse house;
  const auto lift = [&](int unit, Outcome outcome, double mass) {
    Finding finding;
    finding.rule = RuleName::lifting;
    finding.subject = {Subject::Kind::unit, unit};
    finding.called = house.catalogue.units[static_cast<std::size_t>(unit)].code;
    finding.outcome = outcome;
    finding.measured = mass * unit::pound;
    finding.limit = 100 * unit::pound;
    finding.says = said("says");
    finding.detail = house.findings.handling[static_cast<std::size_t>(unit)];
    return finding;
  };
  Finding by_aid = lift(0, Outcome::does_not_apply, 81);
  Handling ramp;
  ramp.known = true;
  ramp.aid = as_is("ramp");
  ramp.loading_index = 2.21;
  by_aid.detail = ramp;
  house.findings.list = {lift(1, Outcome::within, 35), lift(3, Outcome::within, 35), by_aid};
  CHECK(block_text(walk(house), "lifts") ==
        "lifts:\n -\n"
        "  FOH | Front trunk | 82 lb | no lift: ramp, beyond 100 lb | index 2.3 | \n"
        "  BAG-1 | Ballast bag | 35 lb | lift: 1 person, limit 100 lb |  | within limit");
}

TEST_CASE("lines follow the show: dark ways, the open air, wheels over cables") {
  SmallHouse house;
  house.show.setting = given<std::string>("indoor");
  house.show.after_dark = given(false);
  const std::string indoors = block_text(walk(house), "stops");
  CHECK(indoors.find("Holes") == std::string::npos);
  CHECK(indoors.find("after dark") == std::string::npos);
  CHECK(block_text(walk(house), "stop").find("Thunder") == std::string::npos);
  house.show.setting.reset();
  house.show.after_dark.reset();
  Run run;
  run.from = "foh";
  run.to = "gate";
  Crossing crossing;
  crossing.crossed_by = given<std::string>("wheels");
  crossing.crossing = given(12 * unit::foot);
  run.over = {crossing};
  house.show.runs = {run};
  const std::string unknown = block_text(walk(house), "stops");
  CHECK(unknown.find("Holes, stakes, guy lines; ways to the gate after dark") != std::string::npos);
  CHECK(unknown.find("Ramps where wheels cross: Front of house to gate (12 ft)") != std::string::npos);
}

TEST_CASE("no signed sheet says pass or safe") {
  for (const auto& [key, text] : english().by_key) {
    INFO(key << " = " << text);
    const std::string padded = " " + text + " ";
    for (const char* word : {" pass ", " passed ", " safe ", " Pass ", " Safe "})
      CHECK(padded.find(word) == std::string::npos);
  }
}
