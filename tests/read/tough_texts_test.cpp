// SPDX-License-Identifier: MIT
// What mangled texts have broken once.
#include <catch2/catch.hpp>

#include "../effort.h"
#include "read/csv_rows.h"
#include "read/csv_text.h"
#include "read/layout_file.h"
#include "read/scans.h"
#include "read/words_file.h"
#include "telling.h"

using namespace dunnage;

TEST_CASE("words of a line of contents keep its count in front") {
  Sources sources;
  Diagnostics diagnostics;
  CHECK(read_words("en.toml", "language = \"en\"\n[words]\n\"label.content\" = \"{n} x {name}\"\n", sources,
                   diagnostics));
  CHECK_FALSE(
      read_words("en.toml", "language = \"en\"\n[words]\nlabel.content = \"{name}: {n}\"\n", sources, diagnostics));
  CHECK(render(diagnostics, sources).find("the words \"label.content\" must begin with {n}") != std::string::npos);
}

TEST_CASE("a whole number that is too long for a figure is out of range") {
  CHECK_FALSE(
      told_of_kit({small_kit + "goes = { crew_from = 9223372036854775807, crew = 0.5, nothing = 9007199254740993 }\n"})
          .empty());
  Sources sources;
  Diagnostics diagnostics;
  CHECK_FALSE(read_layout(
      "walk", "walk.toml",
      "[[block]]\nid = \"rows\"\nstyle = \"table\"\ncolumns = [{ id = \"what\", share = 9223372036854775807 }]\n",
      sources, diagnostics));
}

TEST_CASE("the signs that part two languages on paper cannot be typed") {
  Sources sources;
  Diagnostics diagnostics;
  read_kit_texts(
      "kit",
      {{"k.toml", "[house]\nname = \"H\u2028I\"\n[[case]]\ncode = \"A\"\nname = \"A\\u2029B\"\nform = \"box\"\n"}},
      sources, diagnostics);
  CHECK(diagnostics.errors() == 2);
}

TEST_CASE("cells and lines of any length are read without running out of stack") {
  for (const std::string sign : {" ", "9", "1 x ", "(", "12:00 ", ","}) {
    std::string lengthy;
    while (lengthy.size() < turns(300000)) lengthy += sign;
    Sources sources;
    Diagnostics diagnostics;
    std::vector<std::string> guesses;
    const CsvTable table =
        read_csv("gear.csv",
                 "code,name,weight (kg),size (cm),count,contents,inspect by,wheels\nA,B," + lengthy + "9," + lengthy +
                     "x," + lengthy + ",\"" + lengthy + "\",\"" + lengthy + "\",\"" + lengthy + "\"\n",
                 sources, diagnostics);
    read_rows(table, "case", {}, {}, guesses, diagnostics);
    Kit kit;
    kit.cases.resize(1);
    kit.cases[0].code.value = "BOX";
    kit.cases[0].count = 1;
    const auto scans = read_scans("list.txt", "BOX " + lengthy + "\n" + lengthy + "BOX\nBOX" + lengthy + "12:00\n",
                                  Stage::back, make_catalogue(kit), sources, diagnostics);
    CHECK(!scans.empty());
  }
}

TEST_CASE("times stand at the ends of a line however long the line is") {
  Kit kit;
  kit.cases.resize(1);
  kit.cases[0].code.value = "BOX";
  kit.cases[0].count = 1;
  Sources sources;
  Diagnostics diagnostics;
  const auto scans = read_scans(
      "list.txt", "BOX " + std::string(500, 'x') + " 12:05\n2027-06-19 22:10:03 BOX " + std::string(500, 'y') + "\n",
      Stage::back, make_catalogue(kit), sources, diagnostics);
  REQUIRE(scans.size() == 2);
  CHECK(scans[0].time == "12:05");
  CHECK(scans[0].note == std::string(500, 'x'));
  CHECK(scans[1].time == "2027-06-19 22:10:03");
}
