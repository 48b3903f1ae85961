// SPDX-License-Identifier: MIT
// Each kind of mistake in a kit, with the exact words that tell it.
#include <catch2/catch.hpp>

#include "telling.h"

using namespace dunnage;

namespace {

// The small kit has 11 lines and ends inside its [[case]].
std::string with(const std::string& lines) { return told_of_kit({small_kit + lines}); }

}  // namespace

TEST_CASE("A kit in order is told nothing, with a byte order mark or with CRLF too") {
  CHECK(told_of_kit({small_kit}).empty());
  CHECK(told_of_kit({"\xEF\xBB\xBF" + small_kit}).empty());
  std::string crlf;
  for (const char c : small_kit) crlf += c == '\n' ? std::string("\r\n") : std::string(1, c);
  CHECK(told_of_kit({crlf}).empty());
  CHECK(told_of_kit({crlf + "homme = 1\r\n"}) ==
        "k1.toml:12:1: error: \"homme\" is not a key of [[case]]\n"
        "  homme = 1\n"
        "  ^~~~~\n"
        "hint: did you mean \"home\"?\n"
        "1 error\n");
}

TEST_CASE("An unknown key is answered with the nearest known") {
  CHECK(with("hodls = \"good\"\n") ==
        "k1.toml:12:1: error: \"hodls\" is not a key of [[case]]\n"
        "  hodls = \"good\"\n"
        "  ^~~~~\n"
        "hint: did you mean \"holds\"?\n"
        "1 error\n");
  CHECK(with("needs = [{ code = \"MIC\", eech = 1 }]\n") ==
        "k1.toml:12:26: error: \"eech\" is not a key of an entry of \"needs\"\n"
        "  needs = [{ code = \"MIC\", eech = 1 }]\n"
        "                           ^~~~\n"
        "hint: did you mean \"each\"?\n"
        "1 error\n");
  CHECK(with("[[unit]]\ncode = \"BOX\"\ncolour = \"red\"\n") ==
        "k1.toml:14:1: error: \"colour\" is not a key of [[unit]]\n"
        "  colour = \"red\"\n"
        "  ^~~~~~\n"
        "hint: its keys are: code, out_of_service, weighed, home\n"
        "1 error\n");
}

TEST_CASE("A missing key is told at its section") {
  CHECK(with("[[item]]\ncode = \"DI\"\n") ==
        "k1.toml:12:1: error: [[item]] has no \"name\"\n"
        "  [[item]]\n"
        "  ^~~~~~~~\n"
        "hint: add name = \"...\"\n"
        "1 error\n");
}

TEST_CASE("A value of the wrong type") {
  CHECK(with("count = \"two\"\n") ==
        "k1.toml:12:9: error: \"count\" must be a whole number, not a text\n"
        "  count = \"two\"\n"
        "          ^~~~~\n"
        "hint: write count = 1\n"
        "1 error\n");
  CHECK(with("wheels = \"yes\"\n") ==
        "k1.toml:12:10: error: \"wheels\" must be true or false, not a text\n"
        "  wheels = \"yes\"\n"
        "           ^~~~~\n"
        "hint: write wheels = true or wheels = false, without quotes\n"
        "1 error\n");
  CHECK(with("serves = \"stand\"\n") ==
        "k1.toml:12:10: error: \"serves\" must be a list, not a text\n"
        "  serves = \"stand\"\n"
        "           ^~~~~~~\n"
        "hint: put it in brackets: serves = [\"stand\"]\n"
        "1 error\n");
  CHECK(with("inspect_by = \"2027-09-01\"\n") ==
        "k1.toml:12:14: error: \"inspect_by\" must be a date, not a text\n"
        "  inspect_by = \"2027-09-01\"\n"
        "               ^~~~~~~~~~~~\n"
        "hint: write year, month, day without quotes: inspect_by = 2027-06-19\n"
        "1 error\n");
  CHECK(told_of_kit({small_house + "[case]\ncode = \"BOX\"\n"}) ==
        "k1.toml:3:1: error: \"case\" must be a list of sections, not a section\n"
        "  [case]\n"
        "  ^~~~~~\n"
        "hint: write [[case]] for each, with two pairs of brackets\n"
        "1 error\n");
}

