// SPDX-License-Identifier: MIT
// The cover against another exact solver with another model, over random kits of all that a cover knows: lengths,
// joins, what is laid and measured, needs for each and once, unknown masses, cases of mixed contents.
#include <catch2/catch.hpp>
#include <random>

#include "cover_oracle.h"
#include "plan/demands.h"
#include "small_kit.h"

using namespace dunnage;
using namespace dunnage::small;

namespace {

struct Dice {
  std::mt19937 engine;
  int roll(int low, int high) { return low + static_cast<int>(engine() % static_cast<unsigned>(high - low + 1)); }
  bool one_in(int n) { return roll(1, n) == 1; }
};

void add_random_items(Dice& dice, Kit& kit) {
  add_item(kit, "JOIN");
  for (int i = dice.roll(2, 5); i > 0; --i)
    add_item(kit, "I" + std::to_string(i), {dice.one_in(2) ? "vocal" : "stand"});
  const int lengths = dice.one_in(8) ? dice.roll(9, 13) : dice.roll(1, 5);
  for (int i = 0; i < lengths; ++i)
    add_item(kit, "L" + std::to_string(i), {"cable"}, dice.roll(4, 40) / 2.0,
             dice.one_in(3)   ? "JOIN"
             : dice.one_in(3) ? ""
                              : "itself");
  Item& tape = add_item(kit, "TAPE", {"tape-asphalt"});
  tape.used_up = true;
  tape.each = Sourced<Length>{20 * unit::metre, {}};
}

void add_random_needs(Dice& dice, Kit& kit, Case& box) {
  for (int n = dice.roll(1, 2); n > 0; --n) {
    const bool item = dice.one_in(2);
    const auto& of = [&]() -> const std::string& {
      return item
                 ? kit.items[static_cast<std::size_t>(dice.roll(0, static_cast<int>(kit.items.size()) - 1))].code.value
                 : kit.cases[static_cast<std::size_t>(dice.roll(0, static_cast<int>(kit.cases.size()) - 1))].code.value;
    }();
    const bool once = dice.one_in(2);
    box.needs.push_back({text(of), once ? 0 : 1, once ? dice.roll(1, 2) : 0, {}});
  }
}

void add_random_cases(Dice& dice, Kit& kit) {
  for (int k = dice.roll(4, 10); k > 0; --k) {
    std::vector<std::pair<std::string, int>> holds;
    for (const Item& item : kit.items)
      if (dice.one_in(4)) holds.emplace_back(item.code.value, dice.roll(1, 3));
    Case& box = add_case(kit, "C" + std::to_string(k), dice.roll(1, 60) / 2.0, holds);
    box.count = dice.roll(1, 3);
    if (dice.one_in(7)) box.weighed.reset();
    if (dice.one_in(5)) {
      box.serves = {text("cover-feet")};
      box.length = Sourced<Length>{dice.roll(2, 9) / 2.0 * unit::metre, {}};
    }
    if (dice.one_in(6)) box.serves.push_back(text("stand"));
    if (dice.one_in(9)) box.goes = always();
  }
  for (Case& box : kit.cases)
    if (box.goes.kind != Goes::Kind::always && dice.one_in(3)) add_random_needs(dice, kit, box);
}

Show random_wants(Dice& dice, const Kit& kit) {
  Show show;
  for (int n = dice.roll(2, 5); n > 0; --n) {
    const auto i = static_cast<std::size_t>(dice.roll(0, static_cast<int>(kit.items.size()) - 1));
    if (dice.one_in(2))
      want(show, kit.items[i].code.value, dice.roll(1, 3));
    else
      want(show, dice.one_in(2) ? "vocal" : "stand", dice.roll(1, 4));
  }
  for (int n = dice.roll(0, 2); n > 0; --n) want(show, "cable", dice.roll(1, 2), dice.roll(5, 45));
  if (dice.one_in(2))
    want(show, kit.cases[static_cast<std::size_t>(dice.roll(0, static_cast<int>(kit.cases.size()) - 1))].code.value,
         dice.roll(1, 2));
  Run run;
  run.cable = text("cable");
  run.length = Sourced<Length>{dice.roll(5, 30) * unit::metre, {}};
  Crossing over;
  over.floor = Sourced<std::string>{dice.one_in(2) ? "asphalt" : "grass", {}};
  over.length = Sourced<Length>{dice.roll(3, 50) * unit::metre, {}};
  over.crossed_by = Sourced<std::string>{"feet", {}};
  over.crossing = Sourced<Length>{dice.roll(2, 24) / 2.0 * unit::metre, {}};
  run.over = {over};
  if (dice.one_in(2)) show.runs = {run};
  return show;
}

long missing(const Plan& plan) {
  long sum = 0;
  for (const Shortage& s : plan.shortages) sum += s.missing;
  return sum;
}

/// What goes and what is said of it, against what a stranger finds. True where the stranger came to an end.
bool agrees(const Catalogue& c, const Show& show) {
  const Plan plan = plan_show(c, show);
  const OracleAnswer best = best_cover(c, demands_of(c, show));
  if (!best.solved) return false;
  CHECK(missing(plan) == best.missing);
  const CoverReport& cover = plan.cover;
  CHECK(cover.unweighed == best.unweighed);
  CHECK(cover.bound / unit::kilogram <= best.kg + 1e-6);
  CHECK(cover.mass / unit::kilogram >= best.kg - 1e-6);
  if (cover.proved) CHECK(cover.mass / unit::kilogram == Approx(best.kg).margin(1e-6));
  return true;
}

}  // namespace

TEST_CASE("what random kits of all kinds send is what another exact solver finds") {
  int told = 0, proved = 0;
  const int kits = 800;
  for (unsigned seed = 1; seed <= kits; ++seed) {
    Dice dice{std::mt19937(seed)};
    Kit kit;
    add_random_items(dice, kit);
    add_random_cases(dice, kit);
    const Show show = random_wants(dice, kit);
    INFO("seed " << seed);
    const Catalogue c = make_catalogue(kit);
    told += agrees(c, show);
    proved += plan_show(c, show).cover.proved;
  }
  CHECK(told >= kits - 5);
  CHECK(proved >= kits - 5);
}
