// SPDX-License-Identifier: MIT
// What must hold for any kit and any show: random ones from fixed seeds, and a brute force that knows no tricks.
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <random>
#include <set>

#include "small_kit.h"

using namespace dunnage;
using namespace dunnage::small;

namespace {

/// Numbers from a fixed seed, the same with every standard library.
struct Dice {
  std::mt19937 engine;
  int roll(int low, int high) { return low + static_cast<int>(engine() % static_cast<unsigned>(high - low + 1)); }
};

struct Random {
  Kit kit;
  Show show;
};

/// A few items (some cables that join), cases that hold some of them, a few that go anyway, and wants for most.
Random random_show(unsigned seed, int items, int cases) {
  Dice dice{std::mt19937(seed)};
  Random out;
  for (int i = 0; i < items; ++i) {
    const bool cable = dice.roll(0, 3) == 0;
    add_item(out.kit, "I" + std::to_string(i), {cable ? "cable" : "thing"}, cable ? dice.roll(3, 20) : 0,
             cable && dice.roll(0, 1) ? "itself" : "");
  }
  for (int k = 0; k < cases; ++k) {
    std::vector<std::pair<std::string, int>> holds;
    for (int i = 0; i < items; ++i)
      if (dice.roll(0, 2) == 0) holds.emplace_back("I" + std::to_string(i), dice.roll(1, 4));
    Case& box = add_case(out.kit, "C" + std::to_string(k), dice.roll(2, 40), holds);
    box.count = dice.roll(1, 2);
    if (dice.roll(0, 5) == 0) box.goes = always();
  }
  for (int i = 0; i < items; ++i)
    if (dice.roll(0, 2) > 0) want(out.show, "I" + std::to_string(i), dice.roll(1, 5));
  want(out.show, "thing", dice.roll(1, 3));
  want(out.show, "cable", dice.roll(1, 2), dice.roll(5, 30));
  return out;
}

int missing(const Plan& plan) {
  int sum = 0;
  for (const Shortage& s : plan.shortages) sum += s.missing;
  return sum;
}

std::set<std::string> codes(const Catalogue& c, const Plan& plan) {
  std::set<std::string> out;
  for (const int u : plan.pulled()) out.insert(c.units[static_cast<std::size_t>(u)].code);
  return out;
}

void check_supply(const Catalogue& c, const Plan& plan) {
  std::map<std::pair<int, int>, int> used;
  for (const Demand& d : plan.demands) {
    CHECK(d.covered + d.from_site <= d.count);
    for (const Demand::By& by : d.by) used[{by.unit, by.item}] += by.count;
  }
  for (const auto& [who, count] : used) {
    if (who.second < 0) continue;
    int holds = 0;
    for (const Content& content : c.case_at(who.first).holds)
      if (c.item_index(content.item.value) == who.second) holds += content.count;
    CHECK(count <= holds);
    CHECK(plan.rows[static_cast<std::size_t>(who.first)].goes);
  }
  int asked = 0, covered = 0;
  for (const Demand& d : plan.demands) {
    asked += d.count - d.from_site;
    covered += d.covered;
  }
  CHECK(asked - covered == missing(plan));
}

}  // namespace

TEST_CASE("supply covers demand, or the shortages say exactly the difference; no piece serves twice") {
  for (unsigned seed = 1; seed <= 60; ++seed) {
    INFO("seed " << seed);
    const Random r = random_show(seed, 6, 9);
    const Catalogue c = make_catalogue(r.kit);
    check_supply(c, plan_show(c, r.show));
  }
}

TEST_CASE("no unit that goes only to cover could stay at home") {
  for (unsigned seed = 1; seed <= 25; ++seed) {
    const Random r = random_show(seed, 5, 8);
    const Catalogue c = make_catalogue(r.kit);
    const Plan plan = plan_show(c, r.show);
    for (const int u : plan.pulled()) {
      const auto& reasons = plan.rows[static_cast<std::size_t>(u)].reasons;
      if (std::any_of(reasons.begin(), reasons.end(), [](const Reason& x) { return x.why != Why::demand; })) continue;
      Kit less = r.kit;
      for (std::size_t other = 0; other < c.units.size(); ++other)
        if (!plan.rows[other].goes || static_cast<int>(other) == u)
          less.changes.push_back({text(c.units[other].code), Sourced<std::string>{"away", {}}, {}, {}, {}});
      INFO("seed " << seed << ", without " << c.units[static_cast<std::size_t>(u)].code);
      CHECK(missing(plan_show(make_catalogue(less), r.show)) > missing(plan));
    }
  }
}

