// SPDX-License-Identifier: MIT
// Every sentence about a load as planned, each where it is due.
#include <catch2/catch.hpp>

#include "check/load_stages.h"
#include "check/rules.h"
#include "small_load.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

namespace {
Finding loading_of(const SmallLoad& small) {
  Plan plan = small.plan();
  plan.loading = small.loading;
  for (const Finding& f : check_all(make_catalogue(small.kit), small.show, plan).list)
    if (f.rule == RuleName::loading) return f;
  return {};
}
bool says(const SmallLoad& small, std::string_view part) {
  return loading_of(small).says.english().find(part) != std::string::npos;
}
/// The small load with a trailer of 750 kg behind its van, a case of 100 kg over the axle.
SmallLoad towing() {
  SmallLoad s;
  s.kit.vehicles[0].hitch_behind = given(1.1 * metre);
  s.kit.vehicles[0].limit_tongue = given(100 * kilogram);
  s.kit.vehicles[0].train = given(5000 * kilogram);
  Vehicle t;
  t.code = text("TRAILER");
  t.kind = Vehicle::Kind::trailer;
  t.cargo = given(Size{3 * metre, 1.6 * metre, 1.7 * metre});
  t.empty_axle = given(665 * kilogram);
  t.empty_tongue = given(85 * kilogram);
  t.coupling_to_axle = given(3 * metre);
  t.coupling_to_cargo = given(1.5 * metre);
  t.limit_axle = given(1300 * kilogram);
  t.limit_tongue = given(100 * kilogram);
  t.gross = given(1500 * kilogram);
  t.tongue_from = given(0.05);
  t.tongue_to = given(0.15);
  t.pulled_by = given<std::string>("VAN");
  s.kit.vehicles.push_back(t);
  s.add_case("CRATE", 1, {1.0, 0.8, 0.6}, 100, "foh", "TRAILER");
  s.loading.vehicles.push_back({"TRAILER", {}, {}, 0});
  s.put("CRATE", 1.0, 0.4, 0, 1, 0, 1);
  return s;
}
std::vector<std::string> missing(const SmallLoad& s) {
  std::vector<std::string> out;
  for (const Sentence& one :
       load_stages(make_catalogue(s.kit), s.show, s.plan(), s.loading, s.loading.vehicles[0]).missing)
    out.push_back(one.english());
  return out;
}
}  // namespace

TEST_CASE("A planned load: sources, caution, and what it takes for granted") {
  SmallLoad s;
  s.kit.vehicles[0].people_and_fuel = given(100 * kilogram);
  CHECK(
      whole(loading_of(s)) ==
      "within limit: Planned: 7 pieces, 2 rows, 2 stops.\nassumed: people and fuel count on the front axle and on the "
      "rear axle\nfrom: statics; 49 CFR 393.106, 393.110; DGUV 70\nmind: Keep to the plan, block what rolls, and weigh "
      "each axle once loaded.");
  s.kit.vehicles[0].doors.clear();
  CHECK(assumed(loading_of(s)).starts_with("no door given: loaded from the rear, over its whole width; "));
  s.kit.vehicles[0].doors = {{"rear", 1.5 * metre, 1.6 * metre, {}}, {"right side", 1 * metre, 1.6 * metre, {}}};
  CHECK(assumed(loading_of(s)).starts_with("a side door whose place is not typed is not used; "));
  s.show.loads[0].stands = {{text("TRUNK-1"), {}, {}}, {text("DESK"), {}, {}}};
  CHECK(assumed(loading_of(s)).ends_with("; the plan gives TRUNK-1, DESK places of its own, whatever was typed"));
}

