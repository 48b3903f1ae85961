// SPDX-License-Identifier: MIT
// What stands where, for kits of a few cases: who is left out, who stands on whom, who comes off first.
#include <algorithm>
#include <array>
#include <catch2/catch.hpp>

#include "../effort.h"
#include "random_show.h"

using namespace dunnage;
using namespace dunnage::instances;

namespace {

const char* const van =
    "[house]\nname = \"H\"\n\n[[vehicle]]\ncode = \"V\"\nkind = \"van\"\ncargo = \"300 x 170 x 180 cm\"\n"
    "doors = [{ where = \"rear\", size = \"150 x 170 cm\" }]\n";

/// `size` with its unit; `more`: further lines.
std::string box(const std::string& code, const std::string& size, const std::string& mass, const std::string& more = {},
                int count = 1) {
  return fmt::format(
      "\n[[case]]\ncode = \"{0}\"\nname = \"{0}\"\nform = \"box\"\ncount = {4}\ngoes = \"always\"\nvehicle = "
      "\"V\"\nsize = \"{1}\"\n"
      "weighed = \"{2}\"\n{3}\n",
      code, size, mass, more, count);
}

const std::string plain_show = "kit = \"kit\"\n[show]\ntitle = \"T\"\ndate = 2027-06-19\n\n";
const std::string two_stops =
    plain_show +
    "[[place]]\ncode = \"gate\"\nname = \"Gate\"\n[[place]]\ncode = \"stage\"\nname = \"Stage\"\n"
    "[[load]]\nvehicle = \"V\"\nstops = [\"gate\", \"stage\"]\n";

struct Loaded {
  World world;
  Loading loading;
  const VehicleLoading& v() const { return loading.vehicles.front(); }
  const LoadedPiece* at(const std::string& code) const {
    for (const LoadedPiece& p : v().pieces)
      if (world.catalogue.units[static_cast<std::size_t>(p.unit)].code == code) return &p;
    return nullptr;
  }
};

Loaded loaded(const std::string& kit, const std::string& show = plain_show, const LoadEffort& effort = {}) {
  Loaded out;
  out.world = read_world({kit, show});
  out.loading = plan_load(out.world.catalogue, out.world.show, out.world.plan, effort);
  return out;
}

double mm(Length l) { return l / unit::millimetre; }
bool crosses(Length a, Length along, Length b, Length other) {
  return mm(a) < mm(b + other) - 0.5 && mm(b) < mm(a + along) - 0.5;
}
bool apart(const Cuboid& a, const Cuboid& b) {
  return !crosses(a.x, a.length, b.x, b.length) || !crosses(a.y, a.width, b.y, b.width) ||
         !crosses(a.z, a.height, b.z, b.height);
}
double shared(const Cuboid& a, const Cuboid& b) {
  const double x = std::min(mm(a.x + a.length), mm(b.x + b.length)) - std::max(mm(a.x), mm(b.x));
  const double y = std::min(mm(a.y + a.width), mm(b.y + b.width)) - std::max(mm(a.y), mm(b.y));
  return x > 0.5 && y > 0.5 ? x * y : 0;
}

/// Inside, apart from pieces and arches, whole bases borne by what may bear, each after what bears it.
void check_vehicle(const World& world, const VehicleLoading& v) {
  const Vehicle& vehicle = *world.catalogue.vehicle(v.vehicle);
  const Size& room = vehicle.cargo->value;
  for (std::size_t i = 0; i < v.pieces.size(); ++i) {
    const LoadedPiece& a = v.pieces[i];
    INFO(world.catalogue.units[static_cast<std::size_t>(a.unit)].code << " in " << v.vehicle);
    CHECK(mm(a.box.x) > -0.1);
    CHECK(mm(a.box.y) > -0.1);
    CHECK(mm(a.box.x + a.box.length) < mm(room.length) + 0.1);
    CHECK(mm(a.box.y + a.box.width) < mm(room.width) + 0.1);
    CHECK(mm(a.box.z + a.box.height) < mm(room.height) + 0.1);
    for (const CargoBlock& b : vehicle.blocks) CHECK(apart(a.box, {b.x, b.y, b.z, b.length, b.width, b.height}));
    double borne = mm(a.box.z) < 0.5 ? mm(a.box.length) * mm(a.box.width) : 0;
    for (std::size_t j = 0; j < v.pieces.size(); ++j) {
      const LoadedPiece& b = v.pieces[j];
      if (i == j) continue;
      CHECK(apart(a.box, b.box));
      if (std::abs(mm(b.box.z + b.box.height) - mm(a.box.z)) > 0.5 || shared(a.box, b.box) == 0) continue;
      borne += shared(a.box, b.box);
      const Case& below = world.catalogue.case_at(b.unit);
      CHECK(j < i);
      CHECK(below.stack);
      CHECK(std::find(below.marks.begin(), below.marks.end(), Mark::fragile) == below.marks.end());
      CHECK(world.plan.rows[static_cast<std::size_t>(a.unit)].mass <=
            world.plan.rows[static_cast<std::size_t>(b.unit)].mass);
    }
    CHECK(borne > mm(a.box.length) * mm(a.box.width) - 1);
  }
}

/// What comes off first has nothing of a later stop on it or between it and the door.
void check_stops(const VehicleLoading& v) {
  for (const LoadedPiece& first : v.pieces)
    for (const LoadedPiece& later : v.pieces) {
      if (first.stop >= later.stop) continue;
      const bool behind = mm(later.box.x + later.box.length) > mm(first.box.x + first.box.length) + 0.5;
      const bool in_way = behind && crosses(first.box.y, first.box.width, later.box.y, later.box.width) &&
                          crosses(first.box.z, first.box.height, later.box.z, later.box.height);
      CHECK(!in_way);
      CHECK(!(shared(first.box, later.box) > 0 && later.box.z > first.box.z));
    }
}

void check_all_of(const World& world, const Loading& loading) {
  std::vector<int> seen(world.catalogue.units.size(), 0);
  for (const VehicleLoading& v : loading.vehicles) {
    check_vehicle(world, v);
    check_stops(v);
    for (const LoadedPiece& p : v.pieces) ++seen[static_cast<std::size_t>(p.unit)];
    for (const LeftOut& l : v.left) ++seen[static_cast<std::size_t>(l.unit)];
  }
  for (const int unit : world.plan.pulled()) CHECK(seen[static_cast<std::size_t>(unit)] == 1);
}

std::string digest(const Loading& loading) {
  std::string out;
  for (const VehicleLoading& v : loading.vehicles) {
    out += fmt::format("{} {} {}\n", v.vehicle, v.work, v.left.size());
    for (const LoadedPiece& p : v.pieces)
      out += fmt::format("{} {} {} {} {} {} {}\n", p.unit, p.row, p.stop, static_cast<int>(p.stance), mm(p.box.x),
                         mm(p.box.y), mm(p.box.z));
  }
  return out;
}

}  // namespace

