// SPDX-License-Identifier: MIT
// The cover against a sample of published instances; tests/bench.sh takes them all. The files stay where they are:
// without them this test says so and checks nothing.
#include <catch2/catch.hpp>

#include "published_covers.h"

using namespace dunnage;

TEST_CASE("published covers are covered, and what is said of the answer is so") {
  const auto covers = published_covers(INSTANCES_DIR);
  if (covers.empty()) {
    WARN("skipped: the published covers are not here");
    return;
  }
  constexpr std::size_t every = 3;  // about half a minute on a slow machine
  for (std::size_t i = 0; i < covers.size(); i += every) {
    INFO(covers[i].name);
    Diagnostics diagnostics;
    const Plan plan = plan_published(covers[i], 1, diagnostics);
    REQUIRE(!diagnostics.has_errors());
    CHECK(plan.shortages.empty());
    const double found = plan.cover.mass / unit::kilogram, bound = plan.cover.bound / unit::kilogram;
    const auto optimum = static_cast<double>(covers[i].optimum);
    if (plan.cover.proved) CHECK(found == Approx(optimum).margin(1e-6));
    CHECK(bound <= optimum + 1e-6);
    CHECK(found >= optimum - 1e-6);
    CHECK(found <= 1.02 * optimum + 1);
  }
}
