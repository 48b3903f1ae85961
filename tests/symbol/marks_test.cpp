// SPDX-License-Identifier: MIT
// Pictures keep inside their box, so that nothing runs into the words beside them.
#include "symbol/marks.h"

#include <catch2/catch.hpp>

using namespace dunnage;

namespace {

void check_inside(const Figure& figure) {
  REQUIRE_FALSE(figure.paths.empty());
  const double slack = 0.02;
  for (const Figure::Path& path : figure.paths) {
    if (path.grey == 1) continue;  // white may cut beyond the edge
    REQUIRE(path.steps.front().kind == Figure::Step::Kind::move);
    const double ink = path.stroke / 2;
    for (const Figure::Step& step : path.steps) {
      if (step.kind == Figure::Step::Kind::close) continue;
      const bool curve = step.kind == Figure::Step::Kind::curve;
      const double x = curve ? step.cx : step.ax, y = curve ? step.cy : step.ay;
      CHECK(x - ink >= -slack);
      CHECK(x + ink <= figure.width + slack);
      CHECK(y - ink >= -slack);
      CHECK(y + ink <= 1 + slack);
    }
  }
}

}  // namespace

TEST_CASE("every picture keeps inside its box") {
  for (int sign = 0; sign <= static_cast<int>(Sign::aid); ++sign) {
    INFO("sign " << sign);
    check_inside(figure(static_cast<Sign>(sign)));
  }
  for (int people = 1; people <= 4; ++people) check_inside(lift_by(people));
  for (int people = 1; people <= 2; ++people) check_inside(roll_by(people));
}

TEST_CASE("more people make a wider picture") {
  CHECK(lift_by(1).width < lift_by(2).width);
  CHECK(lift_by(2).width < lift_by(3).width);
  CHECK(lift_by(3).width < lift_by(4).width);
  CHECK(roll_by(1).width < roll_by(2).width);
}

TEST_CASE("strokes are thick enough for a one-bit print at 12 mm and 203 dpi: five dots") {
  for (int sign = 0; sign <= static_cast<int>(Sign::aid); ++sign)
    for (const Figure::Path& path : figure(static_cast<Sign>(sign)).paths)
      if (path.stroke > 0) CHECK(path.stroke * 12 / 25.4 * 203 > 5 * 0.9);
}