TEST_CASE("the heavy stand on the floor and the light on what bears them") {
  const Loaded l =
      loaded(std::string(van) + box("LOW", "60 x 160 x 70 cm", "60 kg", "wheels = true\nstack = \"40 kg\"") +
             box("TOP", "55 x 50 x 30 cm", "12 kg"));
  REQUIRE(l.at("LOW"));
  REQUIRE(l.at("TOP"));
  CHECK(mm(l.at("LOW")->box.z) == 0);
  CHECK(mm(l.at("TOP")->box.z) == Approx(700));
  check_all_of(l.world, l.loading);
}

TEST_CASE("nothing stands on what is fragile, what bears too little, or what nobody typed") {
  for (const char* more : {"marks = [\"fragile\"]\nstack = \"40 kg\"", "stack = \"11 kg\"",
                           "marks = [\"no-stack\"]\nstack = \"40 kg\"", "stack_count = 0\nstack = \"40 kg\"", ""}) {
    const Loaded l = loaded(std::string(van) + box("LOW", "60 x 160 x 70 cm", "60 kg", more) +
                            box("TOP", "55 x 50 x 30 cm", "12 kg"));
    REQUIRE(l.at("TOP"));
    CHECK(mm(l.at("TOP")->box.z) == 0);
  }
}

TEST_CASE("no more stand one above the other than a case takes") {
  for (const int most : {1, 2, 3}) {
    const Loaded l =
        loaded(std::string(van) +
               box("LOW", "280 x 140 x 40 cm", "60 kg", fmt::format("stack = \"400 kg\"\nstack_count = {}", most)) +
               box("TOP", "280 x 130 x 10 cm", "5 kg", "stack = \"90 kg\"", 3));
    REQUIRE(l.at("LOW"));
    CHECK(l.v().pieces.size() == static_cast<std::size_t>(1 + most));
    CHECK(l.v().left.size() == static_cast<std::size_t>(3 - most));
  }
}

TEST_CASE("a case lies only as its kit says") {
  const std::string tall = "40 x 40 x 200 cm";
  CHECK(loaded(std::string(van) + box("TALL", tall, "20 kg")).at("TALL") == nullptr);
  const Loaded l = loaded(std::string(van) + box("TALL", tall, "20 kg", "lies = [\"flat\"]"));
  REQUIRE(l.at("TALL"));
  CHECK(l.at("TALL")->stance == Stance::flat);
}

