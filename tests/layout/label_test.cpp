// SPDX-License-Identifier: MIT
// Labels: where they stand on their stock, and that what has no room is told rather than lost.
#include <catch2/catch.hpp>
#include <cmath>

#include "layout/fit.h"
#include "layout/setting.h"
#include "layout/small_document.h"

using namespace dunnage;

namespace {

struct Ours {
  Layout layout;
  Stock stock;
};

/// A stock of the project and the layout that suits it.
Ours ours(const std::string& name) {
  static Sources sources;
  Diagnostics diagnostics;
  const auto stock = load_stock(PROJECT_DIR "/layouts/stock/" + name + ".toml", sources, diagnostics);
  INFO(render(diagnostics, sources));
  REQUIRE(stock);
  const auto layout = load_layout(PROJECT_DIR "/layouts/" + stock->layout.value + ".toml", sources, diagnostics);
  INFO(render(diagnostics, sources));
  REQUIRE(layout);
  return {*layout, *stock};
}

const std::vector<std::string> all_stocks = {"4x6-roll", "100x150-roll", "letter-6up", "a4-8up",
                                             "a4-4up",   "letter-4up",   "4x3-roll",   "100x70-roll"};
const std::vector<std::string> small_stocks = {"50x25-roll",   "50x25-roll-300", "2x1-roll",
                                               "2x1-roll-300", "a4-24up",        "letter-10up"};

Section label(const std::string& code, int contents) {
  block::Listing listing;
  std::string text = code + "  Front-of-house trunk\n83 lb est.; roll; 2 people\n";
  for (int i = 0; i < contents; ++i) {
    listing.lines.push_back(std::to_string(i + 1) + " Mic cable, 50 ft");
    text += listing.lines.back() + "\n";
  }
  return {code,
          {{"code", block::Heading{code}},
           {"name", block::Heading{"Front-of-house trunk"}},
           {"mass", block::Heading{"83 lb est."}},
           {"handle", block::Handle{true, "roll, 2 on a ramp", 2, "2 people"}},
           {"marks", block::Marks{{Mark::this_way_up, Mark::keep_dry}, {"this way up", "keep dry"}}},
           {"contents", std::move(listing)},
           {"qr", block::Qr{text + "Field Crew\n555-0100", "+ {n} more", 2}},
           {"owner", block::Paragraph{"Field Crew\n555-0100"}},
           {"revision", block::Paragraph{"at most 110 lb on top; revision 1a2b3c4d"}}}};
}

Document labels(std::vector<Section> sections) {
  Document document = empty_document();
  document.name = "case-label";
  document.sections = std::move(sections);
  return document;
}

LaidOut lay_out_on(const std::string& stock, const Document& document, int start_at = 1, int copies = 1) {
  const Ours it = ours(stock);
  LaidOut out;
  out.pages = lay_out_labels(document, it.layout, it.stock, start_at, copies, faces(), out.problems);
  return out;
}

}  // namespace

TEST_CASE("every stock holds a whole label inside its margin") {
  for (const std::string& name : all_stocks) {
    INFO(name);
    const LaidOut out = lay_out_on(name, labels({label("FOH-1", 5)}));
    CHECK(sentences(out.problems).empty());
    CHECK(out.pages.to_scale);
    const Stock stock = ours(name).stock;
    const Box ink = reach(out.pages.pages.at(0));
    CHECK(ink.x >= stock.left + stock.inner - 0.05 * unit::paper_mm);
    CHECK(ink.y >= stock.top + stock.inner - 0.05 * unit::paper_mm);
    CHECK(ink.x + ink.w <= stock.left + stock.label_width - stock.inner + 0.05 * unit::paper_mm);
    CHECK(ink.y + ink.h <= stock.top + stock.label_height - stock.inner + 0.05 * unit::paper_mm);
  }
}

TEST_CASE("a roll gives a page a label, a sheet as many as it holds") {
  const Document document = labels({label("A-1", 1), label("A-2", 1), label("A-3", 1)});
  CHECK(lay_out_on("4x6-roll", document).pages.pages.size() == 3);
  CHECK(lay_out_on("4x6-roll", document, 1, 2).pages.pages.size() == 6);
  CHECK(lay_out_on("a4-8up", document).pages.pages.size() == 1);
  CHECK(lay_out_on("a4-8up", document, 1, 3).pages.pages.size() == 2);
}

TEST_CASE("labels begin at the place asked for and go on by rows") {
  const LaidOut out = lay_out_on("a4-8up", labels({label("A-1", 1), label("A-2", 1)}), 8);
  REQUIRE(out.pages.pages.size() == 2);
  const ink::Words last = words_on(out.pages.pages[0], "A-1"), first = words_on(out.pages.pages[1], "A-2");
  CHECK(mm(last.at.x) == Approx(4.65 + 101.6 + 3).margin(0.01));
  CHECK(mm(last.at.y - first.at.y) == Approx(3 * 67.7).margin(0.01));
  CHECK(mm(first.at.x) == Approx(4.65 + 3).margin(0.01));
}

TEST_CASE("copies of a label differ in their place alone") {
  const LaidOut out = lay_out_on("letter-6up", labels({label("A-1", 1)}), 1, 2);
  const auto words = all_of<ink::Words>(out.pages.pages.at(0));
  REQUIRE(words.size() % 2 == 0);
  const std::size_t half = words.size() / 2;
  for (std::size_t i = 0; i < half; ++i) {
    CHECK(words[i].text == words[half + i].text);
    CHECK(mm(words[half + i].at.x - words[i].at.x) == Approx(4.1875 * 25.4).margin(0.01));
  }
}

