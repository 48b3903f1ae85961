// SPDX-License-Identifier: MIT
// Power sheet and fader strip.
#include "document/fader_strip.h"
#include "document/power_sheet.h"
#include "small_house.h"

using namespace dunnage;

namespace {

/// A supply with two circuits, of which one was not checked.
struct PoweredHouse : SmallHouse {
  PoweredHouse() {
    Supply supply;
    supply.name = typed("pedestal");
    supply.kind.value = "mains";
    supply.voltage = given(120 * unit::volt);
    supply.power = given(7200 * unit::watt);
    show.supplies = {supply};
    CircuitRow stage;
    stage.name = "Stage";
    stage.leg = "A";
    stage.cable = as_is("EXT");
    stage.feeds = {"1 x AMP, 900 W"};
    stage.outcome = Outcome::within;
    stage.load = 900 * unit::watt;
    stage.current = 9.375 * unit::ampere;
    stage.need = 11.72 * unit::ampere;
    stage.protection = 20 * unit::ampere;
    stage.drop_share = 0.0181;
    CircuitRow desk;
    desk.circuit = 1;
    desk.name = "Desk";
    desk.missing = {said("protection")};
    SupplyDetail detail;
    detail.circuits = {stage, desk};
    detail.tests = {said("Press it.")};
    Finding finding;
    finding.rule = RuleName::supply;
    finding.subject = {Subject::Kind::supply, 0};
    finding.called = as_is("pedestal");
    finding.detail = detail;
    finding.outcome = Outcome::not_checked;
    finding.says = said("Not given: protection.");
    findings.list = {finding};
  }
};

}  // namespace

TEST_CASE("the one-line diagram and the table say the same of each circuit; loads up, capacities down") {
  const PoweredHouse house;
  const Section sheet = made(power_sheet(house.context())).sections.at(0);
  CHECK(sheet.recipient == "pedestal");
  CHECK(block_text(sheet, "diagram") ==
        "diagram: pedestal; mains, 120 V, 7200 W\n"
        "  Stage; 20 A, leg A | EXT; loses 1.9 % | 1 x AMP, 900 W; draws 9.4 A | within limit\n"
        "  Desk; breaker not given | cable not given; loss NOT CHECKED | NOT CHECKED | NOT CHECKED");
  CHECK(block_text(sheet, "circuits").find("Stage | 900 W | 11.8 A | 20 A | 8.2 A | ? | 1.9 % | within limit") !=
        std::string::npos);
  CHECK(block_text(sheet, "unchecked") == "unchecked: NOT CHECKED\n  pedestal: Not given: protection.");
  CHECK(block_text(sheet, "tests").find("Press it. | ___ | [ ]") != std::string::npos);
}

TEST_CASE("a supply that no check looked at is drawn as typed, and loudly not checked; none at all is skipped") {
  PoweredHouse house;
  house.findings.list.clear();
  Circuit circuit;
  circuit.name = typed("Stage");
  circuit.supply = typed("pedestal");
  circuit.feeds = {{typed("AMP"), 2, {}, {}, {}}};
  house.show.circuits = {circuit};
  const Section sheet = made(power_sheet(house.context())).sections.at(0);
  CHECK(block_text(sheet, "unchecked").find("No check of this supply was made.") != std::string::npos);
  CHECK(block_text(sheet, "diagram").find("Stage; breaker not given") != std::string::npos);
  house.show.supplies.clear();
  house.show.circuits.clear();
  CHECK(skipped(power_sheet(house.context())).reason == "no supply and no circuit is given: power was NOT CHECKED");
}

TEST_CASE("a fader strip has a cell for each channel to the end of its bank; twins are told apart") {
  SmallHouse house;
  CHECK(skipped(fader_strip(house.context())).reason == "no inputs are given");
  const auto input = [](int channel, const char* performer, const char* source) {
    Input out;
    out.channel = {channel, {}};
    out.performer = performer;
    out.source = typed(source);
    return out;
  };
  house.show.inputs = {input(3, "Ash", "voice"), input(1, "Elm", "voice"), input(10, "Elm", "kick")};
  const std::string text = block_text(made(fader_strip(house.context())).sections.at(0), "strips");
  CHECK(text.substr(0, 60) ==
        std::string("strips:\n  1 voice\nElm\n  2 \n  3 voice\nAsh\n  4 \n  5 \n  6 \n  7 \n").substr(0, 60));
  CHECK(text.find("\n  10 kick\n") != std::string::npos);
  CHECK(text.ends_with("\n  16 "));
  house.catalogue.kit.cases[0].serves = {typed("console")};
  house.catalogue.kit.cases[0].fader_pitch = given(30 * unit::paper_mm);
  house.catalogue.kit.cases[0].fader_bank = given(12);
  house.catalogue = make_catalogue(house.catalogue.kit);
  house.show.console = given(std::string("console"));
  const auto strips = [&] {
    const Section section = made(fader_strip(house.context())).sections.at(0);
    return std::get<picture::FaderStrips>(std::get<block::Picture>(section.blocks.at(1).content).content);
  };
  CHECK(strips().cells.size() == 12);
  CHECK(strips().pitch == 30 * unit::paper_mm);
  house.show.fader_pitch = given(1 * unit::paper_in);  // the show's goes before the kit's
  CHECK(strips().pitch == 1 * unit::paper_in);
  CHECK(strips().per_bank == 12);
}
