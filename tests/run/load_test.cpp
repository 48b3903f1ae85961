// SPDX-License-Identifier: MIT
// The load from end to end: the planner before its judge, and what the examples' vehicles carry.
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <set>

#include "../effort.h"
#include "../load/random_show.h"
#include "check/load_faults.h"
#include "load/plan_load.h"
#include "program.h"

using namespace dunnage;
using namespace dunnage::instances;

TEST_CASE("random shows: the judge, who shares no code with the planner, finds no fault in any load") {
  std::map<std::string, int> faulty;
  for (unsigned seed = 1; seed <= turns(500); ++seed) {
    const World world =
        read_world(ShowMaker(seed).make(8 + static_cast<int>(seed % 20), static_cast<int>(seed % 4), seed % 3 == 0));
    const Loading loading = plan_load(world.catalogue, world.show, world.plan, {5'000'000, 20});
    for (const LoadFault& fault : load_faults(world.catalogue, world.show, world.plan, loading))
      ++faulty["seed " + std::to_string(seed) + ": " + fault.says.english()];
  }
  std::string all;
  for (const auto& [what, times] : faulty) all += what + "\n";
  CHECK(all.empty());
  if (!all.empty()) FAIL_CHECK(all.substr(0, 2000));
}

TEST_CASE("random shows with side doors and limits to piles: no fault, and no more is left out than without them") {
  std::string all;
  int left = 0, left_without = 0;
  for (unsigned seed = 1; seed <= turns(200); ++seed) {
    World world = read_world(ShowMaker(seed).make(8 + static_cast<int>(seed % 20), static_cast<int>(seed % 4), true));
    const auto count = [&](int& sum) {
      const Loading loading = plan_load(world.catalogue, world.show, world.plan, {5'000'000, 20});
      for (const VehicleLoading& v : loading.vehicles) sum += static_cast<int>(v.left.size());
      for (const LoadFault& fault : load_faults(world.catalogue, world.show, world.plan, loading))
        all += "seed " + std::to_string(seed) + ": " + fault.says.english() + "\n";
    };
    for (std::size_t i = 0; i < world.catalogue.kit.cases.size(); i += 2)
      world.catalogue.kit.cases[i].stack_count = Sourced<int>{static_cast<int>(i / 2 % 3), {}};
    count(left_without);
    for (Vehicle& v : world.catalogue.kit.vehicles)
      v.doors.push_back({seed % 2 == 0 ? "left side" : "right side",
                         1.2 * unit::metre,
                         1.6 * unit::metre,
                         {},
                         Sourced<Length>{(seed % 5) * 0.2 * unit::metre, {}}});
    count(left);
  }
  INFO(left << " left out, without side doors " << left_without);
  CHECK(left <= left_without);
  CHECK(all.substr(0, 2000) == "");
}

TEST_CASE("both examples: every piece has its place once, nothing is left out, no stage is above a plate") {
  for (const char* show : {"outdoor-evening.toml", "indoor-afternoon.toml"}) {
    INFO(show);
    const auto plan = nlohmann::json::parse(program({"check", example(show), "--json"}).out);
    std::set<std::string> drawn;
    for (const auto& loading : plan["loadings"]) {
      CHECK(loading["left_out"].empty());
      CHECK(loading["faults"].empty());
      CHECK(loading["stages"].size() >= 1);
      for (const auto& stage : loading["stages"]) CHECK(stage["over"].empty());
      for (const auto& piece : loading["pieces"]) CHECK(drawn.insert(piece["code"].get<std::string>()).second);
    }
    for (const auto& one : plan["cases"])
      if (!one["vehicle"].get<std::string>().empty()) CHECK(drawn.count(one["code"].get<std::string>()) == 1);
    CHECK(plan["unsized"].empty());
  }
}