TEST_CASE("An unknown unit, and a number without one") {
  CHECK(with("empty = \"27 KG\"\n") ==
        "k1.toml:12:9: error: \"KG\" is not a unit of mass\n"
        "  empty = \"27 KG\"\n"
        "          ^~~~~~~\n"
        "hint: did you mean \"kg\"?\n"
        "1 error\n");
  CHECK(with("empty = 27\n") ==
        "k1.toml:12:9: error: \"empty\" is a number without a unit\n"
        "  empty = 27\n"
        "          ^~\n"
        "hint: write the unit too, in quotes: empty = \"27 kg\" or \"27 lb\"\n"
        "1 error\n");
  CHECK(with("empty = \"27\"\n") ==
        "k1.toml:12:9: error: the number has no unit\n"
        "  empty = \"27\"\n"
        "          ^~~~\n"
        "hint: write a unit, for example 27 lb or 12.5 kg\n"
        "1 error\n");
}

TEST_CASE("A value out of its range") {
  CHECK(with("empty = \"9000 lb\"\n") ==
        "k1.toml:12:9: error: \"empty\" is out of range\n"
        "  empty = \"9000 lb\"\n"
        "          ^~~~~~~~~\n"
        "hint: mass of a case: 0.01 kg to 2000 kg\n"
        "1 error\n");
  CHECK(with("count = 0\n") ==
        "k1.toml:12:9: error: \"count\" is out of range\n"
        "  count = 0\n"
        "          ^\n"
        "hint: a whole number from 1 to 9999\n"
        "1 error\n");
}

TEST_CASE("A word or a code that nothing knows is answered with the nearest") {
  CHECK(with("marks = [\"fragil\"]\n") ==
        "k1.toml:12:10: error: \"marks\" cannot be \"fragil\"\n"
        "  marks = [\"fragil\"]\n"
        "           ^~~~~~~~\n"
        "hint: did you mean \"fragile\"?\n"
        "1 error\n");
  CHECK(with("needs = [{ code = \"MIK\" }]\n") ==
        "k1.toml:12:19: error: nothing in the kit is or serves as \"MIK\"\n"
        "  needs = [{ code = \"MIK\" }]\n"
        "                    ^~~~~\n"
        "hint: did you mean \"MIC\"?\n"
        "1 error\n");
  CHECK(with("[[case]]\ncode = \"TUB\"\nname = \"Tub\"\nform = \"tub\"\nholds = [{ item = \"BOX\", count = 1 "
             "}]\n") ==
        "k1.toml:16:19: error: no item has the code \"BOX\"\n"
        "  holds = [{ item = \"BOX\", count = 1 }]\n"
        "                    ^~~~~\n"
        "hint: that is a case, and a case holds items only\n"
        "1 error\n");
  CHECK(with("goes = [{ crew_form = 3 }]\n") ==
        "k1.toml:12:11: error: \"crew_form\" is nothing that a show states\n"
        "  goes = [{ crew_form = 3 }]\n"
        "            ^~~~~~~~~\n"
        "hint: did you mean \"crew_from\"?\n"
        "1 error\n");
  CHECK(told_of_kit({small_house + "packet = [\"pull-sheat\"]\n" + small_kit.substr(small_house.size())},
                    {{"cover", "pull-sheet"}, {}, {}}) ==
        "k1.toml:3:11: error: there is no document \"pull-sheat\"\n"
        "  packet = [\"pull-sheat\"]\n"
        "            ^~~~~~~~~~~~\n"
        "hint: did you mean \"pull-sheet\"?\n"
        "1 error\n");
}

TEST_CASE("A code is given once, whatever it names and whichever file it is in") {
  CHECK(told_of_kit({small_kit, "[[case]]\ncode = \"MIC\"\nname = \"Again\"\nform = \"box\"\n"}) ==
        "k2.toml:2:8: error: the code \"MIC\" is given twice\n"
        "  code = \"MIC\"\n"
        "         ^~~~~\n"
        "hint: give one of them another code\n"
        "k1.toml:4:8: note: an item has it first\n"
        "  code = \"MIC\"\n"
        "         ^~~~~\n"
        "1 error\n");
  CHECK(with("count = 3\n[[item]]\ncode = \"BOX-2\"\nname = \"Other\"\n") ==
        "k1.toml:14:8: error: the code \"BOX-2\" is given twice\n"
        "  code = \"BOX-2\"\n"
        "         ^~~~~~~\n"
        "hint: give one of them another code\n"
        "k1.toml:8:8: note: one of the 3 units of \"BOX\" has it\n"
        "  code = \"BOX\"\n"
        "         ^~~~~\n"
        "1 error\n");
  CHECK(with("[[item]]\ncode = \"2ND\"\nname = \"Other\"\n") ==
        "k1.toml:13:8: error: \"2ND\" cannot be a code\n"
        "  code = \"2ND\"\n"
        "         ^~~~~\n"
        "hint: a code begins with a letter and has only letters A to Z, digits and -\n"
        "1 error\n");
}

