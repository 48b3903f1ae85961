// SPDX-License-Identifier: MIT
// What a cover may say: "proved" only of what is so, and of what nobody weighed nothing.
#include <catch2/catch.hpp>
#include <ctime>

#include "small_kit.h"

using namespace dunnage;
using namespace dunnage::small;

namespace {

Case& add_canopy(Kit& kit, const std::string& code, double kg) {
  Case& box = add_case(kit, code, kg);
  box.serves = {text("canopy")};
  box.needs = {{text("KEY"), 0, 1, {}}};
  return box;
}

/// Five types of canopy, one of each, and so many boxes of keys.
Kit canopies(int keys) {
  Kit kit;
  add_item(kit, "KEY");
  for (const char* code : {"A", "B", "C", "D", "E"}) add_canopy(kit, code, 20);
  add_case(kit, "KEYS", 2, {{"KEY", 1}}).count = keys;
  return kit;
}

Show crossed(double metres) {
  Show show;
  Run run;
  run.from = "desk";
  run.to = "stage";
  run.cable = text("multicore");
  Crossing over;
  over.floor = Sourced<std::string>{"grass", {}};
  over.length = Sourced<Length>{metres * unit::metre, {}};
  over.crossed_by = Sourced<std::string>{"feet", {}};
  over.crossing = over.length;
  run.over = {over};
  show.runs = {run};
  return show;
}

void add_mat(Kit& kit, const std::string& code, double kg, double metres, int count) {
  Case& mat = add_case(kit, code, kg);
  mat.serves = {text("cover-feet")};
  mat.length = Sourced<Length>{metres * unit::metre, {}};
  mat.count = count;
}

}  // namespace

TEST_CASE("what one type needs once is shared by its units, and asked for again by each other type") {
  Kit kit;
  add_item(kit, "KEY");
  add_canopy(kit, "CANOPY", 20).count = 5;
  add_case(kit, "KEYS", 2, {{"KEY", 1}}).count = 2;
  Show show;
  want(show, "canopy", 5);
  const Plan one_type = plan_show(make_catalogue(kit), show);
  CHECK(one_type.shortages.empty());
  CHECK(one_type.cover.mass / unit::kilogram == Approx(102));
  CHECK(one_type.cover.proved);

  const Plan five_types = plan_show(make_catalogue(canopies(5)), show);
  CHECK(five_types.shortages.empty());
  CHECK(five_types.cover.mass / unit::kilogram == Approx(110));
  CHECK(five_types.cover.proved);
}

TEST_CASE("what stays at home for want of what it needs is not said to go already") {
  Show show;
  want(show, "canopy", 5);
  const Plan plan = plan_show(make_catalogue(canopies(2)), show);
  int missing = 0;
  for (const Shortage& s : plan.shortages) {
    missing += s.missing;
    if (s.what == "canopy")
      CHECK(s.nearest.english() ==
            "more is owned, but it does not serve here or lacks what it needs in turn: borrow, hire, or want fewer");
  }
  CHECK(missing == 3);
}

TEST_CASE("a crossing is laid with any mixture of mats, the lightest that covers it") {
  Kit kit;
  add_item(kit, "MULTI", {"multicore"}, 60);
  add_case(kit, "DRUM", 30, {{"MULTI", 1}});
  add_mat(kit, "LONG", 12, 3, 4);       // 4 kg a metre
  add_mat(kit, "MIDDLE", 2.5, 1.5, 5);  // 1.67
  add_mat(kit, "SHORT", 1, 1, 9);       // 1
  const Plan plan = plan_show(make_catalogue(kit), crossed(22));
  // 9 m of SHORT and 7.5 m of MIDDLE leave 5.5 m to two of LONG.
  CHECK(plan.shortages.empty());
  CHECK(plan.cover.mass / unit::kilogram == Approx(30 + 9 + 12.5 + 24));
  CHECK(plan.cover.proved);
}

