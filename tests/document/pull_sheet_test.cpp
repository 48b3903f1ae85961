// SPDX-License-Identifier: MIT
#include "document/pull_sheet.h"

#include <algorithm>
#include <cstdlib>

#include "document/shelf_walk.h"
#include "small_house.h"

using namespace dunnage;

TEST_CASE("without teams, one walk along the shelves, Rack 2 before Rack 10") {
  const SmallHouse house;
  const Document sheet = made(pull_sheet(house.context()));
  REQUIRE(sheet.sections.size() == 1);
  CHECK(sheet.title == "Pull sheet");
  CHECK(sheet.date == "Sat 2027-06-19");
  CHECK(block_text(sheet.sections[0], "rows") ==
        "rows:\n"
        " no shelf given\n"
        "  [ ] | [ ] | CASH | Cash box |  |  | not weighed | carry/lift: weigh first | Front of house\n"
        " Rack 2\n"
        "  [ ] | [ ] | FOH | Front trunk | black, red lid |  | 82 lb | roll (ramp: 2)/lift: 3 people | Front of house\n"
        " Rack 10\n"
        "  [ ] | [ ] | BAG-1 | Ballast bag | gray bag | 1 of 3 | 35 lb | carry/lift: 1 person | Front of house\n"
        "  [ ] | [ ] | BAG-3 | Ballast bag | gray bag | 3 of 3 | 35 lb | carry/lift: 1 person | Front of house\n"
        " = |  |  | 4 pieces in all |  |  | 152 lb + 1 not weighed |  | ");
}

TEST_CASE("the printed total is the sum of the printed masses") {
  const SmallHouse house;
  // 81.4 + 2 x 34.2 lb are 149.8 lb; 82 + 2 x 35 lb are what stands on the lines.
  CHECK(sum_of(rows_to_pull(house.context()), UnitSystem::us).text(english()) == "152 lb + 1 not weighed");
  CHECK(sum_of(rows_to_pull(house.context()), UnitSystem::metric).text(english()) == "69.0 kg + 1 not weighed");
}

TEST_CASE("an estimate is marked on its line and in the total") {
  SmallHouse house;
  house.plan.rows[4].mass = 3 * unit::pound;
  house.plan.rows[4].mass_known = house.plan.rows[4].estimated = true;
  const Document sheet = made(pull_sheet(house.context()));
  const std::string rows = block_text(sheet.sections[0], "rows");
  CHECK(rows.find("| 3 lb est. |") != std::string::npos);
  CHECK(rows.find("| 155 lb est. |") != std::string::npos);
}

TEST_CASE("look-alikes that stay are named, with where they stand") {
  const SmallHouse house;
  const Document sheet = made(pull_sheet(house.context()));
  CHECK(block_text(sheet.sections[0], "stays") == "stays:\n  BAG-2: Ballast bag; gray bag; Rack 10");
  CHECK(block_text(sheet.sections[0], "ask") == "ask: Cannot find it? Ask 4 Winds Sound, 555-0100.");
}

TEST_CASE("who keeps the kit is asked before the house") {
  SmallHouse house;
  house.show.site.contacts = {{typed("First aid"), typed("Wren"), typed("555-1")},
                              {typed("Kit keeper"), typed("Hazel"), typed("555-2")}};
  const Document sheet = made(pull_sheet(house.context()));
  CHECK(block_text(sheet.sections[0], "ask") == "ask: Cannot find it? Ask Hazel, Kit keeper, 555-2.");
}

TEST_CASE("every unit pulled stands on exactly one team's section") {
  SmallHouse house;
  house.show.teams = {{typed("Two"), {}, {}, {}, {}}, {typed("One"), {}, {}, {}, {}}, {typed("Idle"), {}, {}, {}, {}}};
  house.plan.rows[0].team = "One";
  house.plan.rows[1].team = "Two";
  house.plan.rows[3].team = "Two";
  const Document sheet = made(pull_sheet(house.context()));
  std::vector<std::string> recipients, codes;
  for (const Section& section : sheet.sections) {
    recipients.push_back(section.recipient);
    for (const Block& b : section.blocks)
      if (b.id == "rows")
        for (const Group& group : std::get<block::Table>(b.content).groups)
          for (const Row& row : group.rows) codes.emplace_back(row.cell(2).text);
  }
  CHECK(recipients == std::vector<std::string>{"Two", "One", "no team"});
  std::sort(codes.begin(), codes.end());
  CHECK(codes == std::vector<std::string>{"BAG-1", "BAG-3", "CASH", "FOH"});
  CHECK(block_text(sheet.sections[0], "end") ==
        "end: Complete when all 2 pieces are ticked twice, or their line says why not.\n"
        "  pulled by\n  time\n  pieces counted");
}

TEST_CASE("one team's sheet alone, and none where nothing goes") {
  SmallHouse house;
  house.show.teams = {{typed("One"), {}, {}, {}, {}}};
  house.plan.rows[0].team = "One";
  Context context = house.context();
  context.only_team = "One";
  CHECK(made(pull_sheet(context)).sections.size() == 1);
  for (PlanRow& row : house.plan.rows) row.goes = false;
  const Skipped none = skipped(pull_sheet(house.context()));
  CHECK(none.document + ": " + none.reason == "Pull sheet: nothing goes");
}

TEST_CASE("digits are walked as numbers") {
  CHECK(walks_before("Rack 2", "Rack 10"));
  CHECK_FALSE(walks_before("Rack 10", "Rack 2"));
  CHECK(walks_before("BAG-9", "BAG-10"));
  CHECK(walks_before("rack a", "Rack B"));
  CHECK(walks_before("Rack A", "Rack A, low"));
  CHECK_FALSE(walks_before("Rack 2", "Rack 2"));
  CHECK(walks_before("Rack 02", "Rack 3"));
}
