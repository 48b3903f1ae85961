// SPDX-License-Identifier: MIT
// The judge of load plans: a good one has no fault, and each fault is found in a plan that has it.
#include <catch2/catch.hpp>

#include "small_load.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

TEST_CASE("A load that can be built has no fault") {
  SmallLoad good;
  CHECK(good.says().empty());
  // The same seen in a mirror is as good: walls change places, nothing else does.
  for (LoadedPiece& p : good.loading.vehicles[0].pieces) p.box.y = 1.6 * metre - p.box.y - p.box.width;
  CHECK(good.says().empty());
}

TEST_CASE("Two pieces in one place, in a wheel arch, out of the space") {
  SmallLoad a;
  a.move("TUB-2", 0.8, 0.3, 0);
  CHECK(a.says("TUB-1 and TUB-2 are drawn in one place."));
  SmallLoad b;
  b.move("TUB-2", 1.5, 0, 0);
  CHECK(b.says("TUB-2 is drawn in the left wheel arch."));
  SmallLoad c;
  c.move("POLE", 1.2, 1.22, 0);
  CHECK(c.says("POLE reaches out of the cargo space."));
  SmallLoad d;
  d.kit.vehicles[0].cargo.reset();
  CHECK(d.says("TUB-1 reaches out of the cargo space."));
}

TEST_CASE("Nothing floats, and nothing hangs over") {
  SmallLoad a;
  a.move("TUB-3", 0.8, 0, 0.45);
  CHECK(a.says("TUB-3 is not borne on its whole base."));
  SmallLoad b;
  b.move("TUB-3", 1.0, 0, 0.4);
  CHECK(b.says("TUB-3 is not borne on its whole base."));
  SmallLoad c;
  c.move("TUB-3", 0.8, 0.2, 0.4);  // half on each of two
  CHECK(c.says().empty());
}

TEST_CASE("Stances: this way up, sides as they are, lying only as typed") {
  SmallLoad a;
  LoadedPiece& tub = a.piece("TUB-2");
  tub.box = {1.4 * metre, 0.4 * metre, {}, 0.4 * metre, 0.4 * metre, 0.6 * metre};
  CHECK(a.says("TUB-2 is drawn with sides that it does not have."));
  tub.stance = Stance::on_end;
  CHECK(a.says("TUB-2 lies as its case does not say that it may."));
  a.box("TUB").lies = {Lying::end};
  CHECK(a.says().empty());
  a.box("TUB").marks = {Mark::this_way_up};
  CHECK(a.says("TUB-2 lies, and is marked this way up."));
  a.box("TUB").marks.clear();
  a.box("TUB").wheels = true;
  CHECK(a.says().empty());  // who typed how it may lie knew of its wheels
  SmallLoad b;
  b.piece("TUB-2").stance = Stance::turned;
  CHECK(b.says("TUB-2 is drawn with sides that it does not have."));
}

TEST_CASE("Through the door as it travels") {
  SmallLoad a;
  a.kit.vehicles[0].doors[0].width = 0.55 * metre;
  CHECK(a.says("TRUNK-1 goes through no door as it stands."));
  CHECK_FALSE(a.says("POLE goes through no door as it stands."));  // its narrow side ahead
  SmallLoad b;
  b.kit.vehicles[0].doors[0].height = 0.5 * metre;
  CHECK(b.says("TRUNK-1 goes through no door as it stands."));
  CHECK_FALSE(b.says("DESK goes through no door as it stands."));
}

TEST_CASE("What may stand on what") {
  SmallLoad a;
  a.box("TUB").stack = given(14 * kilogram);
  CHECK(a.says("TUB-1 carries 15.0 kg, and bears 14.0 kg."));
  a.box("TUB").stack.reset();
  CHECK(a.says("TUB-3 stands on TUB-1, and nobody typed what that bears."));
  a.box("TUB").marks = {Mark::no_stack};
  CHECK(a.says("TUB-3 stands on TUB-1, on which nothing may stand."));
  a.box("TUB").marks = {Mark::fragile};
  CHECK(a.says("TUB-3 stands on TUB-1, which is fragile."));
  SmallLoad b;
  b.box("DESK").weighed = given(61 * kilogram);
  CHECK(b.says("DESK stands on TRUNK-1, which is lighter."));
  b.box("DESK").weighed.reset();
  CHECK(b.says("DESK stands on TRUNK-1, and the mass of one is not known."));
}

TEST_CASE("What is tall and on wheels stands on the floor") {
  SmallLoad a;
  a.box("TRUNK").stack = given(200 * kilogram);
  a.add_case("RACK", 1, {0.6, 0.4, 0.8}, 20, "foh");
  a.put("RACK", 0, 0.7, 0.6, 1, 1);
  CHECK(a.says().empty());
  a.box("RACK").wheels = true;
  CHECK(a.says().empty());  // as broad as half its height
  a.box("RACK").size = given(Size{0.6 * metre, 0.4 * metre, 0.82 * metre});
  a.piece("RACK").box.height = 0.82 * metre;
  CHECK(a.says() == "RACK is tall, on wheels, and stands off the floor.\n");
}

