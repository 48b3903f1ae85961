// SPDX-License-Identifier: MIT
// Boxes into a room, judged by nothing but their corners.
#include "load/pack.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace dunnage;

namespace {

PackBox box(Spot size, int count, bool any_side = false) {
  PackBox out;
  out.count = count;
  std::sort(size.begin(), size.begin() + 2);
  do {
    out.stances.push_back({size, 0});
    if (any_side) continue;
    if (size[0] != size[1]) out.stances.push_back({{size[1], size[0], size[2]}, 0});
    break;
  } while (std::next_permutation(size.begin(), size.end()));
  return out;
}

std::int64_t shared(const StoodBox& a, const StoodBox& b, std::size_t axis) {
  return std::max(0, std::min(a.at[axis] + a.size[axis], b.at[axis] + b.size[axis]) - std::max(a.at[axis], b.at[axis]));
}

/// Inside, apart, and each base borne in full.
void check_stands(const PackProblem& problem, const Packed& packed) {
  for (const StoodBox& a : packed.boxes) {
    std::int64_t borne = a.at[2] == 0 ? std::int64_t{a.size[0]} * a.size[1] : 0;
    for (std::size_t k = 0; k < 3; ++k) {
      CHECK(a.at[k] >= 0);
      CHECK(a.at[k] + a.size[k] <= problem.room[k]);
    }
    for (const StoodBox& b : packed.boxes) {
      if (&a == &b) continue;
      const std::int64_t floor = shared(a, b, 0) * shared(a, b, 1);
      CHECK((floor == 0 || shared(a, b, 2) == 0));
      if (b.at[2] + b.size[2] == a.at[2]) borne += floor;
    }
    for (const PackObstacle& o : problem.obstacles) {
      const StoodBox solid{0, 0, o.from, {o.to[0] - o.from[0], o.to[1] - o.from[1], o.to[2] - o.from[2]}};
      CHECK((shared(a, solid, 0) == 0 || shared(a, solid, 1) == 0 || shared(a, solid, 2) == 0));
    }
    CHECK(borne == std::int64_t{a.size[0]} * a.size[1]);
  }
}

}  // namespace

TEST_CASE("boxes that fill a room fill it") {
  PackProblem problem;
  problem.room = {60, 40, 20};
  problem.boxes = {box({20, 10, 10}, 24)};
  const Packed packed = pack(problem, 1000000);
  CHECK(packed.volume == 60 * 40 * 20);
  check_stands(problem, packed);
}

TEST_CASE("equal tops carry together what neither carries alone") {
  PackProblem problem;
  problem.room = {20, 10, 20};
  problem.boxes = {box({10, 10, 10}, 2), box({20, 10, 10}, 1)};
  const Packed packed = pack(problem, 1000000);
  CHECK(packed.boxes.size() == 3);
  check_stands(problem, packed);
}

TEST_CASE("nothing stands in an arch or on it") {
  PackProblem problem;
  problem.room = {50, 30, 20};
  problem.obstacles = {{{20, 0, 0}, {30, 5, 10}}, {{20, 25, 0}, {30, 30, 10}}};
  problem.boxes = {box({10, 10, 10}, 40), box({20, 5, 5}, 12)};
  const Packed packed = pack(problem, 20000000);
  CHECK(packed.boxes.size() > 20);
  check_stands(problem, packed);
}

TEST_CASE("a rule is asked for every block, alone and with what stands") {
  struct OneHigh : PackRules {
    bool allows(const std::vector<StoodBox>&, const std::vector<StoodBox>& fresh) const override {
      return std::all_of(fresh.begin(), fresh.end(), [](const StoodBox& b) { return b.at[2] == 0; });
    }
  } rules;
  PackProblem problem;
  problem.room = {50, 30, 20};
  problem.boxes = {box({10, 10, 10}, 40)};
  problem.rules = &rules;
  const Packed packed = pack(problem, 1000000);
  CHECK(packed.boxes.size() == 15);
  check_stands(problem, packed);
}

TEST_CASE("the same boxes stand in the same places each time, and more work never packs less") {
  PackProblem problem;
  problem.room = {587, 233, 220};
  problem.boxes = {box({108, 76, 30}, 40, true), box({110, 43, 25}, 33), box({92, 81, 55}, 39)};
  std::int64_t before = 0;
  for (const long budget : {1000000L, 20000000L, 60000000L}) {
    const Packed one = pack(problem, budget), two = pack(problem, budget);
    REQUIRE(one.boxes.size() == two.boxes.size());
    CHECK(one.work == two.work);
    for (std::size_t i = 0; i < one.boxes.size(); ++i) {
      CHECK(one.boxes[i].at == two.boxes[i].at);
      CHECK(one.boxes[i].size == two.boxes[i].size);
    }
    CHECK(one.volume >= before);
    before = one.volume;
    check_stands(problem, one);
  }
  CHECK(static_cast<double>(before) > 0.85 * 587 * 233 * 220);
}

TEST_CASE("a room longer than any block may be is packed as any other") {
  for (const Spot& room : {Spot{40000, 2500, 2500}, Spot{100000, 2500, 2500}, Spot{100000, 100000, 100000}}) {
    PackProblem problem;
    problem.room = room;
    problem.boxes = {box({600, 400, 301}, 200), box({605, 407, 209}, 200)};
    const Packed packed = pack(problem, 1);
    CHECK(packed.boxes.size() == 400);
    check_stands(problem, packed);
  }
}

TEST_CASE("a box with a side that no block may have is left out, not packed as a shorter one") {
  PackProblem problem;
  problem.room = {70000, 2501, 2501};
  problem.boxes = {box({33001, 701, 501}, 2), box({1201, 801, 1001}, 3)};
  const Packed packed = pack(problem, 1);
  CHECK(packed.boxes.size() == 3);
  check_stands(problem, packed);
}