TEST_CASE("what does not fit says what is wrong and by how much") {
  const auto left = [](const std::string& kit) { return loaded(std::string(van) + kit).v().left; };
  const auto size = left(box("A", "310 x 50 x 50 cm", "20 kg"));
  REQUIRE(size.size() == 1);
  CHECK(size[0].want == LeftOut::Want::size);
  CHECK(size[0].by == Approx(0.1));
  CHECK(size[0].proved);
  const auto door = left(box("A", "160 x 155 x 50 cm", "20 kg"));
  REQUIRE(door.size() == 1);
  CHECK(door[0].want == LeftOut::Want::door);
  CHECK(door[0].by == Approx(0.05));
  const auto floor = left(box("A", "100 x 100 x 50 cm", "20 kg", "", 6));
  REQUIRE(floor.size() == 3);
  CHECK(floor[0].want == LeftOut::Want::floor);
  CHECK(floor[0].by == Approx(0.9));
  CHECK(floor[0].proved);
  const auto length = left(box("A", "100 x 90 x 50 cm", "20 kg", "", 4));
  REQUIRE(length.size() == 1);
  CHECK(length[0].want == LeftOut::Want::length);
  CHECK_FALSE(length[0].proved);
}

TEST_CASE("plates come before room: what is too heavy stays, and is named") {
  const Loaded l = loaded(std::string(van) + "payload = \"100 kg\"\n" + box("A", "50 x 50 x 50 cm", "60 kg") +
                          box("B", "50 x 50 x 50 cm", "50 kg") + box("C", "50 x 50 x 50 cm", "30 kg"));
  REQUIRE(l.v().left.size() == 1);
  CHECK(l.v().left[0].want == LeftOut::Want::mass);
  CHECK(l.v().left[0].by == Approx(40));
  CHECK(l.at("B") == nullptr);
}

TEST_CASE("what comes off first stands at the door, whatever it weighs") {
  const Loaded l = loaded(std::string(van) + box("DEEP", "60 x 160 x 60 cm", "20 kg", "place = \"stage\"") +
                              box("DOOR", "60 x 160 x 60 cm", "90 kg", "place = \"gate\""),
                          two_stops);
  REQUIRE(l.at("DEEP"));
  REQUIRE(l.at("DOOR"));
  CHECK(l.at("DEEP")->box.x < l.at("DOOR")->box.x);
  CHECK(l.at("DOOR")->stop == 0);
  check_all_of(l.world, l.loading);
}

TEST_CASE("what comes off first may stand deep before a side door, where somebody typed where that is") {
  const std::string pieces = box("ROW", "180 x 100 x 170 cm", "90 kg") +
                             box("LAST", "105 x 165 x 60 cm", "90 kg", "place = \"stage\"") +
                             box("FIRST", "110 x 65 x 150 cm", "40 kg", "place = \"gate\"");
  for (const char* side : {"left", "right"}) {
    const auto with = [&](const char* at) {
      std::string kit = van;
      kit.replace(kit.find("cm\" }]"), 7,
                  fmt::format("cm\" }}, {{ where = \"{} side\", size = \"120 x 160 cm\"{} }}]", side, at));
      return loaded(kit + pieces, two_stops);
    };
    const Loaded none = with(""), l = with(", at = \"0 cm\"");
    CHECK(none.v().left.size() == 1);
    REQUIRE(l.v().pieces.size() == 3);
    CHECK(l.at("FIRST")->box.x < l.at("LAST")->box.x);
    CHECK((l.at("FIRST")->box.y > l.at("ROW")->box.y) == (std::string(side) == "right"));
    check_vehicle(l.world, l.v());
  }
}

TEST_CASE("long pieces lie along a wall, bags go in last") {
  const Loaded l = loaded(std::string(van) + box("BOX", "60 x 120 x 60 cm", "40 kg", "stack = \"40 kg\"") +
                          "\n[[case]]\ncode = \"LONG\"\nname = \"L\"\nform = \"bag\"\ngoes = \"always\"\nvehicle = "
                          "\"V\"\nsize = \"160 x 25 x 25 cm\"\nweighed = \"20 kg\"\n"
                          "\n[[case]]\ncode = \"SOFT\"\nname = \"S\"\nform = \"bag\"\ngoes = \"always\"\nvehicle = "
                          "\"V\"\nsize = \"50 x 40 x 25 cm\"\nweighed = \"8 kg\"\n");
  REQUIRE(l.v().pieces.size() == 3);
  CHECK(l.at("LONG")->row == 0);
  CHECK((mm(l.at("LONG")->box.y) == 0 || mm(l.at("LONG")->box.y) == 1450));
  CHECK(mm(l.at("SOFT")->box.z) == Approx(600));
  check_all_of(l.world, l.loading);
}