TEST_CASE("Hands: how high two lift, how far they reach over what stays, and under the top of the door") {
  SmallLoad a;
  a.add_case("LOW", 1, {0.6, 0.6, 1.0}, 60, "foh").stack = given(50 * kilogram);
  a.add_case("TOP", 1, {0.6, 0.6, 0.4}, 12, "foh");
  a.put("LOW", 2.2, 0.2, 0, 3, 1);
  a.put("TOP", 2.2, 0.2, 1.0, 3, 1);
  CHECK_FALSE(a.says("TOP stands higher than two people may lift it."));
  a.box("TOP").weighed = given(40 * kilogram);
  CHECK(a.says("TOP stands higher than two people may lift it."));
  a.box("TOP").weighed = given(12 * kilogram);
  a.kit.vehicles[0].doors[0].height = 1.3 * metre;  // 20 cm behind it
  CHECK(a.says("TOP stands above the top of the rear door, without room behind it to lift it there."));
  a.kit.vehicles[0].doors[0].height = 1.4 * metre;
  CHECK_FALSE(a.says("above the top"));
  SmallLoad b;
  b.add_case("TOP", 1, {0.6, 0.4, 0.2}, 10, "stage");
  b.put("TOP", 0.1, 0.7, 0.6, 1, 0);  // on TRUNK-2, which stays
  CHECK(b.says().empty());
  b.add_case("LONG", 1, {1.6, 0.4, 0.2}, 30, "foh");
  b.put("LONG", 0.8, 0.8, 0, 2, 1);
  CHECK(b.says("TOP cannot come off at stage: LONG is in the way."));
}

TEST_CASE("How many stand on it one above the other") {
  SmallLoad a;
  a.add_case("BOX", 2, {0.6, 0.4, 0.2}, 2, "stage").stack = given(5 * kilogram);
  a.put("BOX-1", 0.8, 0, 0.8, 2, 0);
  a.put("BOX-2", 0.8, 0.4, 0.4, 2, 0);
  CHECK(a.says().empty());
  a.box("TUB").stack_count = given(2);
  CHECK(a.says().empty());  // two on TUB-1, one on TUB-2: each pile counts by itself
  a.box("TUB").stack_count = given(1);
  CHECK(a.says() == "TUB-1 has 2 pieces on it, one above the other, and takes 1.\n");
  a.box("TUB").stack_count = given(0);
  CHECK(a.says("TUB-3 stands on TUB-1, on which nothing may stand."));
}

TEST_CASE("Mass on top is handed down by share of contact, through all that bears it") {
  SmallLoad a;
  a.add_case("LID", 1, {0.6, 0.4, 0.1}, 12, "stage");
  a.put("LID", 0.8, 0.2, 0.4, 2, 0);                                             // half on TUB-1, half on TUB-2
  a.loading.vehicles[0].pieces.erase(a.loading.vehicles[0].pieces.begin() + 6);  // TUB-3 elsewhere
  a.put("TUB-3", 1.4, 0.6, 0, 3, 0);
  CHECK(a.says().empty());
  a.box("TUB").stack = given(5.9 * kilogram);
  CHECK(a.says("TUB-1 carries 6.0 kg, and bears 5.5 kg."));
  a.box("TUB").stack = given(11 * kilogram);
  a.box("LID").stack = given(20 * kilogram);
  a.add_case("BOX", 1, {0.6, 0.4, 0.2}, 11, "stage");
  a.put("BOX", 0.8, 0.2, 0.5, 2, 0);  // through the lid: half of 23 on each
  CHECK(a.says("TUB-2 carries 11.5 kg, and bears 11.0 kg."));
}

TEST_CASE("Last off first in: what comes off early is not behind what stays") {
  SmallLoad a;
  a.box("TUB").place_word = "foh";
  a.box("TRUNK").place_word = "stage";
  for (const char* code : {"TUB-1", "TUB-2", "TUB-3"}) a.piece(code).stop = 1;
  for (const char* code : {"TRUNK-1", "TRUNK-2"}) a.piece(code).stop = 0;
  CHECK(a.says("TRUNK-2 cannot come off at stage: TUB-2 is in the way."));
  CHECK(a.says("TRUNK-1 cannot come off at stage: DESK is in the way."));  // and that stands on it
  SmallLoad b;
  b.piece("TUB-1").stop = 1;
  CHECK(b.says("TUB-1 is drawn for another stop than stage."));
  SmallLoad c;
  c.kit.vehicles[0].doors = {{"hatch in the roof", 2 * metre, 2 * metre, {}}};
  CHECK(c.says("POLE cannot come off at stage: the vehicle leaves it no way to a door."));
}

