// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "small_kit.h"

using namespace dunnage;
using namespace dunnage::small;

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
