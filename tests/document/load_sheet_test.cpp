// SPDX-License-Identifier: MIT
// The load sheet of a planned load: one set of numbers in its list and its pictures, and nothing drawn that was
// dropped.
#include "document/load_sheet.h"

#include <catch2/catch.hpp>

#include "small_house.h"

using namespace dunnage;

namespace {

Cuboid box_at(double x, double y, double z, double length, double width, double height) {
  const auto m = [](double value) { return value * unit::metre; };
  return {m(x), m(y), m(z), m(length), m(width), m(height)};
}

/// FOH at the bulkhead, BAG-1 on it, BAG-3 behind it; CASH has no place.
struct PlannedHouse : SmallHouse {
  PlannedHouse() {
    Vehicle van;
    van.code = typed("VAN");
    van.cargo = given(Size{3 * unit::metre, 1.6 * unit::metre, 1.7 * unit::metre});
    van.blocks = {{"arch", 1 * unit::metre, {}, {}, 0.8 * unit::metre, 0.15 * unit::metre, 0.25 * unit::metre, {}}};
    van.limit_front = given(1850 * unit::kilogram);
    catalogue.kit.vehicles = {van};
    catalogue.vehicle_by_code = {{"VAN", 0}};
    for (PlanRow& row : plan.rows) row.vehicle = "VAN";
    Load load;
    load.vehicle = typed("VAN");
    load.stops = {typed("foh")};
    show.loads = {load};
    VehicleLoading loading;
    loading.vehicle = "VAN";
    loading.pieces = {{unit_of("FOH"), box_at(0, 0, 0, 0.8, 0.6, 0.6), Stance::upright, 1, 0},
                      {unit_of("BAG-1"), box_at(0, 0, 0.6, 0.4, 0.4, 0.2), Stance::upright, 1, 0},
                      {unit_of("BAG-3"), box_at(0.85, 0.5, 0, 0.3, 0.5, 0.2), Stance::turned, 2, 0}};
    plan.loading = Loading{{loading}, {}};
    Finding finding;
    finding.rule = RuleName::loading;
    finding.subject = {Subject::Kind::vehicle, 0};
    finding.outcome = Outcome::within;
    LoadingDetail detail;
    detail.tie_downs = 1;
    detail.blocked = true;
    detail.length = 1.15 * unit::metre;
    detail.straps_hold = 60 * unit::kilogram;
    detail.bars = {{"", 1.15 * unit::metre, 50 * unit::kilogram}};
    LoadStage departure, empty;
    departure.cargo = 67 * unit::kilogram;
    departure.centre = 0.5 * unit::metre;
    departure.front = 1400 * unit::kilogram;
    empty.after = "foh";
    empty.front = 1380 * unit::kilogram;
    detail.stages = {departure, empty};
    detail.allowed = {{{}, 500 * unit::kilogram}, {3 * unit::metre, 700 * unit::kilogram}};
    finding.detail = detail;
    findings.list = {finding};
  }
  int unit_of(const std::string& code) const { return catalogue.unit_index(code); }
  Section section() const { return made(load_sheet(context())).sections.at(0); }
};

}  // namespace

TEST_CASE("a planned load is listed row by row as it is built, and what has no place is not forgotten") {
  PlannedHouse house;
  CHECK(block_text(house.section(), "rows") ==
        "rows:\n Row 1\n"
        "  [ ] | 1 | FOH | Front trunk | floor, at the left wall | Front of house | 82 lb | roll (ramp: 2), lift: 3 "
        "people\n"
        "  [ ] | 2 | BAG-1 | Ballast bag | on 1 | Front of house | 35 lb | carry, lift: 1 person\n"
        " Row 2, begins 33 in from the bulkhead\n"
        "  [ ] | 3 | BAG-3 | Ballast bag | floor, 20 in from left, crossways | Front of house | 35 lb | carry, lift: 1 "
        "person\n"
        " In no plan: find it a place, or leave it\n"
        "  [ ] |  | CASH | Cash box |  | Front of house | not weighed | carry, lift: weigh first\n"
        " = |  |  | 4 pieces in all |  |  | 152 lb + 1 not weighed | ");
}

TEST_CASE("the pictures of a load have the numbers of its list, the nearest before the farther") {
  PlannedHouse house;
  const Section section = house.section();
  CHECK(block_text(section, "views") ==
        "views:\n bulkhead | From the left | rear\n  3; BAG-3\n  fixed\n  1; FOH\n  2; BAG-1\n  bar bar\n"
        " bulkhead | From above, left wall below | rear\n  fixed\n  1; FOH\n  3; BAG-3\n  2; BAG-1; on 1\n  bar ");
  CHECK(block_text(section, "row-views") ==
        "row-views:\n left | Row 1 | right\n  2; BAG-1\n  1; FOH\n left | Row 2 | right\n  3; BAG-3\n  fixed");
}

TEST_CASE("axles stand beside their limits at every stage, and a dot for each where there is cargo") {
  PlannedHouse house;
  const Section section = house.section();
  CHECK(block_text(section, "weights") ==
        "weights:\n -\n  1  at departure | 148 lb | 0 lb | 0 lb | 3087 lb\n  2  after Front of house | 0 lb | 0 lb | 0 "
        "lb | 3043 lb\n  at most | not given |  |  | 4078 lb");
  CHECK(block_text(section, "chart").find("dot 1") != std::string::npos);
  CHECK(block_text(section, "chart").find("dot 2") == std::string::npos);
  CHECK(block_text(section, "ties").find("Load bar at departure: 45 in from the bulkhead; it holds 111 lb") !=
        std::string::npos);
}

TEST_CASE("a plan with a fault is not drawn; the reason stands first, and the list is by stops") {
  PlannedHouse house;
  VehicleLoading& loading = house.plan.loading->vehicles[0];
  loading.faults = {{"VAN", "BAG-1", Sentence(std::string("BAG-1 floats."))}};
  loading.pieces.clear();
  house.findings.list[0].outcome = Outcome::not_checked;
  house.findings.list[0].detail = std::monostate{};
  house.findings.list[0].says = Sentence(std::string("The plan is dropped."));
  const Section section = house.section();
  CHECK(block_text(section, "over").find("The plan is dropped.") != std::string::npos);
  for (const char* id : {"views", "row-views", "weights", "ties", "chart"}) CHECK(block_text(section, id).empty());
  CHECK(block_text(section, "rows").find("[ ] | 1 | ") != std::string::npos);
}