TEST_CASE("A side door serves what stands before it, where somebody typed where it is") {
  SmallLoad a;
  a.box("TUB").place_word = "foh";
  a.box("TRUNK").place_word = "stage";
  a.box("DESK").place_word = "stage";
  a.box("POLE").place_word = "foh";
  for (const char* code : {"TUB-1", "TUB-2", "TUB-3", "POLE"}) a.piece(code).stop = 1;
  for (const char* code : {"TRUNK-1", "TRUNK-2", "DESK"}) a.piece(code).stop = 0;
  CHECK_FALSE(a.says().empty());
  a.kit.vehicles[0].doors.push_back({"left side", 1 * metre, 1.5 * metre, {}});
  CHECK_FALSE(a.says().empty());
  a.kit.vehicles[0].doors[1].at = given(0 * metre);
  CHECK(a.says().empty());
  a.kit.vehicles[0].doors[1].where = "right side";  // before it the pole, which stays
  CHECK(a.says("TRUNK-2 cannot come off at stage: TUB-2 is in the way."));
  a.kit.vehicles[0].doors[1] = {
      "left side", 0.7 * metre, 1.5 * metre, {}, given(0 * metre)};  // narrower than a trunk is long
  CHECK(a.says("TRUNK-2 cannot come off at stage: TUB-2 is in the way."));
}

TEST_CASE("The door of its way is one that the piece passes") {
  SmallLoad a;
  a.kit.vehicles[0].doors = {{"rear", 1.5 * metre, 0.5 * metre, {}}, {"left side", 1 * metre, 1.5 * metre, {}}};
  CHECK(a.says("TRUNK-1 cannot come off at foh: the vehicle leaves it no way to a door."));
  a.kit.vehicles[0].doors[1].at = given(0 * metre);
  CHECK(a.says() == "TRUNK-2 cannot come in: TRUNK-1 is in the way.\n");
  auto& pieces = a.loading.vehicles[0].pieces;
  std::swap(pieces[0], pieces[1]);
  CHECK(a.says().empty());
}

TEST_CASE("A wheel arch is gone around only where the aisle beside it is wide enough") {
  SmallLoad a;
  a.kit.vehicles[0].blocks[1] = {"step", 1.8 * metre, 0.6 * metre, {}, 0.4 * metre, 0.2 * metre, 0.2 * metre, {}};
  CHECK(a.says("TRUNK-2 cannot come off at foh: TRUNK-1 is in the way.") == false);
  CHECK(a.says().empty());
  a.kit.vehicles[0].blocks[1].width = 0.6 * metre;  // 0.45 and 0.4 m are left beside it
  CHECK(a.says("TRUNK-2 cannot come off at foh: the vehicle leaves it no way to a door."));
}

TEST_CASE("The order of loading can be followed") {
  SmallLoad a;
  auto& pieces = a.loading.vehicles[0].pieces;
  std::swap(pieces[0], pieces[2]);  // the desk before the trunk under it
  CHECK(a.says("DESK is loaded before TRUNK-1, which bears it."));
  SmallLoad b;
  auto& later = b.loading.vehicles[0].pieces;
  std::rotate(later.begin(), later.begin() + 4, later.begin() + 6);  // two tubs first
  CHECK(b.says("TRUNK-1 cannot come in: TUB-1 is in the way."));
}

TEST_CASE("Every unit once, in its vehicle") {
  SmallLoad a;
  a.loading.vehicles[0].pieces.pop_back();
  CHECK(a.says("TUB-3 is missing in the plan."));
  a.loading.vehicles[0].left.push_back({a.unit_of("TUB-3"), LeftOut::Want::room, false, 0});
  CHECK(a.says().empty());
  a.loading.unsized.push_back(a.unit_of("TUB-3"));
  CHECK(a.says("TUB-3 is in the plan 2 times."));
  SmallLoad b;
  b.loading.vehicles[0].pieces.push_back(b.piece("TUB-3"));
  CHECK(b.says("TUB-3 is in the plan 2 times."));
  SmallLoad c;
  c.box("TUB").vehicle = "TRAILER";
  CHECK(c.says("TUB-1 stands in VAN, and goes in TRAILER."));
  SmallLoad d;
  d.loading.vehicles[0].pieces[3].unit = 99;
  CHECK(d.says("The plan names a vehicle or a unit that the kit does not have."));
}

TEST_CASE("A plan with a fault loses its pieces, and keeps the reason") {
  SmallLoad a;
  a.move("TUB-3", 1.0, 0, 0.4);
  judge_loading(make_catalogue(a.kit), a.show, a.plan(), a.loading);
  CHECK(a.loading.vehicles[0].pieces.empty());
  CHECK(a.loading.vehicles[0].faults.at(0).unit == "TUB-3");
}
