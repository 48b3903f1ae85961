// SPDX-License-Identifier: MIT
// The lifting filter and team factors against HSE INDG143 / L23 Appendix 1.
#include <catch2/catch.hpp>

#include "formula/team_lift.h"

using namespace dunnage;
using namespace dunnage::unit;

TEST_CASE("HSE INDG143: the filter, kg") {
  const double rows[5][4] = {{7, 3, 10, 5}, {13, 7, 20, 10}, {16, 10, 25, 15}, {13, 7, 20, 10}, {7, 3, 10, 5}};
  for (int zone = 0; zone < 5; ++zone) {
    const auto z = static_cast<HandZone>(zone);
    CHECK(filter_limit(Lifter::anyone, z, Reach::close) / kilogram == rows[zone][0]);
    CHECK(filter_limit(Lifter::anyone, z, Reach::far) / kilogram == rows[zone][1]);
    CHECK(filter_limit(Lifter::crew, z, Reach::close) / kilogram == rows[zone][2]);
    CHECK(filter_limit(Lifter::crew, z, Reach::far) / kilogram == rows[zone][3]);
  }
  CHECK(best_zone_limit(Lifter::crew) / kilogram == 25);
  CHECK(best_zone_limit(Lifter::anyone) / kilogram == 16);
}

TEST_CASE("HSE INDG143: the least of the zones entered") {
  const auto least = filter_limit(Lifter::crew, {HandZone::elbow_to_knuckle, HandZone::below_shin}, Reach::close);
  REQUIRE(least);
  CHECK(*least / kilogram == 10);
  CHECK_FALSE(filter_limit(Lifter::crew, std::vector<HandZone>{}, Reach::close));
}

TEST_CASE("The zones that a lift passes, by heights of a body from memory") {
  const auto cm = [](double x) { return x * centimetre; };
  CHECK(zones_between(cm(80), cm(100)) == std::vector<HandZone>{HandZone::elbow_to_knuckle});
  CHECK(zones_between(cm(30), cm(101)) == std::vector<HandZone>{HandZone::elbow_to_knuckle, HandZone::knuckle_to_shin});
  CHECK(zones_between(cm(0), cm(200)).size() == 5);
  CHECK(zones_between(cm(25), cm(25)) == std::vector<HandZone>{HandZone::below_shin});
}

TEST_CASE("HSE L23: team handling") {
  const Mass man = 25 * kilogram, fifty = 50 * kilogram;
  CHECK(*team_limit({man, man}) / kilogram == Approx(33.3).margin(0.05));      // T1, a page prints 33
  CHECK(*team_limit({fifty, fifty}) / kilogram == Approx(66.7).margin(0.05));  // T2, a page truncates to 66
  CHECK(*team_limit({fifty, fifty, fifty}) / kilogram == Approx(75));          // T3
  CHECK_FALSE(team_limit({man, man, man, man}));
}

TEST_CASE("HSE INDG143, older copies: rate and twist; gaps in the leaflet are refused") {
  CHECK(rate_share(0.5) == 1.0);
  CHECK(rate_share(1.5) == 0.7);
  CHECK(rate_share(6) == 0.5);
  CHECK(rate_share(13) == 0.2);
  CHECK_FALSE(rate_share(3.5));
  CHECK_FALSE(rate_share(10));
  CHECK(twist_share(45) == 1.0);
  CHECK(twist_share(46) == 0.9);
  CHECK(twist_share(91) == 0.8);
}
