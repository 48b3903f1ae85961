// SPDX-License-Identifier: MIT
// What is missing, and what needs a new label.
#include <catch2/catch.hpp>

#include "../plan/small_kit.h"
#include "compare/label_change.h"
#include "compare/tally.h"

using namespace dunnage;
using namespace dunnage::small;

namespace {

Kit three_bags() {
  Kit kit;
  add_case(kit, "TRUNK", 40);
  add_case(kit, "BAG", 9).count = 3;
  add_case(kit, "SPARE", 5);
  return kit;
}

/// All go but SPARE.
Plan plan_of(const Catalogue& c) {
  Plan plan;
  for (int u = 0; u < static_cast<int>(c.units.size()); ++u) {
    PlanRow row;
    row.unit = u;
    row.goes = c.units[static_cast<std::size_t>(u)].code != "SPARE";
    row.team = "Stage";
    plan.rows.push_back(row);
  }
  return plan;
}

Scan scan(const Catalogue& c, Stage stage, const std::string& list, const std::string& code) {
  return {stage, list, code, c.unit_index(code), "", "", {}};
}

std::string codes(const Catalogue& c, const std::vector<int>& units) {
  std::string out;
  for (const int unit : units) out += c.units[static_cast<std::size_t>(unit)].code + " ";
  return out;
}

}  // namespace

TEST_CASE("missing is what was sent or seen and did not come back, with who had it last") {
  const Catalogue c = make_catalogue(three_bags());
  const std::vector<Scan> scans = {scan(c, Stage::out, "ana", "TRUNK"), scan(c, Stage::out, "ana", "SPARE"),
                                   scan(c, Stage::out, "ben", "BAG-1"), scan(c, Stage::loaded, "van", "BAG-1"),
                                   scan(c, Stage::back, "shelf", "TRUNK")};
  const Tally t = tally(c, plan_of(c), scans, {Stage::out, Stage::loaded, Stage::back});
  CHECK(t.stage == Stage::back);
  std::string missing;
  for (const MissingUnit& one : t.missing)
    missing += c.units[static_cast<std::size_t>(one.unit)].code + " " +
               (one.last ? std::string(name(one.last->stage)) + " " + one.last->list : "never") + " " + one.pulled_by +
               "; ";
  CHECK(missing == "BAG-1 loaded van ben; BAG-2 never Stage; BAG-3 never Stage; SPARE out ana ana; ");
  CHECK(codes(c, t.extra) == "SPARE ");
  CHECK(t.is_present(c.unit_index("TRUNK")));
}

TEST_CASE("the nearest code is offered and never counted") {
  const Catalogue c = make_catalogue(three_bags());
  const Tally t = tally(c, plan_of(c),
                        {scan(c, Stage::back, "a", "TRUNC"), scan(c, Stage::back, "a", "BAG"),
                         scan(c, Stage::back, "a", "XYZ-77"), scan(c, Stage::back, "b", "trunc")},
                        {Stage::back});
  CHECK(t.missing.size() == 4);
  REQUIRE(t.unclear.size() == 2);
  CHECK(t.unclear[0].nearest == "TRUNK");
  CHECK(t.unclear[1].units == std::vector<std::string>{"BAG-1", "BAG-2", "BAG-3"});
  REQUIRE(t.not_ours.size() == 1);
  CHECK(t.not_ours[0].typed == "XYZ-77");
}

TEST_CASE("repeated in one list is once; in two lists of a stage is told") {
  const Catalogue c = make_catalogue(three_bags());
  const Tally t = tally(c, plan_of(c),
                        {scan(c, Stage::loaded, "van", "TRUNK"), scan(c, Stage::loaded, "van", "TRUNK"),
                         scan(c, Stage::loaded, "trailer", "BAG-1"), scan(c, Stage::loaded, "van", "BAG-1"),
                         scan(c, Stage::out, "ana", "TRUNK")},
                        {Stage::out, Stage::loaded});
  REQUIRE(t.twice.size() == 1);
  CHECK(c.units[static_cast<std::size_t>(t.twice[0].first)].code == "BAG-1");
  CHECK(t.twice[0].second.size() == 2);
}

TEST_CASE("one of several taken for another is said beside what is missing") {
  const Catalogue c = make_catalogue(three_bags());
  Plan plan = plan_of(c);
  plan.rows[static_cast<std::size_t>(c.unit_index("BAG-3"))].goes = false;
  const Tally t = tally(
      c, plan,
      {scan(c, Stage::out, "ana", "BAG-3"), scan(c, Stage::out, "ana", "BAG-1"), scan(c, Stage::out, "ana", "TRUNK")},
      {Stage::out});
  REQUIRE(t.missing.size() == 1);
  CHECK(t.missing[0].unit == c.unit_index("BAG-2"));
  CHECK(t.missing[0].like == c.unit_index("BAG-3"));
}

TEST_CASE("an empty list of what came back leaves all missing") {
  const Catalogue c = make_catalogue(three_bags());
  CHECK(tally(c, plan_of(c), {}, {Stage::back}).missing.size() == 4);
}

TEST_CASE("a label is new, or says what changed") {
  Kit before = three_bags(), after = three_bags();
  after.cases[0].name.value = "Large trunk";
  after.cases[1].weighed = Sourced<Mass>{10 * unit::kilogram, {}};
  after.cases[1].marks = {Mark::fragile};
  add_case(after, "NEW", 3);
  const Catalogue now = make_catalogue(after), old = make_catalogue(before);
  const std::vector<Handling> handling(now.units.size()), handling_before(old.units.size());
  std::string told;
  for (const LabelChange& change : label_changes(now, handling, old, handling_before))
    told += now.units[static_cast<std::size_t>(change.unit)].code + ": " + change.what + "; ";
  CHECK(told == "TRUNK: name; BAG-1: mass, marks; BAG-2: mass, marks; BAG-3: mass, marks; NEW: new; ");
  CHECK(label_changes(now, handling, now, handling).empty());
}