TEST_CASE("the code's capitals are 14 mm high up to 8 characters and 11 mm up to 10 on the large label") {
  const double capital = faces().metrics(faces().at("code")).cap_height;
  for (const char* stock : {"4x6-roll", "100x150-roll", "a4-4up"}) {
    INFO(stock);
    const LaidOut out = lay_out_on(stock, labels({label("MONITOR8", 1), label("CBL-TRK-10", 1)}));
    CHECK(sentences(out.problems).empty());
    const Pages& pages = out.pages;
    CHECK(mm(words_on(pages.pages.front(), "MONITOR8").size) * capital >= 14.0);
    CHECK(mm(words_on(pages.pages.back(), "CBL-TRK-10").size) * capital >= 11.0);
    CHECK(pt(words_on(pages.pages.front(), "83 lb est.").size) >= 40);
  }
}

TEST_CASE("a code too long for the large label is refused") {
  const LaidOut out = lay_out_on("4x6-roll", labels({label("CABLETRUNK10", 1)}));
  REQUIRE(out.problems.size() == 1);
  CHECK(out.problems[0].block == "code");
  CHECK(sentence(out.problems[0]) ==
        "case-label, CABLETRUNK10, block \"code\": \"CABLETRUNK10\" does not fit into "
        "95.6 mm x 26.4 mm at 42.75 pt");
}

TEST_CASE("contents that have no room are counted") {
  const LaidOut out = lay_out_on("4x6-roll", labels({label("FOH-1", 40)}));
  CHECK(out.problems.empty());
  int lines = 0;
  for (const auto& words : all_of<ink::Words>(out.pages.pages[0]))
    lines += words.text.find("Mic cable") != std::string::npos ? 1 : 0;
  CHECK(lines >= 4);
  CHECK(says(out.pages.pages[0], "+ " + std::to_string(40 - lines) + " more"));
}

TEST_CASE("a code to be read stands on whole printer dots, at least five a module, with its quiet zone") {
  for (const std::string& name : all_stocks) {
    INFO(name);
    const Stock stock = ours(name).stock;
    const double dot = 25.4 / stock.dpi;
    const LaidOut out = lay_out_on(name, labels({label("FOH-1", 40)}), labels_on_page(stock));
    const auto codes = all_of<ink::Modules>(out.pages.pages.at(0));
    REQUIRE(codes.size() == 1);
    const double dots = mm(codes[0].module) / dot;
    CHECK(dots == Approx(std::round(dots)).margin(1e-6));
    CHECK(dots >= 4.999);
    CHECK(mm(codes[0].at.x) / dot == Approx(std::round(mm(codes[0].at.x) / dot)).margin(1e-6));
    CHECK(mm(codes[0].at.y) / dot == Approx(std::round(mm(codes[0].at.y) / dot)).margin(1e-6));
    const Paper quiet = codes[0].module * 4, side = codes[0].module * codes[0].side;
    for (const auto& words : all_of<ink::Words>(out.pages.pages[0])) {
      const bool beside = words.at.x + words.width <= codes[0].at.x - quiet || words.at.y <= codes[0].at.y - quiet ||
                          words.at.y - words.size * 0.75 >= codes[0].at.y + side + quiet;
      CHECK(beside);
    }
  }
}

TEST_CASE("a block without an area has no place on a label") {
  Section section = label("FOH-1", 1);
  section.blocks.push_back({"note", block::Paragraph{"hello"}});
  const LaidOut unplaced = lay_out_on("4x6-roll", labels({section}));
  REQUIRE(unplaced.problems.size() == 1);
  CHECK(unplaced.problems[0].block == "note");
  const Ours it = ours("4x6-roll");
  Layout layout = it.layout;
  layout.blocks.push_back({});
  layout.blocks.back().id = "note";
  std::vector<LayoutProblem> problems;
  lay_out_labels(labels({section}), layout, it.stock, 1, 1, faces(), problems);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].cause == "has no area: on a label every block stands in one");
}

TEST_CASE("the smallest labels keep code, name and a code to be read, whatever the name") {
  for (const std::string& name : small_stocks) {
    INFO(name);
    Section section = label("CBL-TRK-10", 9);
    section.blocks[1].content = block::Heading{"A trunk of speaker cables for the delay line beyond the mill"};
    std::get<block::Qr>(section.blocks[6].content).text =
        "CBL-TRK-10  A trunk of speaker cables for the delay line beyond the mill\n83 lb";
    const LaidOut out = lay_out_on(name, labels({section}));
    CHECK(sentences(out.problems).empty());
    CHECK(says(out.pages.pages.at(0), "CBL-TRK-10\n"));
    const auto codes = all_of<ink::Modules>(out.pages.pages.at(0));
    REQUIRE(codes.size() == 1);
    CHECK(codes[0].module / ((1.0 / ours(name).stock.dpi) * unit::paper_in) >= 4.999);
    for (const auto& words : all_of<ink::Words>(out.pages.pages.at(0))) CHECK(pt(words.size) >= 7.999);
  }
}

TEST_CASE("a name that has no room ends in dots; of two languages the first stays whole") {
  Document document = empty_document();
  std::vector<LayoutProblem> problems;
  Setting setting(faces(), document, problems, 203);
  TypeStyle style;
  style.size = style.floor = 10 * unit::point;
  style.fit = Fit::cut;
  const Paper line = 13.1 * unit::point;
  const Lines cut = fit_box(setting, style, "Speaker cables for the delay line", 30 * unit::paper_mm, line);
  CHECK(cut.lines == std::vector<std::string>{"Speaker cables\u2026"});
  const Lines both = fit_box(setting, style, in_two("Cables", "Cables de altavoz"), 30 * unit::paper_mm, line);
  CHECK(both.lines == std::vector<std::string>{"Cables"});
  CHECK(problems.empty());
}
