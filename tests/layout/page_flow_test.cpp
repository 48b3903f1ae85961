// SPDX-License-Identifier: MIT
// How a document breaks into pages: what is said again, what stays together, what is never lost.
#include <catch2/catch.hpp>

#include "layout/right_hand.h"
#include "layout/small_document.h"

using namespace dunnage;

namespace {

const std::string table_layout = R"(
[page]
margin = "15 mm"
[type]
size = "12 pt"
[head]
face = "narrow-bold"
[[block]]
id = "rows"
row_height = "10 mm"
tick = "8 mm"
[[block.column]]
id = "box"
width = "14 mm"
[[block.column]]
id = "what"
)";

std::string many_words(int count) {
  std::string text;
  for (int i = 0; i < count; ++i) text += (i > 0 ? " " : "") + ("word" + std::to_string(i));
  return text;
}

}  // namespace

TEST_CASE("a long table repeats its heads and says that it continues") {
  const LaidOut out = lay_out(document_of({rows(60)}), table_layout);
  CHECK(sentences(out.problems).empty());
  REQUIRE(out.pages.pages.size() == 3);
  for (const Page& page : out.pages.pages) {
    CHECK(says(page, "What\n"));
    CHECK(says(page, "Walk\n"));
    CHECK(says(page, "revision 1a2b"));
  }
  CHECK(says(out.pages.pages[0], "Shelf\n"));
  CHECK(says(out.pages.pages[1], "Shelf (continued)"));
  CHECK(says(out.pages.pages[0], "page 1 of 3"));
  CHECK(says(out.pages.pages[2], "page 3 of 3"));
}

TEST_CASE(
    "a table without a title and a listing go on under the heading right before them, and under none further up") {
  std::string layout = table_layout;
  layout.insert(layout.find("[[block]]"), "[[block]]\nid = \"head\"\n");
  const Block head{"head", block::Heading{"Read this"}};
  CHECK(says(lay_out(document_of({head, rows(60, "")}), layout).pages.pages[1], "Read this (continued)"));
  CHECK(!says(lay_out(document_of({head, rows(1), rows(60, "")}), layout).pages.pages[1], "continued"));
  const LaidOut listing =
      lay_out(document_of({head, {"rows", block::Listing{std::vector<std::string>(60, "line")}}}), layout);
  CHECK(says(listing.pages.pages[1], "Read this (continued)"));
}

TEST_CASE("no row is lost, none stands twice, in order") {
  const LaidOut out = lay_out(document_of({rows(60)}), table_layout);
  std::vector<std::string> seen;
  for (const Page& page : out.pages.pages)
    for (const auto& words : all_of<ink::Words>(page))
      if (words.text.rfind("row ", 0) == 0) seen.push_back(words.text);
  REQUIRE(seen.size() == 60);
  for (std::size_t i = 0; i < seen.size(); ++i) CHECK(seen[i] == "row " + std::to_string(i + 1));
}

TEST_CASE("nothing is drawn outside the margins") {
  for (const int count : {1, 21, 22, 23, 24, 60}) {
    const LaidOut out = lay_out(document_of({rows(count, "Shelf", true)}), table_layout);
    for (const Page& page : out.pages.pages) {
      const Box ink = reach(page);
      CHECK(mm(ink.x) >= 14.99);
      CHECK(mm(ink.y) >= 14.99);
      CHECK(mm(ink.x + ink.w) <= 195.01);
      CHECK(mm(ink.y + ink.h) <= 282.01);
    }
  }
}

TEST_CASE("a total never stands alone on a page") {
  for (int count = 18; count <= 26; ++count) {
    const LaidOut out = lay_out(document_of({rows(count, "Shelf", true)}), table_layout);
    const Page& last = out.pages.pages.back();
    CHECK(says(last, "in all"));
    CHECK(says(last, "row " + std::to_string(count) + "\n"));
  }
}

TEST_CASE("a group's title keeps with its first two rows") {
  for (int before = 15; before <= 24; ++before) {
    Block block = rows(before);
    auto& table = std::get<block::Table>(block.content);
    table.groups.push_back(
        {"Cage", {{{tick(), cell("first")}}, {{tick(), cell("second")}}, {{tick(), cell("third")}}}});
    const LaidOut out = lay_out(document_of({block}), table_layout);
    for (const Page& page : out.pages.pages)
      if (says(page, "Cage\n")) {
        CHECK(says(page, "first"));
        CHECK(says(page, "second"));
      }
  }
}

