// SPDX-License-Identifier: MIT
// What the rules say of a planned load.
#include <catch2/catch.hpp>

#include "check/rules.h"
#include "small_load.h"

using namespace dunnage;
using namespace dunnage::test;
using namespace dunnage::unit;

namespace {
Finding loading_of(SmallLoad& small, const char* name = "loading") {
  Plan plan = small.plan();
  plan.loading = small.loading;
  const Catalogue c = make_catalogue(small.kit);
  judge_loading(c, small.show, plan, *plan.loading);
  for (const Finding& f : check_all(c, small.show, plan).list)
    if (dunnage::name(f.rule) == std::string_view(name)) return f;
  return {};
}
}  // namespace

TEST_CASE("A planned load says its rows and stops, and what to tie") {
  SmallLoad small;
  const Finding f = loading_of(small);
  CHECK(f.outcome == Outcome::within);
  CHECK(f.says.english() == "Planned: 7 pieces, 2 rows, 2 stops.");
  const auto& d = std::get<LoadingDetail>(f.detail);
  CHECK(d.blocked);
  CHECK(d.tie_downs == 1);  // 2 m long, blocked by the bulkhead
  CHECK(d.straps_hold / kilogram == Approx(195 / 2.0));
  REQUIRE(d.bars.size() == 2);  // after the last stop there is nothing to hold
  CHECK(d.bars[0].stop.empty());
  CHECK(d.bars[0].at / metre == Approx(1.4));
  CHECK(d.bars[0].holds / kilogram == Approx(195 / 2.0));
  CHECK(d.bars[1].stop == "stage");
  CHECK(d.bars[1].at / metre == Approx(0.8));
  CHECK(d.bars[1].holds / kilogram == Approx(70));
}

TEST_CASE("The rule for plates takes places from the plan") {
  SmallLoad small;
  const auto with_plan = std::get<VehicleDetail>(loading_of(small, "vehicle").detail);
  const auto stages = std::get<LoadingDetail>(loading_of(small).detail).stages;
  CHECK(*with_plan.stage.front / kilogram == Approx(*stages[0].front / kilogram));
  CHECK(*with_plan.stage.rear / kilogram == Approx(*stages[0].rear / kilogram));
}

TEST_CASE("What is left out is named, by how much, and whether that is proved") {
  SmallLoad small;
  auto& v = small.loading.vehicles[0];
  v.pieces.pop_back();
  v.left.push_back({small.unit_of("TUB-3"), LeftOut::Want::length, false, 0.12});
  CHECK(loading_of(small).outcome == Outcome::over);
  CHECK(loading_of(small).says.english() ==
        "Planned: 6 pieces, 2 rows, 2 stops. Left out, which is not proved: TUB-3: the rows are too long, by 12 cm.");
  v.left[0] = {small.unit_of("TUB-3"), LeftOut::Want::mass, true, 30};
  CHECK(loading_of(small).says.english().find("Left out, and proved that no plan can take all: TUB-3: the load is "
                                              "above what the vehicle may carry, by 30.0 kg.") != std::string::npos);
}

TEST_CASE("Above a plate after a stop only; and a plan that must not be drawn") {
  SmallLoad small;
  small.kit.vehicles[0].limit_front = given(1330 * kilogram);
  const Finding over = loading_of(small);
  CHECK(over.outcome == Outcome::over);
  CHECK(over.says.english().find("front axle") != std::string::npos);
  SmallLoad broken;
  broken.move("TUB-3", 1.0, 0, 0.4);
  const Finding dropped = loading_of(broken);
  CHECK(dropped.outcome == Outcome::not_checked);
  CHECK(dropped.says.english() ==
        "The plan of this load breaks 1 of its rules; it is dropped and not drawn. Load by hand, and weigh it. "
        "TUB-3 is not borne on its whole base.");
  CHECK(std::holds_alternative<std::monostate>(dropped.detail));
}

