// SPDX-License-Identifier: MIT
// Every sentence of the rules about circuits and supplies, each where it is due.
#include <catch2/catch.hpp>

#include "small_show.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

namespace {
/// 120 V, one circuit of 20 A on 100 ft of 12 AWG that feeds 1000 W; power factor 1.
SmallShow circuit() {
  SmallShow s;
  Supply supply;
  supply.name = text("pedestal");
  supply.voltage = given(120 * volt);
  supply.power = given(7200 * watt);
  s.show.supplies = {supply};
  Circuit c;
  c.name = text("Stage 1");
  c.protection = given(20 * ampere);
  c.conductor = given(Conductor{"12", {}});
  c.length = given(100 * foot);
  c.power_factor = given(1.0);
  CircuitLoad load;
  load.code = text("AMP");
  load.draws = given(1000 * watt);
  c.feeds = {load};
  s.show.circuits = {c};
  return s;
}
std::string says(const SmallShow& s, std::string_view rule) { return s.one(rule).says.english(); }
bool ends(const SmallShow& s, std::string_view rule, std::string_view what) { return says(s, rule).ends_with(what); }
const std::string of_circuits =
    "\nfrom: NEC 210.20(A), 400.5, Ch. 9 Table 8; IEC 60364-5-52 Annex G\nmind: Test every residual-current device "
    "before "
    "doors. A licensed electrician and the inspector decide.";
}  // namespace

TEST_CASE("A circuit's sentences: what it draws, and what is too much for what") {
  SmallShow s = circuit();
  CHECK(whole(s.one("circuit")) ==
        "within limit: Draws 8.4 A, counted as 10.5 A for long use, of 20 A. Loses 3.3 V to its farthest outlet: 2.8 "
        "%, 5 "
        "% at most.\nassumed: cable unrolled, voltage drop by NEC Ch. 9 Table 8" +
            of_circuits);
  s.show.circuits[0].feeds[0].draws = given(1930 * watt);
  CHECK(ends(s, "circuit", "5 % at most. Take a thicker or a shorter cable, or load off."));
  CHECK(says(s, "circuit").find("of 20 A. More than its breaker takes: move load to another circuit. Loses") !=
        std::string::npos);
  s.show.circuits[0].protection.reset();
  s.show.circuits[0].length = given(10 * foot);
  CHECK(says(s, "circuit").starts_with("Draws 16.1 A, counted as 20.2 A for long use. Loses"));
  s.show.circuits[0].continuous = false;
  CHECK(says(s, "circuit").starts_with("Draws 16.1 A. Loses"));
  s.show.circuits[0].protection = given(20 * ampere);
  CHECK(says(s, "circuit").starts_with("Draws 16.1 A, of 20 A. Loses"));
  s.show.circuits[0].conductor = given(Conductor{{}, Area::from_si(2.5e-6)});
  CHECK(assumed(s.one("circuit")) ==
        "no ampacity known for the cable; cable unrolled, voltage drop by IEC 60364-5-52 Annex G");
}

TEST_CASE("What a circuit lacks: what it feeds, a conductor that a table has") {
  SmallShow s = circuit();
  s.show.circuits[0].conductor = given(Conductor{"17", {}});
  CHECK(
      ends(s, "circuit",
           "Not given: a conductor of the cable that a table has. Read it off the plate or measure it, and type it."));
  CHECK(s.one("circuit").outcome == Outcome::not_checked);
  s.show.circuits[0].feeds.clear();
  CHECK(
      ends(s, "circuit",
           "Not given: what it feeds, a conductor of the cable that a table has. Read it off the plate or measure it, "
           "and type it."));
  s.show.circuits[0].conductor = given(Conductor{"12", {}});
  s.show.circuits[0].length.reset();
  CHECK(says(s, "circuit").find("the length of the cable") != std::string::npos);
}

TEST_CASE("No circuit at all: by what draws power, and indoors") {
  SmallShow s;
  CHECK(whole(s.one("circuit")) ==
        "does not apply: No circuit is listed, and nothing that goes is said to draw power." + of_circuits);
  s.kit.cases[0].draws = given(50 * watt);
  s.kit.cases[0].count = 1;
  CHECK(
      says(s, "circuit").starts_with("No circuit is listed, and 1 piece that goes draws power: nothing was added up."));
  s.show.setting = given<std::string>("indoor");
  CHECK(whole(s.one("circuit")) == "does not apply: Indoors, no circuit listed: the building's own." + of_circuits);
}

TEST_CASE("What is said of cords and of what is on no circuit has its source and its caution too") {
  SmallShow s = circuit();
  Case amp;
  amp.code = text("RACK");
  amp.draws = given(900 * watt);
  s.kit.cases = {amp};
  int told = 0;
  for (const Finding& f : s.check().list)
    if (f.rule == RuleName::circuit) {
      ++told;
      CHECK_FALSE(f.sources.empty());
      CHECK_FALSE(f.caution.empty());
    }
  CHECK(told == 2);
}

TEST_CASE("A supply: what to test before doors, what it carries, and what is too much") {
  SmallShow s = circuit();
  CHECK(
      whole(s.one("supply")) ==
      "within limit: Carries 1000 W, 1000 VA, of 7200 W.\nfrom: as rated; height and heat: common practice, no source; "
      "City of Fort Worth (Texas), tent permit page, year not seen\nmind: Its own plate and manual win. Earthing and "
      "the neutral's bond are the "
      "electrician's.");
  const auto tests = std::get<SupplyDetail>(s.one("supply").detail).tests;
  REQUIRE(tests.size() == 3);
  CHECK(tests[0].english() == "Stage 1: press the test button of its residual-current device; it trips; reset it.");
  CHECK(tests[1].english() == "Outlet tester at the farthest outlet of each circuit: earth, line and neutral right.");
  s.show.circuits[0].feeds[0].starts = given(1500 * watt);
  CHECK(says(s, "supply") == "Carries 1000 W, 1000 VA and 500 W more while starting, of 7200 W.");
  s.show.supplies[0].power = given(1499 * watt);
  CHECK(says(s, "supply") ==
        "Carries 1000 W, 1000 VA and 500 W more while starting, of 1499 W. That is more than it has: take load off, or "
        "bring another.");
  s.show.supplies[0].power = given(1500 * watt);
  CHECK(s.one("supply").outcome == Outcome::within);
  s.show.supplies[0].power.reset();
  CHECK(ends(s, "supply", "Not given: its rated power. Read its plate or measure, and type it."));
  s.show.supplies[0].power = given(7200 * watt);
  s.show.supplies[0].phases = given(3.0);
  s.show.circuits[0].leg = given<std::string>("A");
  CHECK(assumed(s.one("supply")) == "the voltage typed is taken between lines");
}

TEST_CASE("A generator too high or too hot for the table") {
  SmallShow s = circuit();
  s.show.supplies[0].kind.value = "generator";
  s.show.supplies[0].distance = given(30 * foot);
  s.show.supplies[0].fuel = given(60 * foot);
  s.show.site.altitude = given(4100 * metre);
  s.show.forecast->temperature = given(Temperature::celsius(30));
  CHECK(s.one("supply").outcome == Outcome::over);
  CHECK(ends(s, "supply", "Too high or too hot for the table of generators: ask its maker what it gives there."));
}
