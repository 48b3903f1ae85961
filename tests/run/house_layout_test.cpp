// SPDX-License-Identifier: MIT
// What a house may change without C++: layouts of its own, languages, letters; and what it is told when it errs.
#include <algorithm>
#include <catch2/catch.hpp>

#include "../shell.h"
#include "program.h"

using namespace dunnage;
namespace fs = std::filesystem;

namespace {

std::string text_in(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// The example kit and the indoor show, to be changed.
struct OwnKit {
  explicit OwnKit(const std::string& name) : folder(name) {
    fs::copy(example("kit"), folder.path / "kit", fs::copy_options::recursive);
    show = folder.file("show.toml", text_in(example("indoor-afternoon.toml")));
    fs::create_directories(folder.path / "kit/layouts/words");
    fs::create_directories(folder.path / "kit/layouts/stock");
  }
  std::string kit() const { return (folder.path / "kit").string(); }
  std::string out() const { return (folder.path / "out").string(); }
  void change(const fs::path& file, const std::string& from, const std::string& to) const {
    std::string text = text_in(folder.path / file);
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    folder.file(file.string(), text.replace(at, from.size(), to));
  }
  Ran print(std::vector<std::string> more) const {
    more.insert(more.begin(), {"print", show, "--out", out()});
    return program(more);
  }
  Ran label(std::vector<std::string> more) const {
    more.insert(more.begin(), {"label", kit(), "--out", (folder.path / "labels.pdf").string()});
    return program(more);
  }
  std::string sheet(const std::string& name) const {
    return shell("pdftotext -layout " + out() + "/" + name + ".pdf - 2>&1").out;
  }
  Folder folder;
  std::string show;
};

const std::string own_walk =
    "[page]\nomit = [\"facts\", \"stop\", \"decide-first\", \"lifts-head\", \"lifts\", \"cautions\", "
    "\"decide\", \"remarks\", \"sources\"]\n[title]\nsize = \"30 pt\"\n[[block]]\nid = \"stops\"\n"
    "omit_columns = [\"ok\", \"not\"]\n[[block.column]]\nid = \"item\"\n[[block.column]]\nid = \"state\"\n"
    "[[block]]\nid = \"end\"\n";

}  // namespace

TEST_CASE("a layout in the kit's own folder takes the place of ours") {
  const OwnKit own("restyle");
  REQUIRE(own.print({"--only", "safety-walk"}).code == 0);
  CHECK(own.sheet("safety-walk").find("STOP THE JOB") != std::string::npos);
  own.folder.file("kit/layouts/safety-walk.toml", own_walk);
  REQUIRE(own.print({"--only", "safety-walk"}).code == 0);
  CHECK(own.sheet("safety-walk").find("STOP THE JOB") == std::string::npos);
  CHECK(own.sheet("safety-walk").find("Mains cables") != std::string::npos);
}

TEST_CASE("a mistake in a house's layout is refused with its line and a caret, and nothing is printed") {
  const OwnKit own("restyle-wrong");
  std::string wrong = own_walk;
  wrong.replace(wrong.find("\"30 pt\""), 7, "\"30\"");
  own.folder.file("kit/layouts/safety-walk.toml", wrong);
  const Ran ran = own.print({"--only", "safety-walk"});
  CHECK(ran.code == 1);
  CHECK(ran.err.find("kit/layouts/safety-walk.toml:4:8: error: ") != std::string::npos);
  CHECK(ran.err.find("\n  size = \"30\"\n         ^~~~\n") != std::string::npos);
  CHECK_FALSE(fs::exists(own.out()));
}

TEST_CASE("two languages stand on one sheet, each in lines of its own") {
  const OwnKit own("two-languages");
  REQUIRE(own.print({"--only", "pull-sheet", "--lang", "en,es"}).code == 0);
  const std::string sheet = own.sheet("pull-sheet");
  for (const char* line : {"Pull sheet", "Hoja de recogida", "page 1 of", "página 1 de", "Ningún hablante nativo"})
    CHECK(sheet.find(line) != std::string::npos);
  CHECK(own.print({"--lang", "en,xx"}).err.find("there are no printed words in \"xx\"; there are: en, es, fr") !=
        std::string::npos);
  CHECK(own.print({"--lang", "en,es,fr"}).code == 1);
  CHECK(own.print({"--lang", "es,es"}).code == 1);
}

TEST_CASE("letters that no face has are told where they were typed, before anything is printed") {
  const OwnKit own("letters");
  own.change("show.toml", "Hall steward", "\xD8\xB3\xD9\x84\xD9\x85");
  const Ran ran = own.print({"--only", "cover"});
  CHECK(ran.code == 1);
  CHECK(ran.err.find("show.toml:34:15: error: this cannot be printed: no face sets \xD8\xB3 (U+0633)") !=
        std::string::npos);
  CHECK_FALSE(fs::exists(own.out()));
}

TEST_CASE("names in a language that is not printed may be in any letters") {
  const OwnKit own("names");
  own.change("kit/cases-audio.toml", "names.es = \"Ba\xC3\xBAl de consola digital\"",
             "names.ar = \"\xD8\xB3\xD9\x84\xD9\x85\"");
  CHECK(own.print({"--only", "cover"}).code == 0);
  own.change("kit/cases-audio.toml", "names.ar", "names.es");
  const Ran ran = own.label({"DESK-1", "--lang", "es"});
  CHECK(ran.code == 1);
  CHECK(ran.err.find("cases-audio.toml:7:12: error: this cannot be printed") != std::string::npos);
}

TEST_CASE("each recipient's part begins on a right-hand page when it is asked for") {
  const OwnKit own("duplex");
  const Ran one = own.print({"--only", "cover,pull-sheet", "--one-file"});
  const Ran both = own.print({"--only", "cover,pull-sheet", "--one-file", "--duplex"});
  REQUIRE(one.code == 0);
  REQUIRE(both.code == 0);
  CHECK(both.out.find("printed on both sides") != std::string::npos);
  int page = 0, parts = 0;
  const int pages = std::stoi(shell("qpdf --show-npages " + own.out() + "/packet.pdf").out);
  CHECK(pages % 2 == 0);
  for (page = 1; page <= pages; ++page) {
    const std::string text = shell("pdftotext -f " + std::to_string(page) + " -l " + std::to_string(page) + " " +
                                   own.out() + "/packet.pdf -")
                                 .out;
    if (text.find("page 1 of") == std::string::npos) continue;
    ++parts;
    CHECK(page % 2 == 1);
  }
  CHECK(parts >= 3);
}

TEST_CASE("the house's packet is printed in the house's order") {
  const OwnKit own("packet-order");
  own.change("kit/house.toml", "[house.lift]", "packet = [\"safety-walk\", \"cover\"]\n\n[house.lift]");
  const Ran ran = own.print({});
  REQUIRE(ran.code == 0);
  CHECK(ran.out.find("safety-walk.pdf") < ran.out.find("cover.pdf"));
  CHECK(ran.out.find("pull-sheet.pdf") == std::string::npos);
  CHECK(ran.out.find("Safety walk, for who signs before doors (") != std::string::npos);
}

TEST_CASE("a code of more than ten characters is refused for labels, at its line") {
  const OwnKit own("long-code");
  own.change("kit/cases-audio.toml", "code = \"DESK-S\"", "code = \"DESK-SMALL-ONE\"");
  const Ran ran = own.label({});
  CHECK(ran.code == 1);
  CHECK(ran.err.find("the code \"DESK-SMALL-ONE\" is too long for a label: 14 characters, at most 10") !=
        std::string::npos);
  CHECK(own.label({"DESK-1"}).code == 0);
}

TEST_CASE("an offset moves labels and test sheet alike") {
  const OwnKit own("offset");
  const auto left_of = [&](std::vector<std::string> more) {
    more.insert(more.begin(), {"DESK-1", "--stock", "a4-8up"});
    REQUIRE(own.label(more).code == 0);
    const std::string box =
        shell("pdftotext -bbox " + (own.folder.path / "labels.pdf").string() + " - | grep -m1 '<word'").out;
    return std::stod(box.substr(box.find("xMin=\"") + 6));
  };
  CHECK(left_of({"--offset", "2 mm, -1 mm"}) - left_of({}) == Approx(2 / 25.4 * 72).margin(0.01));
  CHECK(own.label({"--test-sheet", "--stock", "50x25-roll"}).out.find("test sheet of stock 50x25-roll") !=
        std::string::npos);
  CHECK(own.label({"--offset", "2 mm"}).code == 1);
  CHECK(own.label({"--offset", "90 mm, 0 mm"}).code == 1);
}

TEST_CASE("the kit's own words and stocks take the place of ours") {
  const OwnKit own("own-words");
  own.folder.file("kit/layouts/words/en.toml", "language = \"en\"\n[words]\n\"pull.title\" = \"Fetch list\"\n");
  REQUIRE(own.print({"--only", "pull-sheet"}).code == 0);
  CHECK(own.sheet("pull-sheet").find("Fetch list") != std::string::npos);
  own.folder.file("kit/layouts/words/it.toml", "language = \"it\"\n[words]\n\"pull.title\" = \"Lista\"\n");
  REQUIRE(own.print({"--only", "pull-sheet", "--lang", "it"}).code == 0);
  CHECK(own.sheet("pull-sheet").find("Lista") != std::string::npos);
  own.folder.file("kit/layouts/stock/tiny.toml",
                  "says = \"80 x 60 mm\"\nlayout = \"case-label-small\"\nroll = true\ndpi = 203\n"
                  "page = { width = \"80 mm\", height = \"60 mm\" }\nlabel = { width = \"80 mm\", height = \"60 mm\" "
                  "}\ninner = \"2 mm\"\n");
  CHECK(own.label({"DESK-1", "--stock", "tiny"}).out.find("1 label on 1 length of roll, stock tiny (80 x 60 mm)") !=
        std::string::npos);
  CHECK(program({"list", "stocks", own.kit()}).out.find("tiny") != std::string::npos);
  CHECK(own.label({"DESK-1", "--stock", "tinny"}).err.find("did you mean \"tiny\"?") != std::string::npos);
  own.folder.file("kit/layouts/pull-shet.toml", "");
  CHECK(own.print({"--only", "pull-sheet"})
            .err.find("pull-shet.toml is no sheet's layout: did you mean \"pull-sheet\"?") != std::string::npos);
}

TEST_CASE("the faders' pitch and bank are the console's, and the show's go before them") {
  const OwnKit own("faders");
  REQUIRE(own.print({"--only", "fader-strip"}).code == 0);
  CHECK(own.sheet("fader-strip").find("1 to 8") != std::string::npos);
  own.change("show.toml", "[show]\n", "[show]\nfader_bank = 6\nfader_pitch = \"30 mm\"\n");
  REQUIRE(own.print({"--only", "fader-strip"}).code == 0);
  CHECK(own.sheet("fader-strip").find("1 to 6") != std::string::npos);
  CHECK(own.sheet("fader-strip").find("180 mm") != std::string::npos);
}
