// SPDX-License-Identifier: MIT
// Layouts, stocks and words as text: what is inherited, and what is refused with a caret.
#include "read/layout_file.h"

#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>
#include <set>

#include "../shell.h"
#include "read/stock_file.h"
#include "read/words_file.h"

using namespace dunnage;

namespace {

/// What a reader tells of a text.
template <class Read>
std::string told(const Read& read) {
  Sources sources;
  Diagnostics diagnostics;
  read(sources, diagnostics);
  return render(diagnostics, sources);
}

std::string layout_told(const std::string& text) {
  return told([&](Sources& sources, Diagnostics& diagnostics) {
    CHECK(!read_layout("sheet", "sheet.toml", text, sources, diagnostics));
  });
}

void note_names(const std::vector<Key>& keys, std::set<std::string>& names) {
  for (const Key& key : keys) {
    names.insert(key.name);
    note_names(key.inner, names);
  }
}

/// The words between backticks of layouts/README.md, in code fences too.
std::set<std::string> words_of_the_guide() {
  std::ifstream in(std::string(PROJECT_DIR) + "/layouts/README.md");
  const std::string text{std::istreambuf_iterator<char>(in), {}};
  std::set<std::string> words;
  bool code = false;
  std::string word;
  for (const char c : text) {
    if (code && (std::isalnum(static_cast<unsigned char>(c)) || c == '_')) {
      word += c;
      continue;
    }
    if (!word.empty()) words.insert(word);
    word.clear();
    if (c == '`') code = !code;
  }
  return words;
}

}  // namespace

TEST_CASE("layouts/README.md names every key that the readers of layouts and stocks know") {
  std::set<std::string> names;
  note_names(keys_of_a_layout(), names);
  note_names(keys_of_a_stock(), names);
  CHECK(names.size() > 50);
  const std::set<std::string> guide = words_of_the_guide();
  for (const std::string& name : names) {
    INFO(name);
    CHECK(guide.count(name) == 1);
  }
}

TEST_CASE("styles are inherited key by key") {
  Sources sources;
  Diagnostics diagnostics;
  const auto layout = read_layout("sheet", "sheet.toml", R"(
[page]
margin = { left = "20 mm", top = "0.5 in" }
[type]
face = "narrow"
size = "12 pt"
floor = "11 pt"
[head]
face = "narrow-bold"
[[block]]
id = "rows"
type = { size = "14 pt", align = "right" }
[[block.column]]
id = "code"
width = "24 mm"
type = { face = "code" }
[[block.column]]
id = "name"
width = "content"
[[block.column]]
id = "note"
share = 2
type = "10 pt"
)",
                                  sources, diagnostics);
  INFO(render(diagnostics, sources));
  REQUIRE(layout);
  CHECK(layout->margin_left / unit::paper_mm == Approx(20));
  CHECK(layout->margin_top / unit::paper_mm == Approx(12.7));
  CHECK(layout->margin_right / unit::paper_mm == Approx(12));
  const BlockSpec& rows = layout->blocks.at(0);
  CHECK(rows.head.face == "narrow-bold");
  CHECK(rows.head.size / unit::point == Approx(12));
  REQUIRE(rows.columns.size() == 3);
  CHECK(rows.columns[0].kind == ColumnSpec::Kind::fixed);
  CHECK(rows.columns[0].type.face == "code");
  CHECK(rows.columns[0].type.size / unit::point == Approx(14));
  CHECK(rows.columns[0].type.align == Align::right);
  CHECK(rows.columns[1].kind == ColumnSpec::Kind::content);
  CHECK(rows.columns[1].type.face == "narrow");
  CHECK(rows.columns[2].share == 2);
  CHECK(rows.columns[2].type.floor / unit::point == Approx(10));  // never above the size
}

TEST_CASE("a mistake in a layout is told like any other") {
  CHECK(layout_told("[[block]]\nid = \"rows\"\nrow_hieght = \"10 mm\"\n") ==
        "sheet.toml:3:1: error: \"row_hieght\" is not a key of [[block]]\n"
        "  row_hieght = \"10 mm\"\n"
        "  ^~~~~~~~~~\n"
        "hint: did you mean \"row_height\"?\n"
        "1 error\n");
  const std::string twice = layout_told("[[block]]\nid = \"rows\"\n[[block]]\nid = \"rows\"\n");
  CHECK(twice.find("sheet.toml:3:1: error: the block \"rows\" is placed twice") == 0);
  CHECK(twice.find("first placed here") != std::string::npos);
  CHECK(layout_told("[type]\nsize = \"9 pt\"\nfloor = \"10 pt\"\n").find("the floor is larger than the size") !=
        std::string::npos);
  CHECK(layout_told("[type]\nsize = \"9 pt\"\nfit = \"srink\"\n").find("did you mean \"shrink\"?") !=
        std::string::npos);
  CHECK(layout_told("[[block]]\nid = \"qr\"\narea = { x = 0.5, y = 0, w = 0.6, h = 1 }\n")
            .find("the area reaches beyond the label") != std::string::npos);
  CHECK(layout_told("[type]\nsize = 9\n").find("sheet.toml:2:8: error:") == 0);
}