TEST_CASE("A kit without cases, without a house, or with two") {
  CHECK(told_of_kit({small_house}) ==
        "kit: error: the kit is empty: it has no [[case]]\n"
        "hint: add a [[case]] for each thing that is carried, with code, name and form\n"
        "1 error\n");
  CHECK(told_of_kit({small_kit.substr(small_house.size())}) ==
        "kit: error: the kit has no [house]\n"
        "hint: add [house] with name = \"...\" to one of its files\n"
        "1 error\n");
  CHECK(told_of_kit({small_kit, small_house}) ==
        "k2.toml:1:1: error: [house] stands twice in this kit\n"
        "  [house]\n"
        "  ^~~~~~~\n"
        "hint: put all its keys under one [house]\n"
        "k1.toml:1:1: note: it stands first here\n"
        "  [house]\n"
        "  ^~~~~~~\n"
        "1 error\n");
}

TEST_CASE("One unit of several is named as one unit") {
  CHECK(with("count = 3\n[[unit]]\ncode = \"BOX\"\n") ==
        "k1.toml:14:8: error: \"BOX\" is 3 units\n"
        "  code = \"BOX\"\n"
        "         ^~~~~\n"
        "hint: name one of them: BOX-1 to BOX-3\n"
        "1 error\n");
}

TEST_CASE("What is marked this way up lies on no other side") {
  CHECK(told_of_kit({small_kit + "lies = [\"flat\"]\nmarks = [\"fragile\"]\n"}).empty());
  CHECK(told_of_kit({small_kit + "marks = [\"this-way-up\"]\nlies = [\"flat\"]\n"}) ==
        "k1.toml:13:8: error: a case marked \"this-way-up\" lies on no other side\n"
        "  lies = [\"flat\"]\n"
        "         ^~~~~~~~\n"
        "hint: take away the mark, or this key\n"
        "1 error\n");
}

TEST_CASE("Many mistakes are told in one run, in order") {
  CHECK(with("empty = 27\nhomme = \"Rack\"\nneeds = [{ code = \"MIK\" }]\n[[item]]\ncode = \"DI\"\n") ==
        "k1.toml:12:9: error: \"empty\" is a number without a unit\n"
        "  empty = 27\n"
        "          ^~\n"
        "hint: write the unit too, in quotes: empty = \"27 kg\" or \"27 lb\"\n"
        "k1.toml:13:1: error: \"homme\" is not a key of [[case]]\n"
        "  homme = \"Rack\"\n"
        "  ^~~~~\n"
        "hint: did you mean \"home\"?\n"
        "k1.toml:14:19: error: nothing in the kit is or serves as \"MIK\"\n"
        "  needs = [{ code = \"MIK\" }]\n"
        "                    ^~~~~\n"
        "hint: did you mean \"MIC\"?\n"
        "k1.toml:15:1: error: [[item]] has no \"name\"\n"
        "  [[item]]\n"
        "  ^~~~~~~~\n"
        "hint: add name = \"...\"\n"
        "4 errors\n");
}

TEST_CASE("A conductor is a gauge or a cross-section") {
  CHECK(with("conductor = \"12 AWG\"\n").empty());
  CHECK(with("conductor = \"2/0AWG\"\n").empty());
  CHECK(with("conductor = \"2.5 mm2\"\n").empty());
  CHECK(with("conductor = \"13 AWG\"\n") ==
        "k1.toml:12:13: error: \"13 AWG\" is no size of conductor\n"
        "  conductor = \"13 AWG\"\n"
        "              ^~~~~~~~\n"
        "hint: write a gauge, \"12 AWG\" (18 to 4/0), or a cross-section, \"2.5 mm2\"\n"
        "1 error\n");
}

TEST_CASE("Not-a-number and infinity are no numbers") {
  CHECK(with("empty = nan\n") ==
        "k1.toml:12:9: error: \"empty\" is no number\n"
        "  empty = nan\n"
        "          ^~~\n"
        "hint: write mass and unit in quotes\n"
        "1 error\n");
  CHECK(with("goes = [{ crew_from = inf }]\n") ==
        "k1.toml:12:23: error: \"crew_from\" must be a finite number\n"
        "  goes = [{ crew_from = inf }]\n"
        "                        ^~~\n"
        "hint: write digits: crew_from = 20\n"
        "1 error\n");
}

