// SPDX-License-Identifier: MIT
// What a van and a trailer carry against their plates.
#include <catch2/catch.hpp>

#include "check/vehicle_mass.h"
#include "small_show.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

namespace {
/// A trailer as in a worked example: D 3.20 m, empty 750 kg with 85 kg on the tongue, five pieces.
struct Trailer {
  Kit kit;
  Show show;
  Trailer() {
    kit.house.units = UnitSystem::metric;
    Vehicle v;
    v.code = text("TRAILER");
    v.kind = Vehicle::Kind::trailer;
    v.empty_axle = given(665 * kilogram);
    v.empty_tongue = given(85 * kilogram);
    v.coupling_to_axle = given(3.2 * metre);
    v.coupling_to_cargo = given(1 * metre);
    v.gross = given(1500 * kilogram);
    v.tongue_from = given(0.10);
    v.tongue_to = given(0.15);
    v.pulled_by = given<std::string>("VAN");
    kit.vehicles = {v};
    Load load;
    load.vehicle = text("TRAILER");
    const std::tuple<const char*, double, double> pieces[] = {
        {"AMP", 180, 1.20}, {"DESK", 140, 2.00}, {"SUBS", 95, 2.75}, {"CABLE", 160, 3.55}, {"STANDS", 60, 4.30}};
    for (const auto& [code, mass, at] : pieces) {
      Case box;
      box.code = text(code);
      box.weighed = given(mass * kilogram);
      box.vehicle = "TRAILER";
      kit.cases.push_back(box);
      load.stands.push_back({text(code), (at - 1) * metre, {}});
    }
    // The two subs are one piece of 95 kg each.
    kit.cases[2].count = 2;
    show.loads = {load};
  }
  Finding check() const {
    const Catalogue c = make_catalogue(kit);
    const Plan plan = all_go(c);
    Findings findings;
    check_vehicles(c, show, plan, findings);
    return findings.list.at(0);
  }
  VehicleDetail detail() const { return std::get<VehicleDetail>(check().detail); }
};
}  // namespace

TEST_CASE("A trailer with positions: tongue, axle and what to move") {
  Trailer t;
  CHECK(t.check().outcome == Outcome::over);
  CHECK(*t.detail().tongue / kilogram == Approx(238.6).margin(0.05));
  CHECK(*t.detail().axle / kilogram == Approx(1241.4).margin(0.05));
  CHECK(t.check().says.english().find("Tongue 16.2 % of the whole, 15 % at most: move mass back.") !=
        std::string::npos);
  t.show.loads[0].stands[1].from_front = 1.75 * metre;  // the desk from 2.00 to 2.75
  CHECK(t.check().outcome == Outcome::within);
  CHECK(*t.detail().tongue / kilogram == Approx(205.8).margin(0.05));
}

TEST_CASE("Without positions only masses are judged, and that is said") {
  Trailer t;
  t.show.loads[0].stands.clear();
  CHECK(t.check().outcome == Outcome::within);
  CHECK(assumed(t.check()) ==
        "axle and tongue not worked out: no positions; tie-downs not given: straps that "
        "hold 365.0 kg together are asked");
  t.kit.vehicles[0].gross = given(1479 * kilogram);
  CHECK(t.check().outcome == Outcome::over);
  t.kit.vehicles[0].gross.reset();
  CHECK(t.check().outcome == Outcome::not_checked);
  t.kit.vehicles[0].gross = given(1500 * kilogram);
  t.kit.cases[0].weighed.reset();
  CHECK(t.check().says.english().find("Not given: the mass of 1 pieces.") != std::string::npos);
}

TEST_CASE("Tie-downs by number and strength") {
  Trailer t;
  t.show.loads[0].stands.clear();
  Strap strap;
  strap.count = 2;
  strap.limit = given(400 * kilogram);
  strap.over = true;
  t.show.loads[0].straps = {strap};
  CHECK(t.check().says.english().find("Not given: the length of the load.") != std::string::npos);
  t.show.loads[0].length = given(8 * foot);
  CHECK(t.check().outcome == Outcome::within);  // 730 kg, half of it 365, 800 counted
  t.show.loads[0].straps[0].over = false;
  CHECK(t.check().outcome == Outcome::within);  // 400 counted
  t.show.loads[0].straps[0].limit = given(350 * kilogram);
  CHECK(t.check().outcome == Outcome::over);
  t.show.loads[0].straps[0].limit = given(400 * kilogram);
  t.show.loads[0].length = given(12 * foot);
  CHECK(t.check().says.english().find("2 straps, 3 are asked: add 1.") != std::string::npos);
}

TEST_CASE("What pulls a trailer, and the plate of the hitch") {
  Trailer t;
  t.show.loads[0].stands[1].from_front = 1.75 * metre;
  Vehicle van;
  van.code = text("VAN");
  van.empty_front = given(1290 * kilogram);
  van.empty_rear = given(900 * kilogram);
  van.payload = given(1000 * kilogram);
  van.train = given(3600 * kilogram);
  van.people_and_fuel = given(160 * kilogram);
  t.kit.vehicles.push_back(van);
  const auto of_van = [&] {
    const Catalogue c = make_catalogue(t.kit);
    Findings findings;
    check_vehicles(c, t.show, all_go(c), findings);
    return findings.list.at(1);  // it carries nothing, and is weighed
  };
  CHECK(of_van().says.english() ==
        "0 pieces, 0.0 kg; 366.0 kg aboard of 1000.0 kg payload. Van and trailer 3830.0 kg of 3600.0 kg, "
        "230.0 kg too much: take it off, or send another vehicle. Not given: limit of the hitch. "
        "Weigh it or read its plate, and type it.");
  t.kit.vehicles[1].limit_tongue = given(200 * kilogram);
  CHECK(of_van().says.english().find("Tongue on the hitch 206.0 kg of 200.0 kg") != std::string::npos);
  t.kit.vehicles.push_back(t.kit.vehicles[0]);  // a second trailer behind one van
  t.kit.vehicles[2].code = text("SECOND");
  t.show.loads.push_back({});
  t.show.loads[1].vehicle = text("SECOND");
  CHECK(of_van().outcome == Outcome::not_checked);
  CHECK(of_van().says.english().find("Not given: which one of 2 trailers it pulls.") != std::string::npos);
  t.kit.vehicles[0].pulled_by.reset();
  CHECK(t.check().says.english().find("Not given: what pulls it.") != std::string::npos);
}

TEST_CASE("A tongue that pulls up is over a limit, whatever was typed") {
  Trailer t;
  t.kit.vehicles[0].tongue_from.reset();
  for (StandsAt& spot : t.show.loads[0].stands) spot.from_front = 4 * metre;
  CHECK(t.check().outcome == Outcome::over);
  CHECK(t.check().says.english().find("The tongue pulls up on the hitch: move mass forward.") != std::string::npos);
}