TEST_CASE("What is left out, for each reason, and how far that is proved") {
  const auto left = [](LeftOut::Want want, bool proved, double by) {
    SmallLoad s;
    s.loading.vehicles[0].pieces.pop_back();
    s.loading.vehicles[0].left = {{s.unit_of("TUB-3"), want, proved, by}};
    CHECK(loading_of(s).outcome == Outcome::over);
    const std::string all = loading_of(s).says.english();
    return all.substr(all.find("Left out"));
  };
  using W = LeftOut::Want;
  CHECK(left(W::size, true, 0.1) ==
        "Left out, and proved that no plan can take it: TUB-3: too large for the cargo space, by 10 cm.");
  CHECK(left(W::door, true, 0) == "Left out, and proved that no plan can take it: TUB-3: too large for the doors.");
  CHECK(left(W::volume, true, 0.25) ==
        "Left out, and proved that no plan can take all: TUB-3: the load is more than the cargo space, by 250.0 l.");
  CHECK(left(W::floor, true, 0.5) ==
        "Left out, and proved that no plan can take all: TUB-3: the load is more than the floor, by 0.50 m².");
  CHECK(left(W::room, false, 0) == "Left out, which is not proved: TUB-3: no room was found.");
  SmallLoad two;
  two.loading.vehicles[0].pieces.pop_back();
  two.loading.vehicles[0].pieces.pop_back();
  two.loading.vehicles[0].left = {{two.unit_of("TUB-2"), W::room, false, 0}, {two.unit_of("TUB-3"), W::room, false, 0}};
  CHECK(says(two, "Left out, which is not proved: TUB-2, TUB-3: no room was found."));
}

TEST_CASE("A cargo space that nobody typed") {
  SmallLoad s;
  s.kit.vehicles[0].cargo.reset();
  s.loading.vehicles.clear();
  CHECK(loading_of(s).says.english() ==
        "Not given: its cargo space. Measure it inside, between the arches too, and type it.");
}

TEST_CASE("What a van needs to know of its trailer, each by name") {
  CHECK(missing(towing()).empty());
  SmallLoad s = towing();
  s.kit.vehicles[0].hitch_behind.reset();
  s.kit.vehicles[0].train.reset();
  s.box("CRATE").weighed.reset();
  CHECK(missing(s) == std::vector<std::string>{"rear axle to hitch", "what it may weigh with its trailer",
                                               "the mass of 1 pieces in its trailer"});
  s = towing();
  s.loading.vehicles.pop_back();
  s.loading.unsized = {s.unit_of("CRATE")};
  CHECK(missing(s) ==
        std::vector<std::string>{"where the load of the trailer stands", "the size of 1 pieces in its trailer"});
  s.kit.vehicles[1].coupling_to_cargo.reset();
  CHECK(missing(s).front() == "empty axle, tongue and coupling of its trailer");
}

TEST_CASE("Heavier on the right, at every stop where it is") {
  SmallLoad s;
  for (LoadedPiece& p : s.loading.vehicles[0].pieces) p.box.y = 1.6 * metre - p.box.width;
  const auto stages = load_stages(make_catalogue(s.kit), s.show, s.plan(), s.loading, s.loading.vehicles[0]).stages;
  REQUIRE(stages[0].warns.size() == 1);
  CHECK(stages[0].warns[0].english() == "At departure: the right side is heavier by 195.0 kg.");
}

TEST_CASE("A plan with a unit that stays at home, has no size, or is in no kit") {
  SmallLoad s;
  Plan plan = s.plan();
  plan.rows[static_cast<std::size_t>(s.unit_of("DESK"))].goes = false;
  std::string told;
  for (const LoadFault& f : load_faults(make_catalogue(s.kit), s.show, plan, s.loading))
    told += f.says.english() + "\n";
  CHECK(told.find("DESK is in the plan, and stays at home.\n") != std::string::npos);
  s.loading.unsized = {400};
  CHECK(s.says("Unit 400 is in the plan, and the kit has no such unit."));
  s.loading.unsized.clear();
  s.box("DESK").size.reset();
  CHECK(s.says("DESK is drawn, and nobody typed its size."));
}

TEST_CASE("A piece that no way leads in for, and one that cannot come off at the end") {
  SmallLoad s;
  s.kit.vehicles[0].doors = {{"rear", 0.5 * metre, 1.6 * metre, {}}, {"right", 1 * metre, 1.6 * metre, {}}};
  s.kit.vehicles[0].blocks = {{"step", 2.5 * metre, {}, {}, 0.4 * metre, 1.6 * metre, 0.3 * metre, {}}};
  CHECK(s.says("TRUNK-1 cannot come in: the vehicle leaves it no way from a door."));
  s.show.loads[0].stops.clear();
  for (LoadedPiece& p : s.loading.vehicles[0].pieces) p.stop = 0;
  CHECK(s.says().find(" cannot come off at the end: ") != std::string::npos);
}
