// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "small_kit.h"

using namespace dunnage;
using namespace dunnage::small;

TEST_CASE("rules send cases by the facts of the show") {
  Kit kit;
  add_case(kit, "TENT", 20).goes = when("setting", {std::string("outdoor")});
  add_case(kit, "TOOLS", 10).goes = always();
  add_case(kit, "LAMP", 5).goes = when("crew", {4.0}, Condition::Kind::from);
  add_case(kit, "ODD", 5);
  Show show;
  show.setting = Sourced<std::string>{"outdoor", {}};
  show.crew = Sourced<int>{3, {}};
  CHECK(pulled(kit, show) == "TENT TOOLS");
  show.setting->value = "indoor";
  show.crew->value = 4;
  CHECK(pulled(kit, show) == "TOOLS LAMP");
}

TEST_CASE("per rounds each entry up on its own total, and entries add up") {
  Kit kit;
  Case& box = add_case(kit, "WATER", 10);
  box.count = 9;
  Per crew;
  crew.of = "crew";
  crew.every = 6;
  Per audience = crew;
  audience.of = "audience";
  audience.every = 100;
  audience.send = 2;
  box.per = {crew, audience};
  Show show;
  show.crew = Sourced<int>{7, {}};
  show.audience = Sourced<int>{101, {}};
  CHECK(pulled(kit, show) == "WATER-1 WATER-2 WATER-3 WATER-4 WATER-5 WATER-6");  // 2 + 2 * 2
}

TEST_CASE("more wanted than owned is a shortage that says how many") {
  Kit kit;
  Case& box = add_case(kit, "CONE", 1);
  box.count = 2;
  Per per;
  per.of = "crew";
  box.per = {per};
  Show show;
  show.crew = Sourced<int>{5, {}};
  const Catalogue c = make_catalogue(kit);
  const Plan plan = plan_show(c, show);
  REQUIRE(plan.shortages.size() == 1);
  CHECK(plan.shortages[0].what == "CONE");
  CHECK(plan.shortages[0].wanted == 5);
  CHECK(plan.shortages[0].missing == 3);
}

TEST_CASE("needs are followed to the end, and a circle of needs ends") {
  Kit kit;
  add_case(kit, "A", 1).goes = always();
  add_case(kit, "B", 1);
  add_case(kit, "C", 1);
  kit.cases[0].needs = {{text("B"), 1, 0, {}}};
  kit.cases[1].needs = {{text("C"), 1, 0, {}}};
  kit.cases[2].needs = {{text("A"), 1, 0, {}}};
  CHECK(pulled(kit, Show()) == "A B C");
}

TEST_CASE("a need for each adds up; a need once is shared") {
  Kit kit;
  Case& tower = add_case(kit, "TOWER", 30);
  tower.goes = always();
  tower.count = 2;
  tower.needs = {{text("BASE"), 2, 0, {}}, {text("JACK"), 0, 1, {}}};
  Case& base = add_case(kit, "BASE", 30);
  base.count = 5;
  Case& jack = add_case(kit, "JACK", 5);
  jack.count = 3;
  CHECK(pulled(kit, Show()) == "TOWER-1 TOWER-2 BASE-1 BASE-2 BASE-3 BASE-4 JACK-1");
}

TEST_CASE("out of service comes before leave, leave before bring, bring before rules") {
  Kit kit;
  add_case(kit, "A", 1).goes = always();
  add_case(kit, "B", 1);
  add_case(kit, "C", 1);
  kit.changes.push_back({text("C"), Sourced<std::string>{"seam split", {}}, {}, {}, {}});
  Show show;
  show.leave.push_back({text("A"), "no room", 0, {}});
  show.bring.push_back({text("A"), "asked for", 0, {}});
  show.bring.push_back({text("B"), "asked for", 0, {}});
  show.bring.push_back({text("C"), "asked for", 0, {}});
  const Catalogue c = make_catalogue(kit);
  const Plan plan = plan_show(c, show);
  CHECK(pulled(c, plan) == "B");
  REQUIRE(plan.shortages.size() == 2);
  CHECK(plan.shortages[0].nearest.english() == "A stays: the show leaves it: no room");
  CHECK(plan.shortages[1].nearest.english() == "C stays: it is out of service: seam split");
}

TEST_CASE("a rule that finds none in service is short; one that finds some is not") {
  Kit kit;
  add_case(kit, "A", 1).goes = always();
  add_case(kit, "B", 1).goes = always();
  kit.cases.back().count = 2;
  kit.changes.push_back({text("A"), Sourced<std::string>{"seam split", {}}, {}, {}, {}});
  kit.changes.push_back({text("B-2"), Sourced<std::string>{"lost", {}}, {}, {}, {}});
  const Catalogue c = make_catalogue(kit);
  const Plan plan = plan_show(c, Show{});
  REQUIRE(plan.shortages.size() == 1);
  CHECK(plan.shortages[0].what == "A");
  CHECK(plan.shortages[0].missing == 1);
}

TEST_CASE("the cover takes whole cases of least mass, and what goes anyway serves first") {
  Kit kit;
  add_item(kit, "MIC", {"vocal"});
  add_case(kit, "BIG", 30, {{"MIC", 10}});
  add_case(kit, "SMALL", 8, {{"MIC", 3}});
  Show show;
  want(show, "vocal", 3);
  CHECK(pulled(kit, show) == "SMALL");
  kit.cases[0].goes = always();
  CHECK(pulled(kit, show) == "BIG");
  show.wants[0].count = 11;
  CHECK(pulled(kit, show) == "BIG SMALL");
}

