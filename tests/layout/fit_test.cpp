// SPDX-License-Identifier: MIT
// How text is brought into its room: wrapped, shrunk, refused, cut; and what a changed layout changes.
#include "layout/fit.h"

#include <catch2/catch.hpp>

#include "layout/lines.h"
#include "layout/small_document.h"

using namespace dunnage;

namespace {

std::vector<std::string> broken(const std::string& text, double width_mm) {
  return break_lines(faces(), faces().at("code"), 10 * unit::point, 13 * unit::point, text, width_mm * unit::paper_mm)
      .lines;
}

/// One cell "what" in a column of 30 mm.
LaidOut one_cell(const std::string& text, const std::string& type) {
  block::Table table;
  table.columns = {"what"};
  table.groups.push_back({"", {{{cell(text)}}}});
  return lay_out(document_of({{"rows", table}}),
                 "[[block]]\nid = \"rows\"\n[[block.column]]\nid = \"what\"\nwidth = \"30 mm\"\ntype = " + type + "\n");
}

}  // namespace

TEST_CASE("lines break at spaces, after hyphens and slashes, and inside a word only where nothing else helps") {
  using Lines = std::vector<std::string>;  // 10 pt of code: 2.117 mm a character
  CHECK(broken("mic cable", 12) == Lines{"mic", "cable"});
  CHECK(broken("mic cable", 20) == Lines{"mic cable"});
  CHECK(broken("front-of-house", 20) == Lines{"front-of-", "house"});
  CHECK(broken("left/right", 13) == Lines{"left/", "right"});
  CHECK(broken("see FOH-1", 14) == Lines{"see", "FOH-1"});
  CHECK(broken("2027-06-19", 22) == Lines{"2027-06-19"});
  CHECK(broken("abcdefgh", 9) == Lines{"abcd", "efgh"});
  CHECK(broken("one\ntwo\n", 40) == Lines{"one", "two", ""});
  CHECK(broken("a   b", 40) == Lines{"a   b"});
  CHECK(broken("", 40) == Lines{""});
}

TEST_CASE("a cell shrinks to its floor and then wraps") {
  const std::string type = R"({ face = "code", size = "14 pt", floor = "10 pt", fit = "shrink" })";
  CHECK(pt(words_on(one_cell("12345", type).pages.pages[0], "12345").size) == Approx(14));
  // 12 characters of 0.6 em in 30 mm: 11.8 pt, taken down to a quarter point
  CHECK(pt(words_on(one_cell("123456789012", type).pages.pages[0], "123456789012").size) == Approx(11.75));
  const LaidOut wrapped = one_cell("front of house trunk", type);
  CHECK(pt(words_on(wrapped.pages.pages[0], "front of house").size) == Approx(10));
  CHECK(says(wrapped.pages.pages[0], "trunk"));
  CHECK(wrapped.problems.empty());
}

TEST_CASE("a word wider than its column makes the text smaller before it breaks inside") {
  const std::string type = R"({ face = "code", size = "14 pt", floor = "9 pt" })";  // 10 characters at 14 pt
  const LaidOut smaller = one_cell("the instruments-", type);
  CHECK(pt(words_on(smaller.pages.pages[0], "instruments-").size) == Approx(11.75));
  const LaidOut broken_word = one_cell("12345678901234567890", type);
  CHECK(pt(words_on(broken_word.pages.pages[0], "123456789012345").size) == Approx(9));
}

TEST_CASE("a cell that refuses tells of text that does not fit, and prints it all the same") {
  const LaidOut out = one_cell("front of house trunk", R"({ face = "code", size = "14 pt", fit = "refuse" })");
  REQUIRE(out.problems.size() == 1);
  CHECK(sentence(out.problems[0]) ==
        "walk, block \"rows\": \"front of house trunk\" does not fit on one line of 30 mm at 14 pt");
  CHECK(says(out.pages.pages[0], "trunk"));
}

