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
  for (RoofShape roof : {RoofShape::flat, RoofShape::single_slope, RoofShape::two_slope, RoofShape::four_slope}) {
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
  CHECK(read_canopy(s).assumptions.front().english() ==
        "what is under the roof is not stated: open, which is worse here");
}

TEST_CASE("Walls and what hangs never ask less") {
  for (RoofShape roof : {RoofShape::flat, RoofShape::single_slope, RoofShape::two_slope, RoofShape::four_slope}) {
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
  CHECK(read_canopy(s).force.up == Approx(-.68));  // EN -.6; ASCE 7-22 along the ridge, -.8 x .85, is larger
  CHECK(read_canopy(s).force.down == Approx(.68));
  s.blockage = 1;
  CHECK(read_canopy(s).force.up == Approx(-1.3));
}

TEST_CASE("The larger of the two standards counts, and it is said which") {
  const auto says = [](const CanopyShape& s) {
    for (const Sentence& a : read_canopy(s).assumptions)
      if (a.english() == "uplift by ASCE 7-22, larger here than by EN 1991-1-4") return true;
    return false;
  };
  CanopyShape s = shape(RoofShape::two_slope);
  s.pitch = 6;  // nothing under it: EN -.62 evenly; ASCE -1.1 on one half and -.1 on the other
  CHECK(says(s));
  const CanopyStand stand = read_canopy(s).stand;
  CHECK(stand.wind.lift * stand.lift_share / 12 == Approx(.85 * (.75 * 1.1 + .25 * .1)));
  s.pitch = 20;
  CHECK_FALSE(says(s));
  s = shape(RoofShape::single_slope);  // a quarter in from the edge EN asks more
  CHECK_FALSE(says(s));
}

TEST_CASE("The slope that the wind meets pushes and tilts; steeper never asks less") {
  CanopyShape s = shape(RoofShape::two_slope);
  const CanopyReading r = read_canopy(s);
  CHECK(r.stand.wind.side == Approx(1.3 * 4 * .5));
  CHECK(r.stand.wind.tilt == Approx(1.3 * 4 * .5 * 2.35));
  // pressed: the same tilt, and the roof's downforce on a quarter
  CHECK(leg_press(r.stand, 100 * pascal) / newton ==
        Approx(100 * (r.stand.wind.press / 4 + 1.3 * 4 * .5 * 2.35 / 3 / 2)));
  Speed holds = 100 * metre_per_second;
  for (double peak = 2.1; peak < 3.5; peak += 0.1) {
    s.peak = peak * metre;
    const auto now = lifting_gust(read_canopy(s).stand, 20 * kilogram);
    REQUIRE(now);
    if (peak > 2.3) CHECK(*now <= holds * 1.06);  // a table's row may be kinder than the one before, by little
    holds = *now;
  }
}

TEST_CASE("Flat roofs load the windward legs: 3/8 of the pull on each of four") {
  const CanopyReading r = read_canopy(shape(RoofShape::flat));
  const Pressure q = 100 * pascal;
  CHECK(leg_pull(r.stand, q) / newton == Approx(100 * 0.5 * 12 * 3 / 8));
}
