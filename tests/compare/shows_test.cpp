// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "../plan/small_kit.h"
#include "compare/against.h"
#include "compare/clash.h"

using namespace dunnage;
using namespace dunnage::small;

namespace {

Show dated(int day, int travel, int preparation) {
  Show show;
  show.date = Sourced<Date>{{2027, 6, day}, {}};
  show.travel_days = travel;
  show.preparation_days = preparation;
  return show;
}

/// "CODE first-day last-day replacement" of each clash of two shows.
std::vector<std::string> told(const Kit& kit, const Show& a, const Show& b) {
  const Catalogue c = make_catalogue(kit);
  const Plan plan_a = plan_show(c, a), plan_b = plan_show(c, b);
  std::vector<std::string> out;
  for (const Clash& clash : clashes({{&c, &a, &plan_a}, {&c, &b, &plan_b}}))
    out.push_back(clash.code + " " + clash.from.iso() + " " + clash.to.iso() + " " + clash.instead);
  return out;
}

Kit kit_of_tables() {
  Kit kit;
  Case& table = add_case(kit, "TABLE", 12);
  table.serves = {text("table")};
  table.count = 3;
  add_case(kit, "BOARD", 9).serves = {text("board")};
  Case& trestle = add_case(kit, "TRESTLE", 20);
  trestle.serves = {text("table"), text("board")};
  return kit;
}

}  // namespace

TEST_CASE("shows clash on the days that both have a unit, travel and preparation counted") {
  Show a = dated(10, 1, 0), b = dated(13, 1, 1);
  want(a, "table", 1);
  want(b, "table", 1);
  CHECK(told(kit_of_tables(), a, b) == std::vector<std::string>{"TABLE-1 2027-06-11 2027-06-11 TABLE-2"});
  b.preparation_days = 0;  // home on the 11th, out again on the 12th
  CHECK(told(kit_of_tables(), a, b).empty());
}

TEST_CASE("another unit would do when it is free and offers what was asked for") {
  Show a = dated(10, 0, 0), b = dated(10, 0, 0);
  want(a, "table", 3);
  want(a, "board", 1);
  want(b, "table", 1);
  want(b, "board", 1);
  CHECK(told(kit_of_tables(), a, b) ==
        std::vector<std::string>{"TABLE-1 2027-06-10 2027-06-10 TRESTLE", "BOARD 2027-06-10 2027-06-10 "});
}

TEST_CASE("days cross the end of a month and of a year") {
  Show a = dated(30, 3, 0), b = dated(30, 0, 0);
  a.date->value = {2027, 12, 30};
  b.date->value = {2028, 1, 2};
  want(a, "board", 1);
  want(b, "board", 1);
  CHECK(told(kit_of_tables(), a, b) == std::vector<std::string>{"BOARD 2028-01-02 2028-01-02 TRESTLE"});
}

TEST_CASE("a change says what is added, gone, more and fewer") {
  const Catalogue c = make_catalogue(kit_of_tables());
  Show before = dated(10, 0, 0), now = dated(10, 0, 0);
  want(before, "table", 1);
  want(before, "board", 1);
  want(now, "table", 3);
  const Plan was = plan_show(c, before), is = plan_show(c, now);
  const Change change = change_of({&c, &before, &was}, {&c, &now, &is});
  REQUIRE(change.lines.size() == 2);
  CHECK(change.lines[0].code == "TABLE");
  CHECK(change.lines[0].before == 1);
  CHECK(change.lines[0].now == 3);
  CHECK(change.lines[1].code == "BOARD");
  CHECK(change.lines[1].now == 0);
}
