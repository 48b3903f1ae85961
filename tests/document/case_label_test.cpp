// SPDX-License-Identifier: MIT
#include "document/case_label.h"

#include "small_house.h"

using namespace dunnage;

namespace {

Document labels(const SmallHouse& house, const std::vector<int>& units) {
  return case_labels(house.catalogue, house.findings.handling, units, english(), UnitSystem::us, "7");
}

}  // namespace

TEST_CASE("the QR says code and name, mass and lift, contents, owner and phone") {
  const SmallHouse house;
  const Document document = labels(house, {0});
  CHECK(block_text(document.sections.at(0), "qr") ==
        "qr:\n"
        "FOH  Front trunk\n"
        "mass 82 lb (as of kit 2027-03)\n"
        "roll (ramp: 2); lift: 3 people\n"
        "6 x Vocal mic\n"
        "3 x Cloth tape\n"
        "belongs to 4 Winds Sound\n"
        "phone 555-0100");
}

TEST_CASE("only contents lines begin with a digit, whatever the owner is called") {
  const SmallHouse house;
  const std::string text =
      label_text(house.catalogue, house.findings.handling[0], 0, english(), UnitSystem::metric, "7");
  int digits = 0;
  for (std::size_t at = 0; at < text.size(); at = text.find('\n', at) + 1) {
    digits += text[at] >= '0' && text[at] <= '9';
    if (text.find('\n', at) == std::string::npos) break;
  }
  CHECK(digits == 2);
}

TEST_CASE("withheld contents are neither on the label nor in its QR") {
  const SmallHouse house;
  const Document document = labels(house, {4});
  const Section& section = document.sections.at(0);
  CHECK(block_text(section, "contents").empty());
  CHECK(block_text(section, "qr") ==
        "qr:\n"
        "CASH  Cash box\n"
        "mass not weighed (as of kit 7)\n"
        "carry; lift: weigh first\n"
        "belongs to 4 Winds Sound\n"
        "phone 555-0100");
}

TEST_CASE("a label in blocks") {
  const SmallHouse house;
  const Document document = labels(house, {0});
  std::string all;
  for (const Block& b : document.sections.at(0).blocks)
    if (b.id != "qr") all += as_text(b) + "\n";
  CHECK(all ==
        "code: FOH\n"
        "name: Front trunk\n"
        "mass: 82 lb\n"
        "handle: roll (ramp: 2), lift: 3 people, 3\n"
        "marks:\n  fragile\n"
        "contents:\n  6 x Vocal mic\n  3 x Cloth tape\n"
        "owner: 4 Winds Sound\n555-0100\n"
        "revision: mass weighed, as of kit revision 2027-03\n");
}

TEST_CASE("what nobody may carry goes by the house's aid, on the label and in its code") {
  SmallHouse house;
  Handling& bag = house.findings.handling[1];
  bag.people = 0;
  bag.aid = as_is("hand truck");
  const Document document = labels(house, {1, 2});
  CHECK(block_text(document.sections.at(0), "handle") == "handle: by hand truck, no lift: hand truck, 0");
  CHECK(block_text(document.sections.at(0), "qr").find("by hand truck; no lift: hand truck\n") != std::string::npos);
  CHECK(block_text(document.sections.at(1), "handle") == "handle: carry, lift: 1 person, 1");
}

TEST_CASE("what may stand on top is rounded down") {
  SmallHouse house;
  house.catalogue.kit.cases[1].stack = given(110.9 * unit::pound);
  CHECK(block_text(labels(house, {1}).sections.at(0), "revision") ==
        "revision: at most 110 lb on top; mass weighed, as of kit revision 7");
}
