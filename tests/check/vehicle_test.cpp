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
    v.limit_axle = given(1300 * kilogram);
    v.limit_tongue = given(250 * kilogram);
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
  LoadStage stage() const { return std::get<VehicleDetail>(check().detail).stage; }
};
}  // namespace

TEST_CASE("A trailer with positions: tongue, axle and what to move") {
  Trailer t;
  CHECK(t.check().outcome == Outcome::over);
  CHECK(*t.stage().tongue / kilogram == Approx(238.6).margin(0.05));
  CHECK(*t.stage().axle / kilogram == Approx(1241.4).margin(0.05));
  CHECK(t.check().says.english().find("At departure: tongue 16.2 % of the whole, 15 % at most: move mass back.") !=
        std::string::npos);
  t.show.loads[0].stands[1].from_front = 1.75 * metre;  // the desk from 2.00 to 2.75
  CHECK(t.check().outcome == Outcome::within);
  CHECK(*t.stage().tongue / kilogram == Approx(205.8).margin(0.05));
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
        "0 pieces, 0.0 kg; 366.0 kg aboard of 1000.0 kg payload. At departure: van and trailer 3830.0 kg of 3600.0 kg, "
        "230.0 kg too much: take it off, or send another vehicle. Not given: limit of the hitch. "
        "Weigh it or read its plate, and type it.");
  t.kit.vehicles[1].limit_tongue = given(200 * kilogram);
  CHECK(of_van().says.english().find("tongue on the hitch 206.0 kg of 200.0 kg") != std::string::npos);
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
  CHECK(t.check().says.english().find("At departure: the tongue pulls up on the hitch: move mass forward.") !=
        std::string::npos);
}

namespace {
/// The van of a worked example with its load at typed places, and everything known.
struct Van {
  Kit kit;
  Show show;
  Van() {
    kit.house.units = UnitSystem::metric;
    Vehicle v;
    v.code = text("VAN");
    v.empty_front = given(1290 * kilogram);
    v.empty_rear = given(900 * kilogram);
    v.limit_front = given(1850 * kilogram);
    v.limit_rear = given(2250 * kilogram);
    v.people_and_fuel = given(160 * kilogram);
    v.payload = given(1310 * kilogram);
    v.gross = given(3500 * kilogram);
    v.wheelbase = given(3.665 * metre);
    v.front_to_cargo = given(1 * metre);
    kit.vehicles = {v};
    Case box;
    box.code = text("RACK");
    box.weighed = given(500 * kilogram);
    box.vehicle = "VAN";
    kit.cases = {box};
    Load load;
    load.vehicle = text("VAN");
    load.stands = {{text("RACK"), 2.665 * metre, {}}};  // over the rear axle
    show.loads = {load};
  }
  /// An empty trailer of 750 kg with 85 kg on the hitch.
  void pull() {
    Vehicle t;
    t.code = text("TRAILER");
    t.kind = Vehicle::Kind::trailer;
    t.empty_axle = given(665 * kilogram);
    t.empty_tongue = given(85 * kilogram);
    t.pulled_by = given<std::string>("VAN");
    t.tongue_to = given(0.12);
    kit.vehicles.push_back(t);
    kit.vehicles[0].train = given(5000 * kilogram);
    kit.vehicles[0].limit_tongue = given(100 * kilogram);
    Load load;
    load.vehicle = text("TRAILER");
    show.loads.push_back(load);
  }
  Vehicle& van() { return kit.vehicles[0]; }
  Finding check() const {
    const Catalogue c = make_catalogue(kit);
    Findings findings;
    check_vehicles(c, show, all_go(c), findings);
    return findings.list.at(0);
  }
  bool says(std::string_view part) const { return check().says.english().find(part) != std::string::npos; }
  LoadStage stage() const { return std::get<VehicleDetail>(check().detail).stage; }
};
}  // namespace

TEST_CASE("A van as it leaves: what rests on each axle, with what is taken for granted") {
  const Van v;
  CHECK(whole(v.check()) ==
        "within limit: 1 piece, 500.0 kg; 660.0 kg aboard of 1310.0 kg payload; 2850.0 kg of 3500.0 kg gross.\n"
        "assumed: people and fuel count on the front axle and on the rear axle; tie-downs not given: straps that hold "
        "250.0 kg together are asked\nfrom: its plates as typed; 49 CFR 393.106, 393.110\nmind: The plate, the tyre "
        "placard and the hitch plate win. Weigh it once loaded.");
  CHECK(*v.stage().front / kilogram == Approx(1290 + 160));
  CHECK(*v.stage().rear / kilogram == Approx(900 + 500 + 160));
}