/// What four boxes in a trailer rest on its tongue as planned, kg, and the whole trailer's mass. `more` follows its
/// keys.
std::array<double, 2> planned_tongue(const std::string& more) {
  const std::string trailer =
      "[house]\nname = \"H\"\n\n[[vehicle]]\ncode = \"V\"\nkind = \"trailer\"\ncargo = \"300 x 170 x 180 cm\"\n"
      "empty_axle = \"600 kg\"\nempty_tongue = \"80 kg\"\ncoupling_to_axle = \"300 cm\"\ncoupling_to_cargo = \"120 "
      "cm\"\n"
      "tongue_from = 10\ntongue_to = 15\n" +
      more;
  const Loaded l = loaded(trailer + box("HEAVY", "60 x 160 x 60 cm", "200 kg", "wheels = true") +
                          box("LIGHT", "60 x 160 x 60 cm", "30 kg", "", 3));
  CHECK(l.v().pieces.size() == 4);
  double tongue = 80, gross = 680;
  for (const LoadedPiece& p : l.v().pieces) {
    const double kg = l.world.plan.rows[static_cast<std::size_t>(p.unit)].mass.si();
    tongue += kg * (1 - (1.2 + p.box.x.si() + p.box.length.si() / 2) / 3);
    gross += kg;
  }
  return {tongue, gross};
}

TEST_CASE("rows are set so that the tongue is within its window, and within the plate of the hitch") {
  const auto [tongue, gross] = planned_tongue("");
  CHECK(tongue / gross > 0.0999);
  CHECK(tongue / gross < 0.1501);
  const auto [light, all] =
      planned_tongue("pulled_by = \"VAN\"\n\n[[vehicle]]\ncode = \"VAN\"\nkind = \"van\"\nlimit_tongue = \"115 kg\"\n");
  CHECK(tongue > 115);
  CHECK(light < 115.01);
  CHECK(light / all > 0.0999);
}

TEST_CASE("one piece that fits nowhere keeps nothing else at home") {
  std::string small = box("A", "40 x 40 x 40 cm", "10 kg", "", 5);
  small.erase(small.find("vehicle = \"V\"\n"), 14);
  const Loaded l = loaded(std::string(van) + box("BIG", "500 x 50 x 50 cm", "20 kg") + small);
  CHECK(l.v().pieces.size() == 5);
  REQUIRE(l.v().left.size() == 1);
  CHECK(l.v().left[0].proved);
}

TEST_CASE("of the vehicles owned, the fewest that take it all, the lightest first") {
  const std::string kit =
      "[house]\nname = \"H\"\n"
      "[[vehicle]]\ncode = \"BIG\"\nkind = \"van\"\ncargo = \"400 x 180 x 190 cm\"\nempty_front = \"1500 "
      "kg\"\nempty_rear = \"1000 kg\"\n"
      "[[vehicle]]\ncode = \"V\"\nkind = \"van\"\ncargo = \"300 x 170 x 180 cm\"\nempty_front = \"900 kg\"\nempty_rear "
      "= \"700 kg\"\n"
      "[[vehicle]]\ncode = \"TOW\"\nkind = \"trailer\"\npulled_by = \"V\"\ncargo = \"300 x 170 x 180 cm\"\n";
  const auto sets = [](const std::string& text) {
    const World world = read_world({text, plain_show});
    return vehicles_that_suffice(world.catalogue, world.show, world.plan);
  };
  CHECK(sets(kit + box("A", "100 x 80 x 50 cm", "20 kg", "", 4)) ==
        std::vector<std::vector<std::string>>{{"V"}, {"BIG"}});
  CHECK(sets(kit + box("A", "100 x 80 x 50 cm", "20 kg", "", 10)) ==
        std::vector<std::vector<std::string>>{{"V", "TOW"}, {"BIG", "V"}});
}

TEST_CASE("random shows keep every rule or say what is left out") {
  int left = 0;
  for (unsigned seed = 1; seed <= turns(500); ++seed) {
    INFO("seed " << seed);
    const World world =
        read_world(ShowMaker(seed).make(8 + static_cast<int>(seed % 20), static_cast<int>(seed % 4), seed % 3 == 0));
    const Loading loading = plan_load(world.catalogue, world.show, world.plan, {5'000'000, 20});
    check_all_of(world, loading);
    for (const VehicleLoading& v : loading.vehicles) left += static_cast<int>(v.left.size());
    if (seed % 50 == 0)
      CHECK(digest(loading) == digest(plan_load(world.catalogue, world.show, world.plan, {5'000'000, 20})));
  }
  CHECK(left > 0);
}
