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
  CHECK(plan.shortages[0].nearest.english() == "the longest owned is C-30 (C-30): stand nearer, or borrow one that reaches");
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

namespace {

Show crossed(const std::string& floor, double metres, const std::string& by, double crossing) {
  Show show;
  Run run;
  run.from = "desk";
  run.to = "stage";
  run.cable = text("multicore");
  Crossing over;
  over.floor = Sourced<std::string>{floor, {}};
  over.length = Sourced<Length>{metres * unit::metre, {}};
  if (!by.empty()) {
    over.crossed_by = Sourced<std::string>{by, {}};
    over.crossing = Sourced<Length>{crossing * unit::metre, {}};
  }
  run.over = {over};
  show.runs = {run};
  return show;
}

Kit floor_kit() {
  Kit kit;
  add_item(kit, "MULTI", {"multicore"}, 60);
  add_case(kit, "DRUM", 30, {{"MULTI", 1}});
  Case& mat = add_case(kit, "MAT", 12);
  mat.serves = {text("cover-feet")};
  mat.length = Sourced<Length>{3 * unit::metre, {}};
  mat.count = 4;
  Case& ramp = add_case(kit, "RAMP", 11);
  ramp.serves = {text("cover-wheels")};
  ramp.length = Sourced<Length>{1 * unit::metre, {}};
  ramp.rating = Sourced<Mass>{900 * unit::kilogram, {}};
  ramp.count = 5;
  for (const std::string floor : {"finished", "asphalt"}) {
    Item& tape = add_item(kit, "T-" + floor, {"tape-" + floor});
    tape.used_up = true;
    tape.each = Sourced<Length>{50 * unit::metre, {}};
    add_case(kit, "TUB-" + floor, 2, {{"T-" + floor, 2}});
  }
  kit.cases.back().holds.back().left = Sourced<Length>{15 * unit::metre, {}};  // asphalt: mostly used
  return kit;
}

}  // namespace

TEST_CASE("a run is covered where it is crossed, end to end: mats for feet, ramps for wheels") {
  CHECK(pulled(floor_kit(), crossed("grass", 40, "feet", 7)) == "DRUM MAT-1 MAT-2 MAT-3");
  CHECK(pulled(floor_kit(), crossed("grass", 40, "wheels", 3.5)) == "DRUM RAMP-1 RAMP-2 RAMP-3 RAMP-4");
  Show heavy = crossed("grass", 40, "wheels", 3.5);
  heavy.runs[0].over[0].wheel = Sourced<Mass>{1200 * unit::kilogram, {}};
  const Catalogue c = make_catalogue(floor_kit());
  const Plan plan = plan_show(c, heavy);
  CHECK(pulled(c, plan) == "DRUM");  // no ramp is rated for that wheel
  CHECK(plan.shortages.size() == 1);
}

TEST_CASE("each floor asks for its own tape by the metre, less what is used of the rolls; grass for none") {
  CHECK(pulled(floor_kit(), crossed("grass", 40, "", 0)) == "DRUM");
  CHECK(pulled(floor_kit(), crossed("finished", 40, "", 0)) == "DRUM TUB-finished");
  const Catalogue c = make_catalogue(floor_kit());
  const Plan plan = plan_show(c, crossed("asphalt", 40, "", 0));
  CHECK(pulled(c, plan) == "DRUM TUB-asphalt");
  REQUIRE(plan.shortages.size() == 1);
  CHECK(plan.shortages[0].what == "tape-asphalt");
  CHECK(plan.shortages[0].wanted == 40);
  CHECK(plan.shortages[0].missing == 25);
  CHECK(plan.shortages[0].unit == "m");
}

TEST_CASE("a source louder than the console takes asks for a pad") {
  Kit kit;
  add_item(kit, "PAD-20", {"pad"});
  add_case(kit, "PADS", 1, {{"PAD-20", 4}});
  Case& desk = add_case(kit, "DESK", 20);
  desk.serves = {text("console")};
  desk.input_level = Sourced<Line>{18 * unit::decibel_u, {}};
  Show show;
  show.console = Sourced<std::string>{"console", {}};
  Input input;
  input.channel = {1, {}};
  input.source = text("keys");
  input.level = Sourced<Line>{22 * unit::decibel_u, {}};
  show.inputs = {input};
  CHECK(pulled(kit, show) == "PADS DESK");
  show.inputs[0].level->value = 18 * unit::decibel_u;
  CHECK(pulled(kit, show) == "DESK");
}

