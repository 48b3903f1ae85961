// SPDX-License-Identifier: MIT
// Circuits and supplies: load, cable, voltage lost, legs, generators.
#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "small_show.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

namespace {
Maybe<Conductor> gauge(const char* awg) { return given(Conductor{awg, {}}); }
Maybe<Conductor> section(double mm2) { return given(Conductor{{}, Area::from_si(mm2 * 1e-6)}); }

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
  c.conductor = gauge("12");
  c.length = given(100 * foot);
  c.power_factor = given(1.0);
  CircuitLoad load;
  load.code = text("AMP");
  load.draws = given(1000 * watt);
  c.feeds = {load};
  s.show.circuits = {c};
  return s;
}
CircuitRow row(const SmallShow& s) { return std::get<CircuitDetail>(s.one("circuit").detail).row; }
SupplyDetail supply(const SmallShow& s) { return std::get<SupplyDetail>(s.one("supply").detail); }
}  // namespace

TEST_CASE("A circuit: current, the long-use factor, and the voltage lost at its outlet") {
  SmallShow s = circuit();
  CHECK(s.one("circuit").outcome == Outcome::within);
  CHECK(s.one("circuit").says.english() ==
        "Draws 8.4 A, counted as 10.5 A for long use, of 20 A. Loses 3.3 V to its farthest outlet: 2.8 %, "
        "5 % at most.");
  CHECK(*row(s).ampacity / ampere == Approx(25));
  s.show.circuits[0].feeds[0].draws = given(1920 * watt);  // 16 A fill 20 A
  CHECK(row(s).outcome == Outcome::over);                  // 6.34 V of 120 are 5.3 %
  s.show.circuits[0].length = given(50 * foot);
  CHECK(row(s).outcome == Outcome::within);
  s.show.circuits[0].feeds[0].draws = given(1921 * watt);
  CHECK(row(s).outcome == Outcome::over);
  s.show.circuits[0].continuous = false;
  CHECK(row(s).outcome == Outcome::within);
}

TEST_CASE("The cable's own ampacity counts where it is known") {
  SmallShow s = circuit();
  s.show.circuits[0].feeds[0].draws = given(1500 * watt);
  s.show.circuits[0].length = given(10 * foot);
  CHECK(row(s).outcome == Outcome::within);
  Case cord;
  cord.code = text("CORD");
  cord.conductor = gauge("16");  // no drop in Table 8, 13 A
  s.kit.cases.push_back(cord);
  s.show.circuits[0].conductor.reset();
  s.show.circuits[0].cable = given<std::string>("CORD");
  CHECK(row(s).outcome == Outcome::over);
  CHECK(s.one("circuit").says.english().find("CORD carries only 13 A: take a thicker cable, or load off.") !=
        std::string::npos);
  s.kit.cases.back().conductor = gauge("10");
  CHECK(row(s).outcome == Outcome::within);
  s.kit.cases.back().carries = given(15 * ampere);  // its maker's figure, where that is less
  CHECK(row(s).outcome == Outcome::over);
}

TEST_CASE("Every segment to the farthest outlet counts, with what flows there; the feeder with all of a leg") {
  SmallShow s = circuit();
  const Voltage one = *row(s).drop;
  Segment further;
  further.conductor = gauge("12");
  further.length = given(100 * foot);
  s.show.circuits[0].then = {further};
  CHECK(*row(s).drop / volt == Approx(2 * (one / volt)));
  s.show.circuits[0].then[0].carries = given(500 * watt);
  CHECK(*row(s).drop / volt == Approx(1.5 * (one / volt)));
  s.show.supplies[0].conductor = gauge("12");
  s.show.supplies[0].length = given(100 * foot);
  s.show.circuits.push_back(s.show.circuits[0]);
  s.show.circuits[1].name = text("Stage 2");
  CHECK(*row(s).drop / volt == Approx(3.5 * (one / volt)));
  CHECK(*row(s).length / foot == Approx(300));
}

TEST_CASE("Metric cable by cross-section, and the limit of the standard") {
  SmallShow s = circuit();
  s.show.supplies[0].voltage = given(230 * volt);
  s.show.circuits[0].conductor = section(6);
  s.show.circuits[0].length = given(50 * metre);
  s.show.circuits[0].protection = given(63 * ampere);
  s.show.circuits[0].power_factor.reset();
  s.show.circuits[0].feeds[0].draws = given(32 * 230 * 0.8 * watt);
  CHECK(*row(s).drop / volt == Approx(9.75).margin(0.005));  // as the published-rows test
  CHECK(row(s).drop_method == "IEC 60364-5-52 Annex G");
  CHECK(row(s).drop_limit == Approx(0.05));
  CHECK(assumed(s.one("circuit")).find("power factor 0.8; no ampacity known") != std::string::npos);
}

