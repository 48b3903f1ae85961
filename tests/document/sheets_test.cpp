// SPDX-License-Identifier: MIT
// The other sheets: what each says of small things.
#include <algorithm>

#include "document/contents_card.h"
#include "document/cover_sheet.h"
#include "document/crew_sheet.h"
#include "document/documents.h"
#include "document/input_list.h"
#include "document/load_sheet.h"
#include "document/mix_sheet.h"
#include "document/patch_sheet.h"
#include "document/sign_in.h"
#include "small_house.h"

using namespace dunnage;

namespace {

Input small_input(int channel, std::string performer, std::string source) {
  Input input;
  input.channel = {channel, {}};
  input.performer = std::move(performer);
  input.source = typed(std::move(source));
  return input;
}

Mix small_mix(std::string output, std::string who) {
  Mix mix;
  mix.output = typed(std::move(output));
  mix.who = std::move(who);
  mix.wedge = given<std::string>("wedge");
  mix.count = 2;
  return mix;
}

}  // namespace

TEST_CASE("a contents card tells what is left of what is used up") {
  const SmallHouse house;
  const Document cards = made(contents_card(house.context()));
  REQUIRE(cards.sections.size() == 2);
  CHECK(cards.sections[1].recipient == "FOH");
  CHECK(block_text(cards.sections[1], "rows") ==
        "rows:\n -\n"
        "  [ ] | 6 | Vocal mic |  |  | [ ]\n"
        "  [ ] | 3 | Cloth tape | 360 ft of 492 ft | ___ | [ ]");
  CHECK(block_text(cards.sections[0], "rows") == "rows:\n -\n  [ ] | 1 | Vocal mic | [ ]");
}

TEST_CASE("inputs by channel, columns that nobody typed left out, rows for late changes") {
  SmallHouse house;
  Input voice = small_input(2, "Ash", "voice");
  voice.phantom = Sourced<bool>{true, {}};
  voice.pickup = given<std::string>("MIC");
  voice.note = "sings at the keys";
  house.show.inputs = {voice, small_input(1, "Elm", "kick")};
  const Document list = made(input_list(house.context()));
  CHECK(block_text(list.sections[0], "rows") ==
        "rows:\n -\n"
        "  1 | kick | Elm | [ ] | [ ] |  |  | \n"
        "  2 | voice | Ash | [ ] | [ ] | Vocal mic | 48 V | sings at the keys\n"
        " late changes\n"
        "   |  |  | [ ] | [ ] |  |  | \n"
        "   |  |  | [ ] | [ ] |  |  | \n"
        "   |  |  | [ ] | [ ] |  |  | \n"
        "   |  |  | [ ] | [ ] |  |  | ");
}

TEST_CASE("inputs by performer, in order of their first channel") {
  SmallHouse house;
  house.show.input_order = "performer";
  Input pad = small_input(3, "Elm", "snare");
  pad.pad = given<std::string>("20 dB");
  pad.level = given(4 * unit::decibel_u);
  pad.box = given<std::string>("SB-1");
  pad.socket = Sourced<int>{5, {}};
  house.show.inputs = {pad, small_input(2, "Ash", "voice"), small_input(1, "Elm", "kick")};
  const Document list = made(input_list(house.context()));
  CHECK(block_text(list.sections[0], "rows").substr(0, 117) ==
        "rows:\n Elm\n"
        "  1 | kick | [ ] | [ ] |  |  | \n"
        "  3 | snare | [ ] | [ ] | 20 dB/+4 dBu | SB-1 / 5 | \n"
        " Ash\n"
        "  2 | voice | [ ");
}