TEST_CASE("Axles without limits are not within them") {
  Van v;
  v.van().limit_rear.reset();
  CHECK(v.check().outcome == Outcome::not_checked);
  CHECK(v.says("Not given: limits of the axles. Weigh it or read its plate, and type it."));
  v.show.loads[0].stands.clear();  // no place, no axle load: what the rule leaves out, and says so
  CHECK(v.check().outcome == Outcome::within);
  CHECK(assumed(v.check()).starts_with("axles not worked out: no positions"));
  Trailer t;
  t.show.loads[0].stands[1].from_front = 1.75 * metre;
  for (auto limit : {&Vehicle::limit_axle, &Vehicle::limit_tongue}) {
    Trailer lacking = t;
    (lacking.kit.vehicles[0].*limit).reset();
    CHECK(lacking.check().outcome == Outcome::not_checked);
  }
  t.kit.vehicles[0].tongue_from.reset();
  CHECK(t.check().says.english().find("Not given: limit of the tongue and its window.") != std::string::npos);
}

TEST_CASE("A hitch that nobody typed is not at the rear axle") {
  Van v;
  v.pull();
  CHECK(v.check().outcome == Outcome::not_checked);
  CHECK(v.says("Not given: rear axle to hitch."));
  CHECK_FALSE(v.stage().front);
  CHECK_FALSE(v.stage().rear);
  v.van().hitch_behind = given(1.1 * metre);
  CHECK(v.check().outcome == Outcome::within);
  // The tongue by the window: 12 % of 750 kg are 90 kg, 4.765 m behind the front axle.
  CHECK(assumed(v.check()).starts_with("the trailer's tongue at the upper end of its window"));
  CHECK(*v.stage().rear / kilogram == Approx(900 + 500 + 160 + 90 * 4.765 / 3.665));
  CHECK(*v.stage().front / kilogram == Approx(1290 + 160 - 90 * 1.1 / 3.665));
  CHECK(*v.stage().train / kilogram == Approx(2850 + 750));
  v.kit.vehicles[1].tongue_to.reset();  // 15 %: common practice, no source
  CHECK(*v.stage().tongue / kilogram == Approx(112.5));
  CHECK(
      v.says("At departure: tongue on the hitch 112.5 kg of 100.0 kg, 12.5 kg too much: move load back, or take it "
             "off."));
  v.kit.vehicles[1].empty_axle.reset();
  CHECK(v.says("Not given: empty axle, tongue and coupling of its trailer."));
  v.van().train.reset();
  CHECK(v.says("what it may weigh with its trailer"));
}

TEST_CASE("People count against the payload and on the axles; where nobody typed them, nothing is made of it") {
  Van v;
  v.van().payload = given(659 * kilogram);
  CHECK(v.says("At departure: payload 660.0 kg of 659.0 kg, 1.0 kg too much: take it off, or send another vehicle."));
  v.van().people_and_fuel.reset();
  CHECK(v.check().outcome == Outcome::not_checked);
  CHECK(v.check().says.english() ==
        "1 piece, 500.0 kg. Not given: people and fuel. Weigh it or read its plate, and type it.");
  CHECK_FALSE(v.stage().rear);
  v.van().payload = given(499 * kilogram);  // too much already without them
  CHECK(v.check().outcome == Outcome::over);
  v.van().payload.reset();
  v.van().gross.reset();
  CHECK(v.says("Not given: payload, or gross and empty masses, people and fuel."));
  v.van().gross = given(3500 * kilogram);
  v.van().people_and_fuel = given(160 * kilogram);
  CHECK(v.check().outcome == Outcome::within);
  v.van().gross = given(2849 * kilogram);
  CHECK(v.says("At departure: gross 2850.0 kg of 2849.0 kg, 1.0 kg too much: take it off, or send another vehicle."));
}