TEST_CASE("What is missing is named, and nothing is within without it") {
  SmallShow s = circuit();
  s.show.circuits[0].conductor.reset();
  CHECK(s.one("circuit").outcome == Outcome::not_checked);
  CHECK(s.one("circuit").says.english() ==
        "Draws 8.4 A, counted as 10.5 A for long use, of 20 A. Not given: the conductor of the cable. "
        "Read it off the plate or measure it, and type it.");
  s.show.circuits[0].feeds[0].draws.reset();
  s.show.circuits[0].protection.reset();
  s.show.supplies[0].voltage.reset();
  CHECK(s.one("circuit").says.english() ==
        "Not given: what AMP draws, its protection, its supply's voltage. Read it off the plate or measure it, and "
        "type it.");
  CHECK(s.one("supply").outcome == Outcome::not_checked);
}

TEST_CASE("More load, more length, thinner cable: never a better outcome") {
  const auto rank = [](Outcome o) { return o == Outcome::within ? 0 : o == Outcome::not_checked ? 1 : 2; };
  for (const char* awg : {"14", "12", "10"}) {
    int worst = 0;
    for (double watts = 100; watts < 3000; watts += 100) {
      SmallShow s = circuit();
      s.show.circuits[0].conductor = gauge(awg);
      s.show.circuits[0].feeds[0].draws = given(watts * watt);
      const int now = rank(row(s).outcome);
      CHECK(now >= worst);
      worst = now;
      s.show.circuits[0].length = given(200 * foot);
      CHECK(rank(row(s).outcome) >= now);
    }
  }
}

TEST_CASE("A supply: the sum and each leg against the rating") {
  SmallShow s = circuit();
  s.show.circuits[0].leg = given<std::string>("A");
  s.show.circuits.push_back(s.show.circuits[0]);
  s.show.circuits[1].name = text("Stage 2");
  s.show.circuits[1].leg = given<std::string>("B");
  s.show.circuits[1].feeds[0].draws = given(500 * watt);
  CHECK(s.one("supply").outcome == Outcome::within);
  CHECK(s.one("supply").says.english() == "Carries 1500 W, 1500 VA, of 7200 W: leg A 1000 W, leg B 500 W.");
  CHECK(*supply(s).imbalance == Approx(0.5));
  CHECK(s.one("supply").caution.english().rfind("The legs differ by 50 % of the larger: even them out.", 0) == 0);
  CHECK(supply(s).tests.size() == 4);
  CHECK(supply(s).tests.back().english() == "Voltage at the farthest outlet under load: 114 V or more.");
  s.show.supplies[0].power = given(1900 * watt);
  CHECK(s.one("supply").outcome == Outcome::over);  // leg A has 950 W
  CHECK(s.one("supply").says.english().find(
            "Leg A takes 1000 VA, its share is 950 W: move a circuit to another leg.") != std::string::npos);
  s.show.circuits[1].leg.reset();
  CHECK(s.one("supply").says.english().find("Not given: the leg of every circuit.") != std::string::npos);
}

TEST_CASE("A generator: height, heat, starting current, distance") {
  SmallShow s = circuit();
  s.show.supplies[0].kind.value = "generator";
  s.show.supplies[0].power = given(1200 * watt);
  CHECK(s.one("supply").says.english() ==
        "Carries 1000 W, 1000 VA, of 1200 W. Not given: the site's altitude, the temperature, its distance "
        "to the nearest tent, door or window, how far its fuel is kept from the nearest tent. Read its plate or "
        "measure, and type it.");
  s.show.site.altitude = given(1200 * metre);
  s.show.forecast->temperature = given(Temperature::celsius(30));
  s.show.supplies[0].distance = given(25 * foot);
  s.show.supplies[0].fuel = given(49 * foot);
  CHECK(s.one("supply").says.english().find("Its fuel is kept 49 ft from a tent: move it to 50 ft at least.") !=
        std::string::npos);
  s.show.supplies[0].fuel = given(50 * foot);
  CHECK(s.one("supply").outcome == Outcome::within);
  CHECK(*supply(s).left / watt == Approx(1164));
  s.show.circuits[0].feeds[0].starts = given(1200 * watt);
  CHECK(s.one("supply").outcome == Outcome::over);
  s.show.circuits[0].feeds[0].starts.reset();
  s.show.supplies[0].distance = given(19 * foot);
  CHECK(s.one("supply").says.english() ==
        "Carries 1000 W, 1000 VA, of 1164 W. It stands 19 ft from a tent, door or window: move it to 20 ft at "
        "least.");
}