TEST_CASE("few mixes stand on the input list, more on a sheet of their own") {
  SmallHouse house;
  house.show.inputs = {small_input(1, "Elm", "kick")};
  house.show.mixes = {small_mix("1", "Elm")};
  CHECK(skipped(mix_sheet(house.context())).reason == "few mixes: they stand on the input list");
  CHECK(block_text(made(input_list(house.context())).sections[0], "mixes") ==
        "mixes:\n -\n  1 | Elm | 2 x wedge | [ ] | ");
  house.show.mixes = {small_mix("1", "Elm"), small_mix("2", "Ash"), small_mix("3", "Oak")};
  CHECK(made(mix_sheet(house.context())).sections.size() == 1);
  CHECK(block_text(made(input_list(house.context())).sections[0], "mixes").empty());
}

TEST_CASE("the patch sheet goes by box and socket") {
  SmallHouse house;
  CHECK(skipped(patch_sheet(house.context())).reason == "no input has a box and socket");
  for (int channel = 1; channel <= 6; ++channel) {
    Input input = small_input(channel, "Elm", "line");
    input.box = given<std::string>(channel % 2 ? "SB-10" : "SB-2");
    input.socket = Sourced<int>{7 - channel, {}};
    house.show.inputs.push_back(input);
  }
  CHECK(block_text(made(patch_sheet(house.context())).sections[0], "rows") ==
        "rows:\n"
        " SB-2\n"
        "  1 | ch 6 | line | Elm | [ ]\n"
        "  3 | ch 4 | line | Elm | [ ]\n"
        "  5 | ch 2 | line | Elm | [ ]\n"
        " SB-10\n"
        "  2 | ch 5 | line | Elm | [ ]\n"
        "  4 | ch 3 | line | Elm | [ ]\n"
        "  6 | ch 1 | line | Elm | [ ]");
}

TEST_CASE("what comes off last is loaded first") {
  SmallHouse house;
  Vehicle van;
  van.code = typed("VAN");
  van.payload = given(1500.9 * unit::pound);
  house.catalogue.kit.vehicles = {van};
  house.catalogue.vehicle_by_code = {{"VAN", 0}};
  house.show.places.push_back({typed("gate"), "", {}, {}});
  Load load;
  load.vehicle = typed("VAN");
  load.stops = {typed("gate"), typed("foh")};
  house.show.loads = {load};
  for (PlanRow& row : house.plan.rows) row.vehicle = "VAN";
  house.plan.rows[1].place = "gate";
  const Section section = made(load_sheet(house.context())).sections.at(0);
  const std::string rows = block_text(section, "rows");
  CHECK(rows.find("1 | CASH") < rows.find("2 | FOH"));
  CHECK(rows.find(" gate\n  [ ] | 4 | BAG-1") != std::string::npos);
  CHECK(block_text(section, "facts") ==
        "facts:\n  pieces: 4\n  sum of printed masses: 152 lb + 1 not weighed\n  most payload: 1500 lb\n"
        "  stops in order: gate, Front of house");
}

TEST_CASE("the cover puts what is wrong first and never says that all is well when it is not") {
  SmallHouse house;
  CHECK(block_text(made(cover(house.context())).sections[0], "clear") ==
        "clear: Of the checks that apply, none found a limit exceeded. Read also what does not apply and what was "
        "assumed.");
  Shortage shortage;
  shortage.what = "MIC";
  shortage.wanted = 9;
  shortage.missing = 2;
  shortage.because = said("input 4");
  house.plan.shortages = {shortage};
  Finding over;
  over.rule = RuleName::lifting;
  over.called = as_is("BAG-1");
  over.outcome = Outcome::over;
  over.says = said("Beyond 30 lb by hand.");
  Finding unchecked = over;
  unchecked.outcome = Outcome::not_checked;
  unchecked.says = said("Its mass is not given.");
  Finding again = unchecked;
  again.called = as_is("BAG-3");
  house.findings.list = {over, unchecked, again};
  const Section section = made(cover(house.context())).sections[0];
  CHECK(block_text(section, "over") == "over: OVER LIMIT\n  BAG-1: Beyond 30 lb by hand.");
  CHECK(block_text(section, "short") == "short: SHORT\n  Vocal mic (MIC): 9 wanted, 2 missing: input 4");
  CHECK(block_text(section, "unchecked") == "unchecked: NOT CHECKED\n  BAG-1, BAG-3: Its mass is not given.");
  CHECK(block_text(section, "clear").empty());
}

