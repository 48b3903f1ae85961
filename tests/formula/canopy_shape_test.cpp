// SPDX-License-Identifier: MIT
// Reading a canopy on the safe side: each thing not stated is never kinder than any value it could have.
#include "formula/canopy_shape.h"

#include <catch2/catch.hpp>

using namespace dunnage;
using namespace dunnage::unit;

namespace {
CanopyShape shape(RoofShape roof) {
  CanopyShape s;
  s.roof = roof;
  s.length = 4 * metre;
  s.width = 3 * metre;
  s.eaves = 2.1 * metre;
  s.peak = 2.6 * metre;
  s.blockage = 0;
  s.own = 20 * kilogram;
  return s;
}
Mass needed(const CanopyShape& s) { return ballast_per_leg(read_canopy(s).stand, 10 * metre_per_second); }
}  // namespace

TEST_CASE("What is not stated never asks less than what could be") {
  for (RoofShape roof :
       {RoofShape::flat, RoofShape::single_slope, RoofShape::two_slope, RoofShape::four_slope}) {
    const CanopyShape stated = shape(roof);
    CanopyShape s = stated;
    s.own.reset();
    CHECK(needed(s) >= needed(stated));
    for (double blockage = 0; blockage <= 1; blockage += 0.1) {
      CanopyShape blocked = stated, open = stated;
      blocked.blockage = blockage;
      open.blockage.reset();
      CHECK(needed(open) >= needed(blocked));
    }
    for (double pitch = 0; pitch <= 30; pitch += 2.5) {
      CanopyShape known = stated, unknown = stated;
      known.pitch = pitch;
      unknown.eaves.reset();
      CHECK(needed(unknown) >= needed(known));
    }
  }
}

TEST_CASE("A steep single slope is worse with nothing under it, so that is read when it is not stated") {
  CanopyShape s = shape(RoofShape::single_slope);
  s.pitch = 30;
  s.blockage.reset();
  CHECK(read_canopy(s).force.up == Approx(-1.8));
  CHECK(read_canopy(s).assumptions.front() ==
        "what is under the roof is not stated: open, which is worse here");
}

TEST_CASE("Walls and what hangs never ask less") {
  for (RoofShape roof :
       {RoofShape::flat, RoofShape::single_slope, RoofShape::two_slope, RoofShape::four_slope}) {
    CanopyShape s = shape(roof);
    Mass before = needed(s);
    for (int walls = 1; walls <= 4; ++walls) {
      s.walls = walls;
      CHECK(needed(s) >= before);
      before = needed(s);
    }
    s.hung.push_back({1 * square_metre, {}});
    CHECK(needed(s) > before);
  }
}

TEST_CASE("The pitch comes from the heights over the shorter side") {
  CHECK(*read_canopy(shape(RoofShape::two_slope)).pitch == Approx(18.43).margin(0.005));    // 0.5 over 1.5
  CHECK(*read_canopy(shape(RoofShape::single_slope)).pitch == Approx(9.46).margin(0.005));  // 0.5 over 3
}

TEST_CASE("A roof that no table covers asks for the maker's limit") {
  CHECK(read_canopy(shape(RoofShape::four_slope)).needs_maker_limit);
  CHECK_FALSE(read_canopy(shape(RoofShape::two_slope)).needs_maker_limit);
  CanopyShape closed = shape(RoofShape::two_slope);
  closed.walls = 3;
  CHECK(read_canopy(closed).needs_maker_limit);
  CanopyShape steep = shape(RoofShape::two_slope);
  steep.peak = 3.2 * metre;
  CHECK(read_canopy(steep).needs_maker_limit);
  steep.own_uplift = 1.6;
  CHECK_FALSE(read_canopy(steep).needs_maker_limit);
  CHECK(read_canopy(steep).force.up == Approx(-1.6));
}

TEST_CASE("Two slopes too flat for the table take the worse of its two middle rows") {
  CanopyShape s = shape(RoofShape::two_slope);
  s.pitch = 2;
  CHECK(read_canopy(s).force.up == Approx(-.6));
  CHECK(read_canopy(s).force.down == Approx(.3));
}

TEST_CASE("Flat roofs load the windward legs: 3/8 of the pull on each of four") {
  const CanopyReading r = read_canopy(shape(RoofShape::flat));
  const Pressure q = 100 * pascal;
  CHECK(leg_pull(r.stand, q) / newton == Approx(100 * 0.5 * 12 * 3 / 8));
}
