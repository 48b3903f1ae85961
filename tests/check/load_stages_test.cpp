// SPDX-License-Identifier: MIT
// Axles and tongue on the way, from positions as drawn.
#include "check/load_stages.h"

#include <catch2/catch.hpp>

#include "small_load.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

namespace {

/// The worked examples as drawn loads: pieces 0.4 m long whose middles stand where the example puts them.
struct Worked : SmallLoad {
  Worked() {
    kit.cases.clear();
    loading.vehicles.clear();
    show.loads.clear();
    kit.vehicles.clear();
  }
  void vehicle(const Vehicle& v, std::vector<Text> stops) {
    kit.vehicles.push_back(v);
    Load load;
    load.vehicle = v.code;
    load.stops = std::move(stops);
    show.loads.push_back(load);
    loading.vehicles.push_back({v.code.value, {}, {}, 0});
  }
  void piece_at(const char* code, double mass, double middle, double cargo_from, const char* place, int stop) {
    const std::size_t at = loading.vehicles.size() - 1;
    add_case(code, 1, {0.4, 0.4, 0.4}, mass, place, loading.vehicles[at].vehicle.c_str());
    put(code, middle - cargo_from - 0.2, 0.6, 0, 1, stop, at);
  }
  void add_worked_van() {
    Vehicle v;
    v.code = text("VAN");
    v.cargo = given(Size{4.5 * metre, 1.6 * metre, 1.7 * metre});
    v.empty_front = given(1290 * kilogram);
    v.empty_rear = given(900 * kilogram);
    v.people_and_fuel = given(0 * kilogram);  // weighed with them
    v.limit_front = given(1850 * kilogram);
    v.limit_rear = given(2250 * kilogram);
    v.gross = given(3500 * kilogram);
    v.train = given(5000 * kilogram);
    v.wheelbase = given(3.6 * metre);
    v.front_to_cargo = given(1 * metre);
    v.hitch_behind = given(1.1 * metre);
    vehicle(v, {text("one"), text("two")});
    piece_at("AMP", 180, 1.6, 1, "two", 1);
    piece_at("DESK", 140, 2.3, 1, "two", 1);
    piece_at("SUBS", 190, 3.1, 1, "two", 1);
    piece_at("TRUNKS", 320, 3.9, 1, "one", 0);
    piece_at("STANDS", 60, 4.6, 1, "one", 0);
  }
  void add_worked_trailer(double desk = 2.0) {
    Vehicle v;
    v.code = text("TRAILER");
    v.kind = Vehicle::Kind::trailer;
    v.cargo = given(Size{4 * metre, 1.6 * metre, 1.7 * metre});
    v.empty_axle = given(665 * kilogram);
    v.empty_tongue = given(85 * kilogram);
    v.limit_axle = given(1300 * kilogram);
    v.limit_tongue = given(250 * kilogram);
    v.gross = given(1500 * kilogram);
    v.coupling_to_axle = given(3.2 * metre);
    v.coupling_to_cargo = given(0.9 * metre);
    v.tongue_from = given(0.10);
    v.tongue_to = given(0.15);
    v.pulled_by = given<std::string>("VAN");
    vehicle(v, {text("zero"), text("two")});
    piece_at("T-AMP", 180, 1.2, 0.9, "two", 1);
    piece_at("T-DESK", 140, desk, 0.9, "two", 1);
    piece_at("T-SUBS", 190, 2.75, 0.9, "two", 1);
    piece_at("T-CABLE", 160, 3.55, 0.9, "zero", 0);
    piece_at("T-STANDS", 60, 4.3, 0.9, "zero", 0);
  }
  StagedLoad stages(std::size_t vehicle = 0) const {
    return load_stages(make_catalogue(kit), show, plan(), loading, loading.vehicles[vehicle]);
  }
};

std::vector<std::string> english(const std::vector<Sentence>& all) {
  std::vector<std::string> out;
  for (const Sentence& one : all) out.push_back(one.english());
  return out;
}
double kg(const std::optional<Mass>& mass) { return mass.value() / kilogram; }

}  // namespace

TEST_CASE("Example 4: a van at departure and after its first stop") {
  Worked w;
  w.add_worked_van();
  const StagedLoad s = w.stages();
  REQUIRE(s.stages.size() == 3);
  CHECK(kg(s.stages[0].front) == Approx(1423.6).margin(0.05));
  CHECK(kg(s.stages[0].rear) == Approx(1656.4).margin(0.05));
  CHECK(kg(s.stages[0].total) == Approx(3080));
  CHECK(s.stages[1].after == "one");
  CHECK(kg(s.stages[1].front) == Approx(1466.9).margin(0.05));  // 380 kg came off, and the front axle bears more
  CHECK(kg(s.stages[1].rear) == Approx(1233.1).margin(0.05));
  CHECK(s.missing.empty());
  CHECK(s.stages[1].over.empty());
  w.kit.vehicles[0].limit_front = given(1450 * kilogram);  // legal as it leaves, not after one stop
  CHECK(w.stages().stages[0].over.empty());
  CHECK(english(w.stages().stages[1].over) ==
        std::vector<std::string>{"After one: front axle 1467.0 kg of 1450.0 kg, 17.0 kg too much: move load "
                                 "back, or take it off."});
}