TEST_CASE("labels that do not fit on their page are refused") {
  const auto stock_told = [](const std::string& tail) {
    return told([&](Sources& sources, Diagnostics& diagnostics) {
      const std::string text =
          "says = \"ours\"\nlayout = \"case-label\"\npage = { width = \"100 mm\", height = \"100 mm\" }\n" + tail;
      CHECK(!read_stock("ours", "ours.toml", text, sources, diagnostics));
    });
  };
  CHECK(stock_told("label = { width = \"60 mm\", height = \"40 mm\" }\nacross = 2\n")
            .find("ours.toml:3:8: error: the labels reach beyond the page\n") == 0);
  CHECK(stock_told("label = { width = \"60 mm\", height = \"40 mm\" }\nacross = 2\npitch = { x = \"40 mm\", "
                   "y = \"40 mm\" }\n")
            .find("the labels overlap") != std::string::npos);
  CHECK(stock_told("").find("the stock has no \"label\"") != std::string::npos);
  CHECK(stock_told("label = { width = \"60 mm\" }\n").find("\"label\" has no \"height\"") != std::string::npos);
}

TEST_CASE("words nest, and their keys are joined with dots") {
  Sources sources;
  Diagnostics diagnostics;
  const auto words = read_words("en.toml",
                                "language = \"en\"\n[words]\n\"page.of\" = \"page {n} of {total}\"\n[words.pull]\n"
                                "title = \"Pull sheet\"\n",
                                sources, diagnostics);
  INFO(render(diagnostics, sources));
  REQUIRE(words);
  CHECK(words->language == "en");
  CHECK((*words)("pull.title") == "Pull sheet");
  CHECK(words->say("page.of", {{"n", "1"}, {"total", "2"}}) == "page 1 of 2");
}

TEST_CASE("a house's own words are laid over ours, and only what a sheet prints") {
  Words ours{"es", false, {{"pull.title", "Hoja"}, {"page.of", "p. {n} de {total}"}}, {{"{} of {}", "{} de {}"}}};
  const auto own_told = [&](const std::string& text, std::optional<Words>* into = nullptr) {
    return told([&](Sources& sources, Diagnostics& diagnostics) {
      const Folder folder("own-words");
      const auto words = load_own_words(ours, folder.file("es.toml", text), sources, diagnostics);
      if (into) *into = words;
    });
  };
  std::optional<Words> words;
  CHECK(own_told("language = \"es\"\n[words]\n\"pull.title\" = \"Lista\"\n", &words) == "");
  REQUIRE(words);
  CHECK((*words)("pull.title") == "Lista");
  CHECK((*words)("page.of") == "p. {n} de {total}");
  CHECK_FALSE(words->read_by_native);
  CHECK(own_told("language = \"es\"\n[words]\n\"pull.titel\" = \"Lista\"\n")
            .find(":3:16: error: no sheet prints the words \"pull.titel\"") != std::string::npos);
  CHECK(own_told("language = \"es\"\n[words]\n\"page.of\" = \"{m}\"\n").find("nothing is filled in for {m} here") !=
        std::string::npos);
  CHECK(own_told("language = \"es\"\n[sentences]\n\"{} of {}\" = \"{2}: {1}\"\n", &words) == "");
  REQUIRE(words);
  CHECK(words->say(said("{} of {}", 1, 2)) == "2: 1");
  CHECK(own_told("language = \"es\"\n[sentences]\n\"{} off {}\" = \"{} de {}\"\n")
            .find(":3:1: error: no sheet prints the sentence \"{} off {}\"") != std::string::npos);
}

TEST_CASE("words that say nothing are refused, as one of two languages would lack the line") {
  for (const char* nothing : {"", " ", "\\t"}) {
    Sources sources;
    Diagnostics diagnostics;
    CHECK_FALSE(read_words("en.toml", std::string("language = \"en\"\n[words]\n\"say.yes\" = \"") + nothing + "\"\n",
                           sources, diagnostics));
    // A tab is told first, as no line of paper has one.
    if (*nothing != '\\')
      CHECK(render(diagnostics, sources).find("the words \"say.yes\" are empty") != std::string::npos);
    CHECK_FALSE(read_words("en.toml", std::string("language = \"en\"\n[sentences]\n\"Down.\" = \"") + nothing + "\"\n",
                           sources, diagnostics));
  }
}

TEST_CASE("a sentence in another language fills the same places") {
  const auto told_of = [](const std::string& sentence) {
    return told([&](Sources& sources, Diagnostics& diagnostics) {
      read_words("es.toml", "language = \"es\"\n[sentences]\n\"{} of {}\" = \"" + sentence + "\"\n", sources,
                 diagnostics);
    });
  };
  CHECK(told_of("de {2} van {1}") == "");
  CHECK(told_of("van {1}").find("es.toml:3:14: error: {2} is in one of the two sentences alone") != std::string::npos);
  CHECK(told_of("{} de {}, {}").find("{} is in one of the two sentences alone") != std::string::npos);
}

TEST_CASE("a column under a column that is not there is refused") {
  CHECK(layout_told("[[block]]\nid = \"rows\"\n[[block.column]]\nid = \"of\"\nunder = \"kode\"\n")
            .find("\"of\" stands under \"kode\", which is no column of its own here") != std::string::npos);
}