TEST_CASE("a heading keeps with what it heads") {
  const std::string layout = table_layout + "[[block]]\nid = \"head\"\n[[block]]\nid = \"after\"\n";
  for (int count = 18; count <= 25; ++count) {
    const LaidOut out = lay_out(
        document_of({rows(count), {"head", block::Heading{"Heading"}}, {"after", block::Paragraph{many_words(40)}}}),
        layout);
    for (const Page& page : out.pages.pages)
      if (says(page, "Heading\n")) {
        CHECK(says(page, "word0 word1"));
        CHECK(all_of<ink::Words>(page).back().text != "Heading");
      }
  }
}

TEST_CASE("a paragraph leaves at least two lines on either page") {
  const std::string layout =
      "[page]\nmargin = \"15 mm\"\n[[block]]\nid = \"rows\"\nrow_height = \"10 mm\"\ntick = \"8 mm\"\n"
      "[[block.column]]\nid = \"box\"\nwidth = \"14 mm\"\n[[block.column]]\nid = \"what\"\n"
      "[[block]]\nid = \"text\"\n";
  for (int count = 12; count <= 24; ++count) {
    const LaidOut out = lay_out(document_of({rows(count), {"text", block::Paragraph{many_words(90)}}}), layout);
    for (const Page& page : out.pages.pages) {
      int lines = 0;
      for (const auto& words : all_of<ink::Words>(page)) lines += words.text.rfind("word", 0) == 0 ? 1 : 0;
      CHECK(lines != 1);
    }
  }
}

TEST_CASE("a row that is taller than a page is parted, and nothing of it is lost") {
  block::Table table;
  table.columns = {"box", "what"};
  table.groups.push_back({"", {{{tick(), cell(many_words(3000))}}}});
  const LaidOut out = lay_out(document_of({{"rows", table}}), table_layout);
  CHECK(sentences(out.problems).empty());
  CHECK(out.pages.pages.size() > 1);
  std::string all;
  for (const Page& page : out.pages.pages) all += texts(page);
  for (int i = 0; i < 3000; i += 7) CHECK(all.find("word" + std::to_string(i)) != std::string::npos);
  for (const Page& page : out.pages.pages) CHECK(mm(reach(page).y + reach(page).h) <= 282.01);
}

TEST_CASE("closely set lines are parted too; what is far too long, or a picture, is told by its first words") {
  const auto close = [](int words) {
    block::Notice notice{"", {}};
    for (int i = 0; i < words / 300; ++i) notice.lines.push_back(many_words(300));
    return lay_out(
        document_of({{"all", notice}}),
        "[page]\nmargin = \"15 mm\"\n[[block]]\nid = \"all\"\ntype = { size = \"12.5 pt\", leading = \"13.5 pt\" }\n");
  };
  const LaidOut out = close(1500);
  CHECK(sentences(out.problems).empty());
  CHECK(out.pages.pages.size() >= 2);
  for (const Page& page : out.pages.pages) CHECK(mm(reach(page).y + reach(page).h) <= 282.01);
  const std::vector<std::string> told = sentences(close(30000).problems);
  REQUIRE(told.size() == 1);
  CHECK(told.front().starts_with("walk: \"word0 word1 "));
  CHECK(told.front().ends_with("\" begins something taller than a page that cannot be parted"));
}

TEST_CASE("a block that the layout neither places nor leaves out is a problem") {
  const Document document = document_of({rows(2), {"stay", block::Paragraph{"these stay"}}});
  CHECK(sentences(lay_out(document, table_layout).problems) ==
        std::vector<std::string>{"walk, block \"stay\": the layout neither places this block nor leaves it out"});
  const std::string omitted = "[page]\nomit = [\"stay\"]\n" + table_layout.substr(table_layout.find("[type]"));
  CHECK(lay_out(document, omitted).problems.empty());
}