TEST_CASE("one more case that goes only when asked never makes the proved mass larger") {
  for (unsigned seed = 1; seed <= 40; ++seed) {
    Random r = random_show(seed, 6, 8);
    const Plan before = plan_show(make_catalogue(r.kit), r.show);
    Dice dice{std::mt19937(seed + 1000)};
    add_case(r.kit, "NEW", dice.roll(1, 30), {{"I0", dice.roll(1, 5)}, {"I1", dice.roll(1, 5)}});
    const Plan after = plan_show(make_catalogue(r.kit), r.show);
    INFO("seed " << seed);
    CHECK(before.cover.proved);
    CHECK(after.cover.proved);
    if (missing(after) == missing(before)) CHECK(after.cover.mass.si() <= before.cover.mass.si() + 1e-9);
    CHECK(missing(after) <= missing(before));
  }
}

TEST_CASE("order of tables and files never changes what goes") {
  for (unsigned seed = 1; seed <= 25; ++seed) {
    Random r = random_show(seed, 6, 9);
    const Catalogue c = make_catalogue(r.kit);
    const auto before = codes(c, plan_show(c, r.show));
    std::mt19937 engine(seed);
    std::shuffle(r.kit.cases.begin(), r.kit.cases.end(), engine);
    std::shuffle(r.kit.items.begin(), r.kit.items.end(), engine);
    std::shuffle(r.show.wants.begin(), r.show.wants.end(), engine);
    const Catalogue shuffled = make_catalogue(r.kit);
    INFO("seed " << seed);
    CHECK(codes(shuffled, plan_show(shuffled, r.show)) == before);
  }
}

TEST_CASE("the cover of small multi-cover problems weighs what brute force finds") {
  for (unsigned seed = 1; seed <= 60; ++seed) {
    Dice dice{std::mt19937(seed)};
    Kit kit;
    Show show;
    const int items = dice.roll(1, 4), cases = dice.roll(2, 9);
    std::vector<std::vector<int>> holds(static_cast<std::size_t>(cases),
                                        std::vector<int>(static_cast<std::size_t>(items)));
    std::vector<int> mass, demand;
    for (int i = 0; i < items; ++i) add_item(kit, "I" + std::to_string(i));
    for (int k = 0; k < cases; ++k) {
      std::vector<std::pair<std::string, int>> list;
      for (int i = 0; i < items; ++i) {
        const int n = std::max(0, dice.roll(-2, 5));
        holds[static_cast<std::size_t>(k)][static_cast<std::size_t>(i)] = n;
        if (n > 0) list.emplace_back("I" + std::to_string(i), n);
      }
      mass.push_back(dice.roll(1, 25));
      add_case(kit, "C" + std::to_string(k), mass.back(), list);
    }
    for (int i = 0; i < items; ++i) {
      demand.push_back(dice.roll(1, 7));
      want(show, "I" + std::to_string(i), demand.back());
    }
    int best = -1;
    for (int set = 0; set < 1 << cases; ++set) {
      int weight = 0;
      std::vector<int> have(static_cast<std::size_t>(items), 0);
      for (int k = 0; k < cases; ++k) {
        if (!(set >> k & 1)) continue;
        weight += mass[static_cast<std::size_t>(k)];
        for (int i = 0; i < items; ++i)
          have[static_cast<std::size_t>(i)] += holds[static_cast<std::size_t>(k)][static_cast<std::size_t>(i)];
      }
      bool enough = true;
      for (int i = 0; i < items; ++i)
        enough = enough && have[static_cast<std::size_t>(i)] >= demand[static_cast<std::size_t>(i)];
      if (enough && (best < 0 || weight < best)) best = weight;
    }
    const Plan plan = plan_show(make_catalogue(kit), show);
    INFO("seed " << seed);
    CHECK(plan.cover.proved);
    CHECK((best < 0) == (missing(plan) > 0));
    if (best >= 0) CHECK(plan.cover.mass / unit::kilogram == Approx(best));
  }
}