TEST_CASE("what an input needs and does not say: phantom power for its pickup, decibels of pad") {
  Kit kit;
  add_item(kit, "COND", {"overhead"}).phantom = true;
  add_item(kit, "DYN", {"vocal"});
  add_case(kit, "MICS", 5, {{"COND", 2}, {"DYN", 2}});
  Case& desk = add_case(kit, "DESK", 20);
  desk.serves = {text("console")};
  desk.input_level = Sourced<Line>{18 * unit::decibel_u, {}};
  Show show;
  show.console = Sourced<std::string>{"console", {}};
  for (const char* pickup : {"overhead", "vocal", "overhead"}) {
    Input input;
    input.channel = {static_cast<int>(show.inputs.size()) + 1, {}};
    input.source = text(pickup);
    input.pickup = Sourced<std::string>{pickup, {nullptr, static_cast<std::uint32_t>(show.inputs.size()) + 1}};
    show.inputs.push_back(input);
  }
  show.inputs[1].level = Sourced<Line>{20.5 * unit::decibel_u, {}};
  show.inputs[2].phantom = Sourced<bool>{false, {}};  // has its own cell
  const Plan plan = plan_show(make_catalogue(kit), show);
  REQUIRE(plan.inputs.size() == 3);
  CHECK(plan.inputs[0].phantom);
  CHECK_FALSE(plan.inputs[1].phantom);
  CHECK_FALSE(plan.inputs[2].phantom);
  CHECK(plan.inputs[1].pad == Approx(2.5));
  CHECK(plan.inputs[0].pad == 0);
}

TEST_CASE("heat asks for a quart of water an hour for each of the crew; the cool does not") {
  Kit kit;
  Item& water = add_item(kit, "JUG", {"drinking-water"});
  water.used_up = true;
  water.each_volume = Sourced<Volume>{20 * unit::litre, {}};
  Case& jug = add_case(kit, "WATER", 21, {{"JUG", 1}});
  jug.count = 4;
  Show show;
  show.crew = Sourced<int>{6, {}};
  show.hours = Sourced<Duration>{8 * unit::hour, {}};
  show.forecast = Forecast();
  show.forecast->temperature = Sourced<Temperature>{Temperature::celsius(31), {}};
  CHECK(pulled(kit, show) == "WATER-1 WATER-2 WATER-3");  // 6 x 8 x 0.946 l = 45.4 l
  show.site.has = {{text("drinking-water"), 0, "the hall", {}, {}, Sourced<Volume>{10 * unit::litre, {}}}};
  CHECK(pulled(kit, show) == "WATER-1 WATER-2");  // 35.4 l are left to bring
  show.site.has = {{text("drinking-water"), 0, "a tap", {}}};
  CHECK(pulled(kit, show).empty());
  show.site.has.clear();
  show.forecast->temperature->value = Temperature::celsius(18);
  CHECK(pulled(kit, show).empty());
  show.forecast->temperature->value = Temperature::celsius(5);
  show.forecast->humidity = Sourced<double>{80, {}};  // colder than the heat index is made for
  CHECK(pulled(kit, show).empty());
}

TEST_CASE("what a tower carries serves the mix that asks for it") {
  Kit kit;
  Case& top = add_case(kit, "TOP", 20);
  top.serves = {text("main-speaker")};
  top.count = 4;
  Structure tower;
  tower.code = text("TOWER");
  tower.kind = StructureKind::tower;
  kit.structures.push_back(tower);
  Show show;
  Use use;
  use.structure = text("TOWER");
  use.as = text("left tower");
  use.carries = {{text("TOP"), 1, {}, {}, {}, {}}};
  show.uses = {use, use};
  want(show, "main-speaker", 2);
  CHECK(pulled(kit, show) == "TOP-1 TOP-2");
}