TEST_CASE("a column that the layout neither places nor leaves out is a problem") {
  Block block = rows(2);
  std::get<block::Table>(block.content).columns = {"boxx", "what"};
  const auto problems = lay_out(document_of({block}), table_layout).problems;
  REQUIRE(problems.size() == 1);
  CHECK(sentence(problems[0]) ==
        "walk, block \"rows\": \"boxx\" is a column that the layout neither places nor "
        "leaves out; did you mean \"box\"?");
  CHECK(problems[0].place.words() == "walk.toml:8:1");
}

TEST_CASE("each section numbers its own pages and begins a page of its own") {
  Document document = empty_document();
  document.sections = {{"Team A", {rows(30)}}, {"Team B", {rows(3)}}};
  const LaidOut out = lay_out(document, table_layout);
  REQUIRE(out.pages.pages.size() == 3);
  CHECK(says(out.pages.pages[0], "page 1 of 2"));
  CHECK(says(out.pages.pages[2], "page 1 of 1"));
  CHECK(says(out.pages.pages[2], "Team B"));
  CHECK(out.pages.pages[0].bookmark == "Team A");
  CHECK(out.pages.pages[1].bookmark.empty());
  CHECK(out.pages.pages[2].label == "3");
}

TEST_CASE("cards stand side by side on a lying sheet") {
  Document document = empty_document();
  for (const char* code : {"A", "B", "C"}) document.sections.push_back({code, {rows(3)}});
  const std::string cards =
      "[page]\nlandscape = true\nmargin = \"10 mm\"\n[page.cards]\nacross = 2\ngutter = "
      "\"20 mm\"\ncut_marks = true\n" +
      table_layout.substr(table_layout.find("[type]"));
  const LaidOut out = lay_out(document, cards);
  CHECK(out.problems.empty());
  REQUIRE(out.pages.pages.size() == 2);
  CHECK(mm(out.pages.pages[0].width) == Approx(297));
  CHECK(says(out.pages.pages[0], "A\n"));
  CHECK(mm(words_on(out.pages.pages[0], "B").at.x) > 148.5);
  CHECK(mm(words_on(out.pages.pages[1], "C").at.x) < 148.5);
}

TEST_CASE("a last page that would hold next to nothing takes rows from the page before") {
  int pulled = 0;
  for (int count = 20; count <= 60; ++count) {
    const LaidOut out = lay_out(document_of({rows(count, "Shelf", true)}), table_layout);
    if (out.pages.pages.size() < 2) continue;
    const Page& last = out.pages.pages.back();
    int on_last = 0;
    for (const auto& words : all_of<ink::Words>(last)) on_last += words.text.rfind("row ", 0) == 0 ? 1 : 0;
    CHECK(on_last >= 3);
    pulled += on_last < 8 ? 1 : 0;
    std::size_t seen = 0;
    for (const Page& page : out.pages.pages)
      for (const auto& words : all_of<ink::Words>(page)) seen += words.text.rfind("row ", 0) == 0 ? 1U : 0U;
    CHECK(seen == static_cast<std::size_t>(count));
  }
  CHECK(pulled > 0);
}

TEST_CASE("rows that are only to write on are ruled once") {
  block::Table table;
  table.columns = {"box", "what"};
  table.groups.push_back({"", {{{cell("1"), blank()}}, {{cell("2"), blank()}}, {{cell("name"), blank()}}}});
  const LaidOut out = lay_out(document_of({{"rows", table}}), table_layout);
  // Two rows of one line to write on, then a row of words with its line and its rule; one rule under the page's head.
  CHECK(all_of<ink::Line>(out.pages.pages.at(0)).size() == 2 + 2 + 1);
}

TEST_CASE("the second language stands below the first in the plain cut") {
  const std::string layout =
      "[page]\nmargin = \"15 mm\"\n[[block]]\nid = \"head\"\ntype = { face = \"text-bold\", size = \"14 pt\" }\n";
  Document document = document_of({{"head", block::Heading{in_two("Pull sheet", "Hoja de recogida")}}});
  document.page_words = in_two("page {n} of {total}", "página {n} de {total}");
  const LaidOut out = lay_out(document, layout);
  const Page& page = out.pages.pages.at(0);
  const ink::Words first = words_on(page, "Pull sheet"), second = words_on(page, "Hoja de recogida");
  CHECK(first.face == faces().at("text-bold"));
  CHECK(second.face == faces().at("text"));
  CHECK(second.at.y > first.at.y);
  CHECK(second.at.x == first.at.x);
  CHECK(says(page, "page 1 of 1\n"));
  CHECK(says(page, "página 1 de 1\n"));
}