TEST_CASE("How far off a generator's extinguisher stands is said in the paper's units, rounded between the limits") {
  SmallShow s = circuit();
  s.show.supplies[0].kind.value = "generator";
  const auto test = [&](UnitSystem units) {
    s.kit.house.units = units;
    return supply(s).tests.front().english();
  };
  const std::string begin = "Generator: fenced off, exhaust away from people; refuelled off and cooled; extinguisher ";
  CHECK(test(UnitSystem::us) == begin + "25 ft to 75 ft away.");
  CHECK(test(UnitSystem::metric) == begin + "8 m to 22 m away.");
}

TEST_CASE("No circuit listed: not checked outdoors; the building's indoors; nothing to check without power") {
  SmallShow s;
  CHECK(s.one("circuit").outcome == Outcome::does_not_apply);
  s.kit.cases[0].draws = given(50 * watt);
  CHECK(s.one("circuit").outcome == Outcome::not_checked);
  CHECK(s.one("circuit").says.english() ==
        "No circuit is listed, and 20 pieces that go draw power: nothing was added up. Type a [[supply]] and its "
        "[[circuit]]s, or have an electrician lay it out.");
  s.show.setting = given<std::string>("indoor");
  CHECK(s.one("circuit").outcome == Outcome::does_not_apply);
}

TEST_CASE("Of three phases a circuit on no leg loads each leg, and outlets on a leg stand at the voltage of a leg") {
  SmallShow s = circuit();
  s.show.supplies[0].voltage = given(208 * volt);
  s.show.supplies[0].phases = given(3.0);
  s.show.circuits.push_back(s.show.circuits[0]);
  s.show.circuits[0].leg = given<std::string>("A");  // 1000 W on it alone
  s.show.circuits[1].feeds[0].draws = given(900 * watt);
  const SupplyDetail d = supply(s);
  REQUIRE(d.legs.size() == 1);
  CHECK(d.legs[0].apparent / watt == Approx(1300));
  CHECK(*d.imbalance == Approx(1000.0 / 1300));  // legs without a name have 300 W
  CHECK(s.one("supply").outcome == Outcome::within);
  CHECK(d.tests[3].english() == "Voltage at the farthest outlet under load: 198 V or more.");
  CHECK(d.tests[4].english() == "Voltage at the farthest outlet under load: 115 V or more.");  // 120.1 V
}

TEST_CASE("What draws power and is on no circuit is told, and so is a cord that stays or does not reach") {
  SmallShow s = circuit();
  Case amp;
  amp.code = text("AMP");
  amp.count = 2;
  amp.draws = given(900 * watt);
  Case cord;
  cord.code = text("CORD");
  cord.length = given(50 * foot);
  cord.conductor = gauge("12");
  s.kit.cases = {amp, cord};
  s.show.circuits[0].cable = given<std::string>("CORD");
  const auto told_of = [&] {
    std::vector<std::string> told;
    for (const Finding& f : s.check().list)
      if (name(f.rule) == std::string("circuit"))
        told.push_back(name(f.outcome) + std::string(": ") + f.says.english());
    return told;
  };
  const std::vector<std::string> told = told_of();
  REQUIRE(told.size() == 3);
  CHECK(told[1] == "not checked: On no circuit, and in no sum: 1 x AMP. Type each among the feeds of its circuit.");
  CHECK(told[2] ==
        "over limit: CORD is 50 ft long, and 100 ft are asked: name a cord that reaches, or each of several under "
        "\"then\".");
  s.show.circuits[0].feeds[0].count = 2;
  s.show.circuits[0].length = given(50 * foot);
  CHECK(told_of().size() == 1);
  s.show.circuits.push_back(s.show.circuits[0]);
  CHECK(told_of().back() ==
        "over limit: 2 are named by circuits and supplies, and 1 go: bring more, or name what goes.");
}
