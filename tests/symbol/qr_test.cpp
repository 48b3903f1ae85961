// SPDX-License-Identifier: MIT
// Size, correction, and what is said when the text is longer than the label. That readers read the codes is
// tested where they are printed (tests/export).
#include "symbol/qr.h"

#include <catch2/catch.hpp>

using namespace dunnage;

TEST_CASE("a code is as small as its text allows, and correction is raised where it costs no room") {
  const auto code = qr("FOH-1", 'M', 177);
  REQUIRE(code);
  CHECK(code->side == 21);
  CHECK(code->version == 1);
  CHECK(code->correction == 'H');
  CHECK(code->dark.size() == 21 * 21);
  CHECK(code->dark[0]);             // the finder pattern's corner
  CHECK_FALSE(code->dark[21 + 1]);  // its white ring
  CHECK(code->text == "FOH-1");
}

// Byte capacities: ISO/IEC 18004, table 7 (version 5 and 10).
TEST_CASE("a code holds what the standard says and no more") {
  CHECK(qr(std::string(84, 'a'), 'M', 37)->side == 37);
  CHECK_FALSE(qr(std::string(85, 'a'), 'M', 37));
  CHECK(qr(std::string(151, 'a'), 'Q', 57)->side == 57);
  CHECK_FALSE(qr(std::string(152, 'a'), 'Q', 57));
  CHECK_FALSE(qr("a", 'M', 20));
  CHECK(qr(std::string(84, 'a'), 'M', 40)->side == 37);  // 40 modules hold a code of 37, not of 41
}

TEST_CASE("a text that is too long loses whole lines from its end and says how many") {
  const std::string text = "FOH-1  Front trunk\n83 lb  lift 2\n6 Mic\n3 Tape\n12 Cable\n1 Lamp";
  CHECK(qr_fit(text, "+ {n} more", 'M', 177)->code.text == text);
  CHECK(qr_fit(text, "+ {n} more", 'M', 177)->dropped == 0);
  const auto fit = qr_fit(text, "+ {n} more", 'M', 29);  // 42 bytes
  REQUIRE(fit);
  CHECK(fit->code.text == "FOH-1  Front trunk\n83 lb  lift 2\n+ 4 more");
  CHECK(fit->dropped == 4);
}

TEST_CASE("lines that must stay are dropped last") {
  const std::string text = "FOH-1  Front trunk\n83 lb\n6 Mic\n3 Tape\n12 Mic cable, 50 ft, black\nThe house\n555-0100";
  CHECK(qr_fit(text, "+ {n} more", 'L', 33, 2)->code.text ==
        "FOH-1  Front trunk\n83 lb\n6 Mic\n3 Tape\n+ 1 more\nThe house\n555-0100");
  CHECK(qr_fit(text, "+ {n} more", 'M', 29, 2)->code.text == "FOH-1  Front trunk\n+ 5 more\n555-0100");
}

TEST_CASE("the smallest labels carry the first line alone, and none what does not fit") {
  CHECK(qr_fit("FOH-1  Trunk\n83 lb", "+ {n} more", 'M', 21)->code.text == "FOH-1  Trunk");
  CHECK(qr_fit("FOH-1  Trunk\n83 lb", "+ {n} more", 'M', 21)->dropped == 1);
  CHECK_FALSE(qr_fit("FOH-1  Front-of-house trunk", "+ {n} more", 'M', 21));
}