TEST_CASE("a table in two languages goes on in each of them") {
  Block block = rows(40, in_two("Shelf", "Estante"));
  Document document = document_of({block});
  document.continued = in_two("continued", "continúa");
  const LaidOut out = lay_out(document, table_layout);
  REQUIRE(out.pages.pages.size() == 2);
  CHECK(says(out.pages.pages[1], "Shelf (continued)\n"));
  CHECK(says(out.pages.pages[1], "Estante (continúa)\n"));
}

TEST_CASE("a long notice is parted rather than leave most of a page empty") {
  const std::string layout = table_layout + "[[block]]\nid = \"stop\"\n";
  const LaidOut out = lay_out(
      document_of({rows(8), {"stop", block::Notice{"STOP", std::vector<std::string>(40, "One line.")}}}), layout);
  REQUIRE(out.pages.pages.size() == 2);
  CHECK(says(out.pages.pages[0], "STOP"));
  CHECK(says(out.pages.pages[0], "One line."));
}

TEST_CASE("parts begin on right-hand pages, cards never on the back of a card") {
  const auto page = [](const std::string& bookmark) {
    return Page{210 * unit::paper_mm, 297 * unit::paper_mm, {}, "1", bookmark};
  };
  const auto printed = [](const std::vector<Page>& pages, bool as_cards) {
    KeptPages kept;
    RightHand right(kept, as_cards);
    for (const Page& one : pages) right.add(one);
    right.fill_up();
    std::string order;
    for (const Page& one : kept.pages.pages) order += one.bookmark.empty() ? "." : one.bookmark;
    return order;
  };
  CHECK(printed({page("A"), page("B"), page(""), page("C")}, false) == "A.B.C.");
  CHECK(printed({page("A"), page(""), page("")}, true) == "A.....");
}

TEST_CASE("a column that stands under another has its words below, and takes no width") {
  block::Table table;
  table.columns = {"code", "of"};
  table.groups.push_back({"", {{{cell("BAG-1"), cell("1 of 16")}}}});
  const std::string layout =
      "[[block]]\nid = \"rows\"\n[[block.column]]\nid = \"code\"\nwidth = \"40 mm\"\n"
      "[[block.column]]\nid = \"of\"\nunder = \"code\"\n";
  const LaidOut out = lay_out(document_of({{"rows", table}}), layout);
  CHECK(out.problems.empty());
  const ink::Words above = words_on(out.pages.pages.at(0), "BAG-1"), below = words_on(out.pages.pages.at(0), "1 of 16");
  CHECK(above.at.x == below.at.x);
  CHECK(below.at.y > above.at.y + 3 * unit::paper_mm);
}

TEST_CASE("a document that takes more pages than one run prints is told so once, and no page beyond is made") {
  struct Counted final : PageSink {
    std::size_t pages = 0;
    void begin(const std::string&, const std::string&, bool) override {}
    std::size_t add(Page) override { return pages++; }
    void add_words(std::size_t, std::vector<Ink>) override {}
  } counted;
  std::string lines;
  for (std::size_t i = 0; i < most_pages + 5; ++i) lines += "x\n";
  const Document document = document_of({{"rows", block::Paragraph{lines}}});
  std::vector<LayoutProblem> problems;
  const Layout layout = layout_of(
      "[page]\nmargin = \"1 mm\"\n[type]\nsize = \"30 pt\"\n[head]\nsize = \"4 pt\"\n[running]\nsize = \"4 "
      "pt\"\n[[block]]\nid = \"rows\"\n");
  lay_out(document, layout, 60 * unit::paper_mm, 36 * unit::paper_mm, faces(), problems, counted);
  CHECK(counted.pages == most_pages);
  CHECK(sentences(problems) ==
        std::vector<std::string>{"walk, block \"rows\": takes more than 200000 pages, and one run prints no more"});
}