TEST_CASE("many lengths that join leave no set of them out") {
  Kit kit;
  Show show;
  for (int i = 0; i < 20; ++i) {
    const std::string code = (i < 10 ? "L0" : "L") + std::to_string(i);
    add_item(kit, code, {"cable"}, 6 + 0.5 * i, "itself");
    add_case(kit, "C" + code, i < 4 ? 1 : 10 + i, {{code, 1}});
  }
  want(show, "cable", 1, 26);
  // The shortest four reach 6 + 6.5 + 7 + 7.5 = 27 m for 4 kg; three lighter ones reach nowhere near.
  const Plan plan = plan_show(make_catalogue(kit), show);
  CHECK(plan.cover.mass / unit::kilogram == Approx(4));
  CHECK(plan.cover.proved);
  want(show, "cable", 1, 26.5);
  const Plan two = plan_show(make_catalogue(kit), show);
  CHECK(two.shortages.empty());
  CHECK(two.cover.proved);
}

TEST_CASE("a case that nobody weighed is never preferred for it, and nothing is proved of it") {
  Kit kit;
  add_item(kit, "MIC", {"vocal"});
  add_case(kit, "HEAVY", 90, {{"MIC", 1}});
  add_case(kit, "ODD", 0, {{"MIC", 2}}).weighed.reset();
  Show show;
  want(show, "vocal", 1);
  const Catalogue c = make_catalogue(kit);
  const Plan one = plan_show(c, show);
  CHECK(pulled(c, one) == "HEAVY");
  CHECK(one.cover.proved);
  CHECK(one.cover.unweighed == 0);
  CHECK(one.cover.unweighed_left == 1);
  show.wants[0].count = 3;
  const Plan both = plan_show(c, show);
  CHECK(pulled(c, both) == "HEAVY ODD");
  CHECK(both.cover.units == 2);
  CHECK(both.cover.unweighed == 1);
}

TEST_CASE("units of a case that agree in grams are not alike where one is not weighed") {
  Kit kit;
  add_item(kit, "MIC", {"vocal"}).mass = Sourced<Mass>{5 * unit::kilogram, {}};
  Case& box = add_case(kit, "TUB", 0, {{"MIC", 1}});  // its own mass is missing: 5 kg are known
  box.weighed.reset();
  box.count = 2;
  kit.changes.push_back({text("TUB-2"), {}, Sourced<Mass>{5 * unit::kilogram, {}}, {}, {}});
  Show show;
  want(show, "vocal", 1);
  const Catalogue c = make_catalogue(kit);
  const Plan plan = plan_show(c, show);
  CHECK(pulled(c, plan) == "TUB-2");
  CHECK(plan.cover.unweighed == 0);
}

TEST_CASE("what stands by may be what another case needs, and then its mass counts") {
  Kit kit;
  add_item(kit, "MIC", {"vocal"});
  Case& spare = add_case(kit, "SPARE", 40);
  spare.spare_for = Sourced<std::string>{"console", {}};
  add_case(kit, "LIGHT", 5, {{"MIC", 1}}).needs = {{text("SPARE"), 1, 0, {}}};
  add_case(kit, "HEAVY", 20, {{"MIC", 1}});
  Show show;
  want(show, "vocal", 1);
  CHECK(pulled(kit, show) == "HEAVY");
}

TEST_CASE("where the fewest pieces are wished for, they are counted before they are weighed") {
  Kit kit;
  kit.house.lightest = "units";
  add_item(kit, "MIC", {"vocal"});
  add_case(kit, "BIG", 30, {{"MIC", 2}});
  add_case(kit, "SMALL", 4, {{"MIC", 1}}).count = 2;
  Show show;
  want(show, "vocal", 2);
  const Catalogue c = make_catalogue(kit);
  const Plan plan = plan_show(c, show);
  CHECK(pulled(c, plan) == "BIG");
  CHECK(plan.cover.by_units);
  CHECK(plan.cover.units_bound == 1);
}