TEST_CASE("A canopy stands on legs on more than one edge") {
  const auto legs = [](const std::string& names) {
    return with("[[structure]]\ncode = \"CANOPY\"\nkind = \"canopy\"\nlegs = [" + names + "]\n");
  };
  CHECK(legs("\"NW\", \"NE\", \"SE\", \"SW\"").empty());
  CHECK(legs("\"NW\", \"NE\", \"S\"").empty());
  CHECK(legs("\"1\", \"2\", \"3\"").empty());
  CHECK(legs("\"NW\", \"SE\"") ==
        "k1.toml:15:9: error: a canopy stands on three legs at least\n"
        "  legs = [\"NW\", \"SE\"]\n"
        "          ^~~~\n"
        "hint: name every leg it stands on: legs = [\"NW\", \"NE\", \"SE\", \"SW\"]\n"
        "1 error\n");
  CHECK(legs("\"NW\", \"N\", \"north-east\"") ==
        "k1.toml:15:9: error: all legs stand on one edge of the canopy\n"
        "  legs = [\"NW\", \"N\", \"north-east\"]\n"
        "          ^~~~\n"
        "hint: name every leg it stands on: legs = [\"NW\", \"NE\", \"SE\", \"SW\"]\n"
        "1 error\n");
}

TEST_CASE("Codes that differ in small and capital letters only are one code to whoever reads them out") {
  CHECK(with("[[case]]\ncode = \"box\"\nname = \"Other\"\nform = \"box\"\nneeds = [{ code = \"MIC\" }]\n") ==
        "k1.toml:13:8: error: the codes \"box\" and \"BOX\" differ in small and capital letters only\n"
        "  code = \"box\"\n"
        "         ^~~~~\n"
        "hint: give one of them another code\n"
        "k1.toml:8:8: note: a case has this code\n"
        "  code = \"BOX\"\n"
        "         ^~~~~\n"
        "1 error\n");
  CHECK(with("count = 3\n[[item]]\ncode = \"box-2\"\nname = \"Other\"\n") ==
        "k1.toml:14:8: error: the codes \"box-2\" and \"BOX-2\" differ in small and capital letters only\n"
        "  code = \"box-2\"\n"
        "         ^~~~~~~\n"
        "hint: give one of them another code\n"
        "k1.toml:8:8: note: one of the 3 units of \"BOX\" has it\n"
        "  code = \"BOX\"\n"
        "         ^~~~~\n"
        "1 error\n");
}

TEST_CASE("A case does not need itself") {
  CHECK(with("needs = [{ code = \"BOX\" }]\n") ==
        "k1.toml:12:19: error: \"BOX\" needs itself\n"
        "  needs = [{ code = \"BOX\" }]\n"
        "                    ^~~~~\n"
        "hint: name what goes with it, or take this entry away\n"
        "1 error\n");
}

TEST_CASE("Signs that nobody sees are no part of a text") {
  CHECK(with("looks = \"a\\u202Eb\"\n") ==
        "k1.toml:12:9: error: \"looks\" holds a sign that does not print\n"
        "  looks = \"a\\u202Eb\"\n"
        "          ^~~~~~~~~~\n"
        "hint: it is U+202E, which nobody sees: type the text again instead of pasting it\n"
        "1 error\n");
  CHECK(with("looks = \"a\u2066b\"\n").find("hint: it is U+2066, which nobody sees") != std::string::npos);
  CHECK(with("looks = \"a\u200Bb\"\n").find("hint: it is U+200B, which nobody sees") != std::string::npos);
  CHECK(with("looks = \"a\x01z\"\n") ==
        "k1.toml:12:11: error: there is a sign here that does not print\n"
        "  looks = \"a\\u0001z\"\n"
        "            ^~~~~~\n"
        "hint: delete it; spaces stand between words\n"
        "1 error\n");
  CHECK(with("looks = \"a\n") ==
        "k1.toml:12:11: error: the text is broken here\n"
        "  looks = \"a\n"
        "            ^\n"
        "hint: close it with \" on the same line, and write \\\\ for a backslash\n"
        "1 error\n");
  CHECK(with("looks = \"a\tb\"\n").find("hint: type it again, without \\u, \\b or \\t") != std::string::npos);
}

TEST_CASE("A name and all that is typed of gear stands on one line, on the label and in its code") {
  const std::string hint = "hint: write it on one line: a blank or a comma parts it as well\n1 error\n";
  CHECK(with("looks = \"red\\nBAG-2  Ballast\"\n") ==
        "k1.toml:12:9: error: \"looks\" is of several lines\n"
        "  looks = \"red\\nBAG-2  Ballast\"\n"
        "          ^~~~~~~~~~~~~~~~~~~~~\n" +
            hint);
  CHECK(with("home = \"\"\"Shelf A,\nfloor\"\"\"\n").ends_with(hint));
  CHECK(with("home = \"\"\"Shelf A, \\\n floor\"\"\"\n").empty());  // TOML joins these two lines
}