TEST_CASE("what the site has lowers the demand") {
  Kit kit;
  Case& table = add_case(kit, "TABLE", 12);
  table.count = 6;
  table.serves = {text("table")};
  Show show;
  want(show, "table", 4);
  show.site.has.push_back({text("table"), 3, "hall", {}});
  CHECK(pulled(kit, show) == "TABLE-1");
}

TEST_CASE("the cover counts what its cases would need in turn") {
  Kit kit;
  add_item(kit, "MIC", {"vocal"});
  add_case(kit, "LIGHT", 5, {{"MIC", 1}}).needs = {{text("RACK"), 1, 0, {}}};
  add_case(kit, "RACK", 40);
  add_case(kit, "HEAVY", 20, {{"MIC", 1}});
  Show show;
  want(show, "vocal", 1);
  CHECK(pulled(kit, show) == "HEAVY");
}

TEST_CASE("a run of cable takes one that reaches, or lengths joined where the item says how") {
  Kit kit;
  add_item(kit, "C-30", {"cable"}, 30);
  add_item(kit, "C-15", {"cable"}, 15, "itself");
  add_item(kit, "C-8", {"cable"}, 8, "itself");
  add_case(kit, "LONG", 20, {{"C-30", 1}});
  add_case(kit, "SHORT", 6, {{"C-15", 1}, {"C-8", 1}});
  Show show;
  want(show, "cable", 1, 21);
  CHECK(pulled(kit, show) == "SHORT");  // 15 + 8
  kit.items[2].joins.reset();
  CHECK(pulled(kit, show) == "LONG");
}

TEST_CASE("lengths joined by a joiner take a joiner for each joint") {
  Kit kit;
  add_item(kit, "L-10", {"line"}, 10, "JOIN");
  add_item(kit, "JOIN");
  add_case(kit, "LINES", 5, {{"L-10", 3}});
  Case& joints = add_case(kit, "JOINTS", 1, {{"JOIN", 1}});
  joints.count = 3;
  Show show;
  want(show, "line", 1, 25);
  CHECK(pulled(kit, show) == "LINES JOINTS-1 JOINTS-2");
}

TEST_CASE("a shortage of length names the longest owned") {
  Kit kit;
  add_item(kit, "C-30", {"cable"}, 30);
  add_case(kit, "LONG", 20, {{"C-30", 4}});
  Show show;
  want(show, "cable", 2, 40);
  const Catalogue c = make_catalogue(kit);
  const Plan plan = plan_show(c, show);
  REQUIRE(plan.shortages.size() == 1);
  CHECK(plan.shortages[0].missing == 2);
  CHECK(plan.shortages[0].nearest.english() ==
        "the longest owned is C-30 (C-30): stand nearer, or borrow one that reaches");
  CHECK(pulled(c, plan).empty());
}

TEST_CASE("a spare goes with the kind in use and never feeds a demand") {
  Kit kit;
  add_case(kit, "DESK", 20).serves = {text("console")};
  Case& spare = add_case(kit, "DESK-B", 5);
  spare.serves = {text("console")};
  spare.spare_for = Sourced<std::string>{"console", {}};
  Show show;
  CHECK(pulled(kit, show).empty());
  show.console = Sourced<std::string>{"console", {}};
  CHECK(pulled(kit, show) == "DESK DESK-B");
  want(show, "console", 1);
  const Catalogue c = make_catalogue(kit);
  CHECK(plan_show(c, show).shortages.size() == 1);  // two asked for, one that may be used
}

TEST_CASE("ballast is pulled because of the use, dealt evenly over the legs") {
  Kit kit;
  Case& bag = add_case(kit, "BAG", 15);
  bag.count = 6;
  add_case(kit, "CANOPY-BAG", 20);
  Structure s;
  s.code = text("CANOPY");
  s.made_of = {{text("CANOPY-BAG"), 1, {}}};
  s.legs = {text("A"), text("B"), text("C"), text("D")};
  kit.structures.push_back(s);
  Show show;
  Use use;
  use.structure = text("CANOPY");
  use.as = text("desk canopy");
  BallastLine line;
  line.each_leg = true;
  line.code = text("BAG");
  line.count = 1;
  use.ballast = {line};
  show.uses.push_back(use);
  const Catalogue c = make_catalogue(kit);
  const Plan plan = plan_show(c, show);
  CHECK(pulled(c, plan) == "BAG-1 BAG-2 BAG-3 BAG-4 CANOPY-BAG");
  REQUIRE(plan.ballast.size() == 4);
  CHECK(plan.ballast[3].leg == 3);
  CHECK(plan.rows[0].reasons[0].text.english() == "it is ballast of desk canopy, leg A");
}

TEST_CASE("order of tables never changes the plan") {
  Kit kit;
  add_item(kit, "MIC", {"vocal"});
  add_case(kit, "A", 8, {{"MIC", 2}});
  add_case(kit, "B", 8, {{"MIC", 2}});
  add_case(kit, "C", 8, {{"MIC", 2}});
  Show show;
  want(show, "vocal", 3);
  CHECK(pulled(kit, show) == "A B");
  std::swap(kit.cases[0], kit.cases[2]);
  CHECK(pulled(kit, show) == "B A");  // the same cases, in the kit's new order
}