TEST_CASE("a character that no face has is told with its text") {
  const LaidOut out = one_cell("key \u5b57", R"("12 pt")");
  REQUIRE(out.problems.size() == 1);
  CHECK(sentence(out.problems[0]) ==
        "walk, block \"rows\": \"key \u5b57\" has a character that no face can set: U+5B57");
}

TEST_CASE("an unknown face is told with the faces there are") {
  const LaidOut out = one_cell("x", R"({ face = "fancy" })");
  REQUIRE(!out.problems.empty());
  CHECK(out.problems[0].text == "fancy");
  CHECK(out.problems[0].cause.rfind("is no face; the faces are text, text-bold", 0) == 0);
}

TEST_CASE("columns that have no room are a problem") {
  block::Table table;
  table.columns = {"a", "b"};
  table.groups.push_back({"", {{{cell("x"), cell("y")}}}});
  const LaidOut out = lay_out(document_of({{"rows", table}}),
                              "[page]\nmargin = \"10 mm\"\n[[block]]\nid = \"rows\"\n[[block.column]]\nid = \"a\"\n"
                              "width = \"185 mm\"\n[[block.column]]\nid = \"b\"\n");
  REQUIRE(out.problems.size() == 1);
  CHECK(sentence(out.problems[0]) == "walk, block \"rows\": the columns need 197 mm and have 190 mm");
}

TEST_CASE("a changed layout changes the page") {
  const Document document = document_of({rows(3), {"note", block::Paragraph{"a note"}}});
  const auto layout = [](const std::string& size, const std::string& order) {
    const std::string table =
        "[[block]]\nid = \"rows\"\nrow_height = \"9 mm\"\n[[block.column]]\nid = \"what\"\ntype = \"" + size +
        "\"\n[[block.column]]\nid = \"box\"\nwidth = \"20 mm\"\n";
    const std::string note = "[[block]]\nid = \"note\"\n";
    return order == "note first" ? note + table : table + note;
  };
  const Page plain = lay_out(document, layout("12 pt", "table first")).pages.pages[0];
  const Page larger = lay_out(document, layout("18 pt", "table first")).pages.pages[0];
  const Page turned = lay_out(document, layout("12 pt", "note first")).pages.pages[0];
  CHECK(pt(words_on(plain, "row 1").size) == Approx(12));
  CHECK(pt(words_on(larger, "row 1").size) == Approx(18));
  CHECK(words_on(plain, "a note").at.y > words_on(plain, "row 3").at.y);
  CHECK(words_on(turned, "a note").at.y < words_on(turned, "row 1").at.y);
  CHECK(words_on(plain, "row 1").at.x < Paper(150 * unit::paper_mm));
}

TEST_CASE("forms, facts and notices say all their words") {
  const LaidOut out = lay_out(document_of({{"facts", block::Facts{{{"Gate", "North"}, {"Phone", "555-0100"}}}},
                                           {"stop", block::Notice{"CAUTION", {"Two people."}}},
                                           {"fill", block::Fill{{"Wind now", "Time"}}},
                                           {"list", block::Listing{{"first", "second", "third"}}},
                                           {"sign", block::Signature{"All done.", {"Name", "Hour"}}}}),
                              "[[block]]\nid = \"facts\"\nacross = 2\n[[block]]\nid = \"stop\"\n[[block]]\nid = "
                              "\"fill\"\nacross = 2\n"
                              "[[block]]\nid = \"list\"\nacross = 2\n[[block]]\nid = \"sign\"\nacross = 2\n");
  CHECK(sentences(out.problems).empty());
  REQUIRE(out.pages.pages.size() == 1);
  const Page& page = out.pages.pages[0];
  for (const char* text : {"Gate", "North", "555-0100", "CAUTION", "Two people.", "Wind now", "first", "third",
                           "All done.", "Name", "Hour"})
    CHECK(says(page, text));
  CHECK(words_on(page, "Gate").at.y == words_on(page, "North").at.y);
  CHECK(all_of<ink::Line>(page).size() == 5);  // head, two to fill, two to sign
  CHECK(all_of<ink::Rect>(page).size() == 1);
}