TEST_CASE("Examples 3 and 4: the trailer, and the van that pulls it") {
  Worked w;
  w.add_worked_van();
  w.add_worked_trailer();
  const StagedLoad trailer = w.stages(1);
  CHECK(kg(trailer.stages[0].tongue) == Approx(238.6).margin(0.05));
  CHECK(kg(trailer.stages[0].axle) == Approx(1241.4).margin(0.05));
  CHECK(kg(trailer.stages[0].total) == Approx(1480));
  CHECK(*trailer.stages[0].tongue_share == Approx(0.161).margin(0.0005));
  CHECK(english(trailer.stages[0].over) ==
        std::vector<std::string>{"At departure: tongue 16.2 % of the whole, 15 % at most: move mass back."});
  const StagedLoad van = w.stages(0);
  CHECK(kg(van.stages[0].front) == Approx(1350.7).margin(0.05));
  CHECK(kg(van.stages[0].rear) == Approx(1967.9).margin(0.05));
  CHECK(kg(van.stages[0].train) == Approx(3080 + 1480));
  // Where the trailer alone stops the van is weighed too: its tongue has changed.
  REQUIRE(van.stages.size() == 4);
  CHECK(van.stages[1].after == "one");
  CHECK(van.stages[2].after == "zero");
  CHECK(kg(van.stages[2].rear) - kg(van.stages[1].rear) ==
        Approx((238.6 + 17.5 + 20.6 - 238.6) * 4.7 / 3.6).margin(0.1));
  Worked moved;
  moved.add_worked_van();
  moved.add_worked_trailer(2.75);
  CHECK(kg(moved.stages(1).stages[0].tongue) == Approx(205.8).margin(0.05));
  CHECK(moved.stages(1).stages[0].over.empty());
}

TEST_CASE("Stops of a van and its trailer become one way") {
  using V = std::vector<std::string>;
  CHECK(one_way({"stage", "foh"}, {"gate", "stage", "foh"}) == V{"gate", "stage", "foh"});
  CHECK(one_way({"stage", "foh"}, {"stage", "gate"}) == V{"stage", "foh", "gate"});
  CHECK(one_way({}, {"gate"}) == V{"gate"});
  CHECK(one_way({"a", "b"}, {"b", "a"}) == V{"b", "a"});
}

TEST_CASE("A mirrored load has mirrored statics") {
  SmallLoad w;
  const auto stages = [&] {
    return load_stages(make_catalogue(w.kit), w.show, w.plan(), w.loading, w.loading.vehicles[0]).stages;
  };
  const std::vector<LoadStage> as_drawn = stages();
  for (LoadedPiece& p : w.loading.vehicles[0].pieces) p.box.y = 1.6 * metre - p.box.y - p.box.width;
  const std::vector<LoadStage> mirrored = stages();
  REQUIRE(mirrored.size() == as_drawn.size());
  for (std::size_t i = 0; i < mirrored.size(); ++i) {
    CHECK(mirrored[i].left / kilogram == Approx(as_drawn[i].right / kilogram));
    CHECK(mirrored[i].right / kilogram == Approx(as_drawn[i].left / kilogram));
    CHECK(kg(mirrored[i].front) == Approx(kg(as_drawn[i].front)));
    CHECK(kg(mirrored[i].rear) == Approx(kg(as_drawn[i].rear)));
  }
}

TEST_CASE("What is not known is not worked out, and named") {
  Worked w;
  w.add_worked_van();
  w.kit.vehicles[0].empty_rear.reset();
  w.kit.vehicles[0].gross.reset();
  const StagedLoad s = w.stages();
  CHECK(english(s.missing) == std::vector<std::string>{"payload, or gross and empty masses", "empty axles"});
  CHECK_FALSE(s.stages[0].front);
  CHECK(s.allowed.empty());
  Worked towing;
  towing.add_worked_van();
  towing.add_worked_trailer();
  towing.kit.vehicles[1].coupling_to_axle.reset();
  CHECK_FALSE(towing.stages(0).stages[0].front);  // its tongue rests on the van, and is not known
  CHECK(english(towing.stages(0).missing) ==
        std::vector<std::string>{"limit of the hitch", "empty axle, tongue and coupling of its trailer"});
  CHECK(english(towing.stages(1).missing) == std::vector<std::string>{"coupling to axle and to cargo"});
}

TEST_CASE("A load heavy on one side is worth a word, at every stop") {
  Worked w;
  w.add_worked_van();
  for (LoadedPiece& p : w.loading.vehicles[0].pieces) p.box.y = {};
  const StagedLoad s = w.stages();
  CHECK(english(s.stages[0].warns) == std::vector<std::string>{"At departure: the left side is heavier by 890.0 kg."});
  CHECK(s.stages[2].warns.empty());
}

TEST_CASE("The curve of what the plates bear holds the load that is legal") {
  Worked w;
  w.add_worked_van();
  const StagedLoad s = w.stages();
  REQUIRE(s.allowed.size() > 10);
  for (const auto& [centre, most] : s.allowed) CHECK(most / kilogram <= 1310.001);
  CHECK(s.allowed.front().first == Length{});
}