TEST_CASE("Each plate of a van has its own sentence, and what is missing for its axles its own name") {
  Van v;
  v.van().limit_rear = given(1559 * kilogram);
  CHECK(v.says("At departure: rear axle 1560.0 kg of 1559.0 kg, 1.0 kg too much: move load forward, or take it off."));
  v.van().limit_rear = given(1560 * kilogram);
  CHECK(v.check().outcome == Outcome::within);
  v.van().limit_front = given(1449 * kilogram);
  CHECK(v.says("At departure: front axle 1450.0 kg of 1449.0 kg, 1.0 kg too much: move load back, or take it off."));
  v.van().limit_front = given(1850 * kilogram);
  v.van().wheelbase.reset();
  CHECK(v.says("Not given: wheelbase and front axle to cargo."));
  v.van().empty_rear.reset();
  CHECK(v.says("Not given: empty axles, wheelbase and front axle to cargo."));
}

TEST_CASE("A front axle with less than a fifth of the whole hardly steers") {
  Van v;
  v.van().limit_rear = given(9000 * kilogram);
  v.van().gross = v.van().payload = given(9000 * kilogram);
  v.show.loads[0].stands[0].from_front = 4.665 * metre;  // 2 m behind the rear axle
  // Without people: front 1290 - m x 2 / 3.665, whole 2190 + m; a fifth where m = 852 / (0.2 + 2 / 3.665) = 1142.5 kg.
  v.kit.cases[0].weighed = given(1142 * kilogram);
  CHECK(v.check().outcome == Outcome::within);
  v.kit.cases[0].weighed = given(1143 * kilogram);
  CHECK(v.check().outcome == Outcome::over);
  CHECK(v.says("At departure: the front axle carries less than a fifth, and hardly steers: move mass forward."));
}

TEST_CASE("A trailer's tongue below its window, its axle above its plate, and what its figures lack") {
  Trailer t;
  for (StandsAt& spot : t.show.loads[0].stands) spot.from_front = 2.2 * metre;  // all over the axle: 85 kg of 1480
  CHECK(t.check().outcome == Outcome::over);
  CHECK(t.check().says.english().find("At departure: tongue 5.7 % of the whole, 10 % at least: move mass forward.") !=
        std::string::npos);
  t.kit.vehicles[0].tongue_from = given(85.0 / 1480);
  CHECK(t.check().outcome == Outcome::over);  // the axle: 665 + 730
  CHECK(t.check().says.english().find("At departure: axle 1395.0 kg of 1300.0 kg, 95.0 kg too much: take load off.") !=
        std::string::npos);
  t.kit.vehicles[0].limit_axle = given(1395 * kilogram);
  CHECK(t.check().outcome == Outcome::within);
  t.kit.vehicles[0].limit_tongue = given(84 * kilogram);
  CHECK(
      t.check().says.english().find("At departure: tongue 85.0 kg of 84.0 kg, 1.0 kg too much: move load back, or take "
                                    "it off.") != std::string::npos);
  t.kit.vehicles[0].coupling_to_cargo.reset();
  CHECK(t.check().says.english().find("Not given: coupling to axle and to cargo.") != std::string::npos);
  t.kit.vehicles[0].empty_tongue.reset();
  t.kit.vehicles[0].limit_axle.reset();
  CHECK(
      t.check().says.english().find("Not given: payload, or gross and empty masses, empty axle and tongue, coupling to "
                                    "axle and to cargo, limit of the axle.") != std::string::npos);
}

TEST_CASE("Straps: their limits, and half of the load") {
  Trailer t;
  t.show.loads[0].stands.clear();
  Strap strap;
  strap.count = 2;
  strap.over = true;
  t.show.loads[0].straps = {strap};
  t.show.loads[0].length = given(8 * foot);
  CHECK(t.check().says.english().find("Not given: the working load limit of its straps.") != std::string::npos);
  t.show.loads[0].straps[0].limit = given(182 * kilogram);
  CHECK(t.check().says.english().find(
            "Straps count 364.0 kg, half the load is 365.0 kg: add straps, or stronger ones.") != std::string::npos);
  t.show.loads[0].straps[0].limit = given(182.5 * kilogram);
  CHECK(t.check().outcome == Outcome::within);
  t.show.loads[0].length = given(4 * foot);  // short and light: one, where nothing blocks it forward
  t.show.loads[0].straps[0].count = 1;
  t.show.loads[0].straps[0].limit = given(400 * kilogram);
  CHECK(t.check().says.english().find("1 straps, 2 are asked: add 1.") != std::string::npos);  // 730 kg, above 1100 lb
  t.show.loads[0].blocked = true;
  CHECK(t.check().outcome == Outcome::within);
}