TEST_CASE("No size, no cargo space, no plate: not checked") {
  SmallLoad small;
  small.kit.vehicles[0].limit_front.reset();
  CHECK(loading_of(small).outcome == Outcome::not_checked);
  CHECK(loading_of(small).says.english().find("Not given: limits of the axles.") != std::string::npos);
  SmallLoad unsized;
  unsized.loading.unsized.push_back(unsized.unit_of("TUB-3"));
  unsized.loading.vehicles[0].pieces.pop_back();
  CHECK(loading_of(unsized).outcome == Outcome::not_checked);
  CHECK(loading_of(unsized).says.english().find("In no plan, as nobody typed their size: TUB-3.") != std::string::npos);
  SmallLoad roomless;
  roomless.kit.vehicles[0].cargo.reset();
  roomless.loading.vehicles.clear();
  CHECK(loading_of(roomless).says.english().find("Not given: its cargo space.") != std::string::npos);
}

TEST_CASE("A row that stands clear has a bar ahead of it") {
  SmallLoad small;
  for (LoadedPiece& p : small.loading.vehicles[0].pieces)
    if (p.row > 0) p.box.x = p.box.x + (p.row == 1 ? 0.2 : 0.35) * metre;
  const auto d = std::get<LoadingDetail>(loading_of(small).detail);
  REQUIRE(d.bars.size() == 4);
  CHECK(d.bars[0].ahead);
  CHECK(d.bars[0].at / metre == Approx(0.2));
  CHECK(d.bars[0].holds / kilogram == Approx(185 * 0.435));  // both rows; the pole lies along the wall
  CHECK(d.bars[1].at / metre == Approx(1.15));
  CHECK(d.bars[1].holds / kilogram == Approx(45 * 0.435));
  CHECK_FALSE(d.bars[2].ahead);
}

TEST_CASE("A strip that lies across is behind the rows or ahead of them, as a row is: the bar is behind it") {
  SmallLoad small;
  small.box("POLE").size = given(Size{1.3 * metre, 0.2 * metre, 0.2 * metre});
  auto& pieces = small.loading.vehicles[0].pieces;
  std::rotate(pieces.begin() + 3, pieces.begin() + 4, pieces.end());  // it goes in last
  LoadedPiece& pole = small.piece("POLE");
  pole.stance = Stance::turned;
  pole.box = {1.6 * metre, 0 * metre, 0 * metre, 0.2 * metre, 1.3 * metre, 0.2 * metre};
  const auto d = std::get<LoadingDetail>(loading_of(small).detail);
  REQUIRE(d.bars.size() == 3);
  CHECK(d.bars[0].ahead);  // 20 cm behind the tubs
  CHECK(d.bars[0].at / metre == Approx(1.6));
  CHECK(d.bars[0].holds / kilogram == Approx(10 * 0.435));
  CHECK(d.bars[1].at / metre == Approx(1.8));
  CHECK(d.bars[1].holds / kilogram == Approx(195 / 2.0));
  CHECK(d.bars[2].at / metre == Approx(0.8));
}

TEST_CASE("What goes in no vehicle at all is said") {
  SmallLoad small;
  small.add_case("TENT", 2, {0.6, 0.4, 0.2}, 20, "foh").vehicle.clear();
  Plan plan = small.plan();
  plan.loading = small.loading;
  plan.loading->unsized = {small.unit_of("TENT-1"), small.unit_of("TENT-2")};
  Findings findings = check_all(make_catalogue(small.kit), small.show, plan);
  const auto last = std::find_if(findings.list.begin(), findings.list.end(), [](const Finding& f) {
    return name(f.rule) == std::string("loading") && f.called.empty();
  });
  REQUIRE(last != findings.list.end());
  CHECK(last->outcome == Outcome::not_checked);
  CHECK(last->says.english() == "Goes, and in no vehicle: TENT-1, TENT-2. Type its size and its vehicle.");
}
