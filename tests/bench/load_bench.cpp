// SPDX-License-Identifier: MIT
// What the load planner makes of published instances of container loading, each read as a kit and a show, and how long
// shows of 15 to 240 units take. Arguments: FOLDER [STEP [SET ...]]: each STEPth instance of each set.
#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>

#include "../load/random_show.h"

using namespace dunnage;
using namespace dunnage::instances;

namespace {

/// Five seconds on a processor of 2020, on average over the sets.
constexpr long budget = 5'000'000'000;
constexpr int random_shows = 8;  // of each size

double cpu_now() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

double run_set(const std::string& folder, const std::string& set, int step) {
  double sum = 0, least = 100, seconds = 0;
  std::string left;
  const std::vector<Instance> all = instances_of(folder, set, set == "LN" ? 1 : step);  // LN is small
  if (all.empty()) return 0;
  for (const Instance& one : all) {
    const World world = read_world(one.text);
    const double from = cpu_now();
    const Loading loading = plan_load(world.catalogue, world.show, world.plan, {budget, 0});
    seconds += cpu_now() - from;
    const double share = filled(world, loading.vehicles.front());
    sum += share;
    least = std::min(least, share);
    if (set == "LN" && !loading.vehicles.front().left.empty())
      left += fmt::format(" LN{:02}: {} left", one.name, loading.vehicles.front().left.size());
  }
  const double n = static_cast<double>(all.size());
  fmt::print("{:4} {:4} {:9.2f} {:9.2f} {:8.2f} {}\n", set, all.size(), sum / n, least, seconds / n, left);
  std::fflush(stdout);
  return sum / n;
}

void run_shows() {
  fmt::print("\nshows of a van and a trailer, {} of each size\nunits   CPU ms (mean)   most   left out\n",
             random_shows);
  for (const int units : {15, 30, 60, 120, 240}) {
    double sum = 0, most = 0;
    std::size_t left = 0;
    for (unsigned seed = 1; seed <= random_shows; ++seed) {
      const World world = read_world(ShowMaker(seed).make(units, 2, false));
      const double from = cpu_now();
      const Loading loading = plan_load(world.catalogue, world.show, world.plan);
      const double took = 1000 * (cpu_now() - from);
      sum += took;
      most = std::max(most, took);
      for (const VehicleLoading& v : loading.vehicles) left += v.left.size();
    }
    fmt::print("{:5} {:12.1f} {:12.1f} {:8}\n", units, sum / random_shows, most, left);
  }
}

}  // namespace

int main(int argc, char** argv) {
  const std::string folder = argc > 1 ? argv[1] : ".";
  const int step = argc > 2 ? std::max(1, std::atoi(argv[2])) : 10;
  std::vector<std::string> sets(argv + std::min(argc, 3), argv + argc);
  if (sets.empty()) sets = {"BR1", "BR2", "BR3", "BR4", "BR5", "BR6", "BR7", "LN"};
  fmt::print("set  inst.   filled %   least %  CPU s\n");
  double sum = 0;
  int count = 0;
  for (const std::string& set : sets) {
    if (set == "shows") {
      run_shows();
      continue;
    }
    const double share = run_set(folder, set, step);
    if (set == "LN" || share == 0) continue;
    sum += share;
    ++count;
  }
  if (count > 0) fmt::print("mean {:14.2f}\n", sum / count);
  if (argc <= 3) run_shows();
  return 0;
}