TEST_CASE("the cover says how good the choice of cases is known to be") {
  SmallHouse house;
  const auto proof = [&] { return block_text(made(cover(house.context())).sections[0], "proof"); };
  CHECK(proof() == "proof: No case had to be chosen: what goes by rule covers what the show asks.");
  house.plan.cover = {80.5 * unit::pound, false, 70.2 * unit::pound, 1000, 3};
  CHECK(proof() ==
        "proof: Cases chosen for what the show asks: 81 lb. Not proved least: at most 11 lb heavier than "
        "need be.");
  house.plan.cover.proved = true;
  CHECK(proof() ==
        "proof: Cases chosen for what the show asks: 81 lb. Proved least: no lighter choice of owned cases "
        "covers it.");
}

TEST_CASE("the cover's totals by team add up to the printed total") {
  SmallHouse house;
  house.show.teams = {{typed("One"), {}, {}, {}, {}}};
  house.plan.rows[0].team = "One";
  const Section section = made(cover(house.context())).sections[0];
  CHECK(block_text(section, "totals") ==
        "totals:\n"
        " by team\n"
        "  One | 1 | 82 lb\n"
        "  no team | 3 | 70 lb + 1 not weighed\n"
        " by vehicle\n"
        "  no vehicle given | 4 | 152 lb + 1 not weighed\n"
        " =in all | 4 | 152 lb + 1 not weighed");
  CHECK(block_text(section, "no-team") == "no-team:\n  CASH  Cash box\n  BAG-1  Ballast bag\n  BAG-3  Ballast bag");
}

TEST_CASE("overrides, what the site has and what is out of service print with their reasons") {
  SmallHouse house;
  house.show.bring = {{typed("BAG"), "wind at the lake", 2, {}}};
  house.show.leave = {{typed("FOH"), "they own one", 0, {}}};
  house.show.site.has = {{typed("table"), 6, "venue", {}}};
  house.catalogue.units[2].out_of_service = given<std::string>("seam split");
  const Section section = made(cover(house.context())).sections[0];
  CHECK(block_text(section, "changes") == "changes:\n  bring 2 x BAG: wind at the lake\n  leave FOH: they own one");
  CHECK(block_text(section, "site") == "site:\n  6 x table, from venue");
  CHECK(block_text(section, "out") == "out:\n  BAG-2: seam split");
}

TEST_CASE("an address for help that nobody gave is said where it is looked for") {
  SmallHouse house;
  house.show.site.address = "Lake Road 9";
  const auto danger = [&] { return block_text(made(crew_sheet(house.context())).sections.at(0), "danger"); };
  const auto briefing = [&] { return block_text(made(sign_in(house.context())).sections.at(0), "briefing"); };
  CHECK(danger() ==
        "danger: IF SOMEONE IS HURT\n  Address for help: not given\n"
        "  Nobody is named who may stop the show: name one now.");
  CHECK(briefing().find("\n  Address for help: not given\n") != std::string::npos);
  house.show.site.emergency_address = "Gate 2, Lake Road";
  CHECK(danger().find("\n  Send help to: Gate 2, Lake Road\n") != std::string::npos);
  CHECK(briefing().find("\n  Send help to: Gate 2, Lake Road\n") != std::string::npos);
}

TEST_CASE("every sheet makes something or says why not, and its title has at most four words") {
  const SmallHouse house;
  for (const DocumentKind& kind : document_kinds()) {
    const std::string title = english()(std::string(kind.title));
    CHECK(std::count(title.begin(), title.end(), ' ') <= 3);
    CHECK_FALSE(english()(std::string(kind.hand)).empty());
    const Made result = kind.make(house.context());
    if (const auto* document = std::get_if<Document>(&result))
      CHECK(document->name == kind.name);
    else
      CHECK(std::get<Skipped>(result).document == title);
  }
}
