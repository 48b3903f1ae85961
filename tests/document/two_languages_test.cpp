// SPDX-License-Identifier: MIT
// Two languages on one sheet: text by text, never in one run of words, what both say alike once.
#include "document/two_languages.h"

#include "document/case_label.h"
#include "document/pull_sheet.h"
#include "small_house.h"

using namespace dunnage;

namespace {

/// English with some words of another language.
Words other() {
  Words words = english();
  words.language = "es";
  words.by_key["pull.title"] = "Hoja de recogida";
  words.by_key["pull.pulled"] = "ya";
  words.by_key["handling.carry"] = "llevar";
  return words;
}

}  // namespace

TEST_CASE("a text in two languages comes apart again, and reads as one line where there is but one") {
  CHECK(in_two("roll", "rodar") == "roll\u2028rodar");
  CHECK(in_two("48 V", "48 V") == "48 V");
  CHECK(in_two("", "rodar") == "rodar");
  CHECK(apart(in_two("a\nb", "c\nd")) == std::pair<std::string, std::string>("a\nb", "c\nd"));
  CHECK(apart("a") == std::pair<std::string, std::string>("a", ""));
  CHECK(on_one_line(in_two("roll", "rodar")) == "roll / rodar");
}

TEST_CASE("a sheet is laid over the same sheet in the other language") {
  SmallHouse house;
  house.catalogue.kit.cases[1].names["es"] = {"Saco de lastre", {}};
  const Words spanish = other();
  Context second = {
      house.catalogue, house.show, house.plan, house.findings, spanish, UnitSystem::us, "mph", "7", {}, {}, {}};
  const Document both = in_two_languages(made(pull_sheet(house.context())), made(pull_sheet(second)));
  CHECK(both.title == "Pull sheet\u2028Hoja de recogida");
  CHECK(both.language == "en");
  CHECK(both.date == "Sat 2027-06-19");
  const std::string rows = block_text(both.sections.at(0), "rows");
  CHECK(rows.find("| Ballast bag\u2028Saco de lastre |") != std::string::npos);
  CHECK(rows.find("carry; lift: 1 person\u2028llevar; lift: 1 person") != std::string::npos);
  CHECK(rows.find("| Front trunk |") != std::string::npos);
}

TEST_CASE("a sheet that must stay on its page has a part in each language") {
  SmallHouse house;
  const Words spanish = other();
  Context second = {
      house.catalogue, house.show, house.plan, house.findings, spanish, UnitSystem::us, "mph", "7", {}, {}, {}};
  const Document one = made(pull_sheet(house.context())), both = in_two_parts(one, made(pull_sheet(second)));
  REQUIRE(both.sections.size() == 2 * one.sections.size());
  CHECK(both.title == "Pull sheet");
  CHECK(both.sections.back().recipient == "Hoja de recogida");
  CHECK(block_text(both.sections[0], "rows") == block_text(one.sections[0], "rows"));
  CHECK(block_text(both.sections.back(), "rows").find("llevar/lift: 1 person") != std::string::npos);
}

TEST_CASE("a QR code stays in the first language") {
  SmallHouse house;
  const auto labels = [&](const Words& words) {
    return case_labels(house.catalogue, house.findings.handling, {1}, words, UnitSystem::us, "7");
  };
  const Document both = in_two_languages(labels(english()), labels(other()));
  CHECK(block_text(both.sections.at(0), "qr") == block_text(labels(english()).sections.at(0), "qr"));
  CHECK(block_text(both.sections.at(0), "handle").find("carry\u2028llevar") != std::string::npos);
}

TEST_CASE("words that no native speaker has read say so at the foot of each sheet") {
  SmallHouse house;
  Words unread = other();
  unread.read_by_native = false;
  const Context context = {
      house.catalogue, house.show, house.plan, house.findings, unread, UnitSystem::us, "mph", "7", {}, {}, {}};
  CHECK(made(pull_sheet(context)).revision == "revision 7. " + unread("page.not-read"));
  CHECK(made(pull_sheet(house.context())).revision == "revision 7");
}
