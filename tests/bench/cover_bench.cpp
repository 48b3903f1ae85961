// SPDX-License-Identifier: MIT
// How long the proof of the cover takes for a large house: a kit of 2,000 cases, a show of 64 inputs, 20 of each from
// fixed seeds. One row each: units pulled, mass, proved or not, nodes, CPU seconds.
#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <random>

#include "../plan/small_kit.h"

using namespace dunnage;
using namespace dunnage::small;

namespace {

struct Dice {
  std::mt19937 engine;
  int roll(int low, int high) { return low + static_cast<int>(engine() % static_cast<unsigned>(high - low + 1)); }
};

constexpr int kinds = 24;  // of pickups; as many of stands

void add_items(Kit& kit) {
  for (int i = 0; i < kinds; ++i) {
    add_item(kit, fmt::format("MIC-{}", i), {fmt::format("pickup-{}", i / 3)});
    add_item(kit, fmt::format("STD-{}", i), {fmt::format("stand-{}", i / 4)});
  }
  for (const int metres : {3, 5, 8, 10, 15, 20, 30, 50}) {
    add_item(kit, fmt::format("LINE-{}", metres), {"mic-cable"}, metres, "itself");
    add_item(kit, fmt::format("CORD-{}", metres), {"cord"}, metres, metres < 20 ? "itself" : "");
  }
  add_item(kit, "WEDGE", {"wedge"});
  add_item(kit, "PACK", {"pack"});
}

/// What lives together: pickups, stands, cables, cords, monitoring. Real cases hold one sort of thing.
std::vector<std::vector<std::string>> themes(const Kit& kit) {
  std::vector<std::vector<std::string>> out(5);
  for (const Item& item : kit.items) {
    const std::string& code = item.code.value;
    const std::size_t theme = code[0] == 'M' ? 0 : code[0] == 'S' ? 1 : code[0] == 'L' ? 2 : code[0] == 'C' ? 3 : 4;
    out[theme].push_back(code);
  }
  return out;
}

/// No two cases need be alike: each holds one to five kinds, of one theme or `mixed` from all, as no real kit is.
Kit random_kit(Dice& dice, int cases, bool mixed) {
  Kit kit;
  add_items(kit);
  auto theme = themes(kit);
  if (mixed) {
    for (std::size_t t = 1; t < theme.size(); ++t) theme[0].insert(theme[0].end(), theme[t].begin(), theme[t].end());
    std::fill(theme.begin() + 1, theme.end(), std::vector<std::string>(theme[0]));
  }
  for (int k = 0; k < cases; ++k) {
    const auto& items = theme[static_cast<std::size_t>(dice.roll(0, 4))];
    std::vector<std::pair<std::string, int>> holds;
    for (int n = dice.roll(1, 5); n > 0; --n)
      holds.emplace_back(items[static_cast<std::size_t>(dice.roll(0, static_cast<int>(items.size()) - 1))],
                         dice.roll(1, 6));
    add_case(kit, fmt::format("C-{}", k), dice.roll(20, 600) / 10.0, holds);
  }
  return kit;
}

Show random_show(Dice& dice, int inputs) {
  Show show;
  for (int i = 0; i < inputs; ++i) {
    Input input;
    input.channel = {i + 1, {}};
    input.source = text("source");
    input.pickup = Sourced<std::string>{fmt::format("pickup-{}", dice.roll(0, kinds / 3 - 1)), {}};
    input.stand = Sourced<std::string>{fmt::format("stand-{}", dice.roll(0, kinds / 4 - 1)), {}};
    input.cable = Sourced<Length>{dice.roll(2, 35) * unit::metre, {}};
    show.inputs.push_back(input);
  }
  for (int i = 0; i < inputs / 5; ++i) want(show, dice.roll(0, 1) ? "wedge" : "pack", 1);
  for (int i = 0; i < inputs / 8; ++i) want(show, "cord", 1, dice.roll(5, 60));
  return show;
}

struct World {
  Kit kit;
  Show show;
};

World large_house(Dice& dice, bool mixed) {
  World out;
  out.kit = random_kit(dice, 2000, mixed);
  out.show = random_show(dice, 64);
  return out;
}

/// Wants by code, and cases that hold ten of the things wanted, whichever: nothing but a multi-cover, and a dense one.
World all_mixed(Dice& dice, int wants, int cases) {
  World out;
  for (int i = 0; i < wants; ++i) {
    add_item(out.kit, fmt::format("I-{}", i));
    want(out.show, fmt::format("I-{}", i), dice.roll(1, 8));
  }
  for (int k = 0; k < cases; ++k) {
    std::vector<std::pair<std::string, int>> holds;
    for (int n = 0; n < 10; ++n) holds.emplace_back(fmt::format("I-{}", dice.roll(0, wants - 1)), dice.roll(1, 6));
    add_case(out.kit, fmt::format("C-{}", k), dice.roll(20, 600) / 10.0, holds);
  }
  return out;
}

template <class Make>
void run_series(const char* title, unsigned seeds, const Make& make) {
  fmt::print("cover, {}\n{:>4} {:>6} {:>8} {:>7} {:>6} {:>7} {:>6}\n", title, "seed", "units", "mass kg", "proved",
             "gap %", "nodes", "CPU s");
  double worst = 0, widest = 0;
  unsigned proved = 0;
  for (unsigned seed = 1; seed <= seeds; ++seed) {
    Dice dice{std::mt19937(seed)};
    World world = make(dice);
    const Catalogue c = make_catalogue(std::move(world.kit));
    const std::clock_t start = std::clock();
    const Plan plan = plan_show(c, world.show);
    const double seconds = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    const double gap = 100 * (plan.cover.mass - plan.cover.bound).si() / std::max(1e-9, plan.cover.mass.si());
    worst = std::max(worst, seconds);
    widest = std::max(widest, gap);
    proved += plan.cover.proved;
    fmt::print("{:>4} {:>6} {:>8.1f} {:>7} {:>6.2f} {:>7} {:>6.2f}{}\n", seed, plan.pulled().size(),
               plan.cover.mass / unit::kilogram, plan.cover.proved ? "yes" : "no", gap, plan.cover.nodes, seconds,
               plan.shortages.empty() ? "" : "  (short)");
    std::fflush(stdout);
  }
  fmt::print("proved {} of {}; widest gap {:.2f} %; worst {:.2f} CPU s\n", proved, seeds, widest, worst);
}

}  // namespace

int main(int argc, char** argv) {
  const auto asked = [&](const char* name) {
    return argc < 2 || std::find(argv + 1, argv + argc, std::string(name)) != argv + argc;
  };
  if (asked("themes"))
    run_series("2,000 cases, each of one sort of thing", 20, [](Dice& dice) { return large_house(dice, false); });
  if (asked("mixed"))
    run_series("2,000 cases, each of anything at all", 20, [](Dice& dice) { return large_house(dice, true); });
  if (asked("200")) run_series("200 wants, 400 mixed cases", 6, [](Dice& dice) { return all_mixed(dice, 200, 400); });
  if (asked("300")) run_series("300 wants, 800 mixed cases", 6, [](Dice& dice) { return all_mixed(dice, 300, 800); });
}
