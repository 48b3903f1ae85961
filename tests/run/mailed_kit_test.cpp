// SPDX-License-Identifier: MIT
// A kit or a show that somebody sent: it reads nothing of this machine but itself, quotes nothing else, and runs
// nothing in a spreadsheet. And a check finds what a print would refuse.
#include <catch2/catch.hpp>

#include "../shell.h"
#include "program.h"

using namespace dunnage;
namespace fs = std::filesystem;

namespace {

const std::string stock =
    "says = \"ours\"\nlayout = \"case-label\"\npage = { width = \"100 mm\", height = \"150 mm\" }\n"
    "label = { width = \"100 mm\", height = \"150 mm\" }\ninner = \"4 mm\"\nroll = true\n";

/// A small kit with a show beside it, and a secret outside of both.
struct Mailed {
  explicit Mailed(const std::string& name) : folder(name) {
    fs::create_directories(folder.path / "kit/layouts/stock");
    fs::create_directories(folder.path / "kit/layouts/words");
    house("");
    folder.file("kit/cases.toml",
                "[[case]]\ncode = \"BOX\"\nname = \"Mic box\"\nform = \"box\"\nweighed = \"9 kg\"\n"
                "goes = \"always\"\n");
    secret = folder.file("secret.toml", "password = \"hunter2\"\n");
    show = folder.file("show.toml", show_text);
  }
  void house(const std::string& lines) const { folder.file("kit/house.toml", "[house]\nname = \"H\"\n" + lines); }
  void link(const std::string& from) const { fs::create_symlink(secret, folder.path / from); }
  Ran check() const { return program({"check", show}); }
  Ran print() const { return program({"print", show, "--out", (folder.path / "out").string()}); }
  Ran label(const std::string& stock) const {
    return program({"label", kit(), "--stock", stock, "--out", (folder.path / "labels.pdf").string()});
  }
  std::string kit() const { return (folder.path / "kit").string(); }
  Folder folder;
  std::string secret, show;
  const std::string show_text =
      "kit = \"kit\"\n[show]\ntitle = \"Evening\"\ndate = 2027-06-19\nsetting = \"indoor\"\n"
      "crew = 2\nhours = \"2 h\"\naudience = 20\nafter_dark = false\nvolunteers = 0\n";
};

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

/// Refused as input, with these words, and nothing of the secret said.
void refused(const Ran& ran, const std::string& words) {
  INFO(ran.out << ran.err);
  CHECK(ran.code == 1);
  CHECK(has(ran.err, words));
  CHECK_FALSE(has(ran.err + ran.out, "hunter2"));
  CHECK_FALSE(has(ran.err + ran.out, "password"));
}

}  // namespace

TEST_CASE("a stock's layout is a name, no path", "[mailed]") {
  const Mailed m("mailed-stock");
  for (const std::string& layout : {m.secret.substr(0, m.secret.size() - 5), std::string("../../secret"),
                                    std::string("../secret"), std::string("words/en")}) {
    std::string text = stock;
    text.replace(text.find("case-label"), 10, layout);
    m.folder.file("kit/layouts/stock/own.toml", text);
    refused(m.label("own"), "own.toml:2:10: error: there is no layout \"" + layout + "\"");
  }
  m.folder.file("kit/layouts/stock/own.toml", stock);
  const Ran good = m.label("own");
  INFO(good.err);
  CHECK(good.code == 0);
}

TEST_CASE("a link in the kit's layouts that leads out of the kit is refused by name", "[mailed]") {
  const std::string out = "error: a link leads out of the kit\nhint: put the file itself into the kit's folder\n";
  for (const std::string file : {"pull-sheet", "words/en", "stock/4x6-roll"}) {
    const Mailed m("mailed-link");
    m.link("kit/layouts/" + file + ".toml");
    refused(m.check(), "kit/layouts/" + file + ".toml: " + out);
    if (file.starts_with("stock/"))
      refused(m.label("4x6-roll"), out);
    else
      refused(m.print(), out);
  }
  const Mailed folder("mailed-folder");
  fs::remove_all(folder.folder.path / "kit/layouts/words");
  fs::create_directories(folder.folder.path / "elsewhere");
  folder.folder.file("elsewhere/en.toml", "password = \"hunter2\"\n");
  fs::create_directory_symlink(folder.folder.path / "elsewhere", folder.folder.path / "kit/layouts/words");
  refused(folder.print(), out);
  const Mailed inside("mailed-inside");  // a link within the kit is the house's own affair
  inside.folder.file("kit/layouts/plain.txt", std::string("[page]\nmost_pages = 2\n"));
  fs::create_symlink("plain.txt", inside.folder.path / "kit/layouts/own-sheet.toml");
  CHECK(inside.check().code == 0);
}

TEST_CASE("of a file that holds nothing of a kit no line is shown", "[mailed]") {
  for (const std::string text : {"password = \"hunter2\"\n", "password = hunter2\n", "password: hunter2\n[login]\n"}) {
    const Mailed m("mailed-strange");
    m.folder.file("kit/strange.toml", text);
    refused(m.check(), "kit/strange.toml: error: this file holds no section of a kit\nhint: ");
    refused(program({"list", "cases", m.kit()}), "this file holds no section of a kit");
  }
  const Mailed slip("mailed-slip");  // what was meant for a section is told as ever
  slip.folder.file("kit/strange.toml", "[[cose]]\ncode = \"X\"\n");
  CHECK(has(slip.check().err, "hint: did you mean \"case\"?"));
  slip.folder.file("kit/strange.toml", "# nothing yet\n");
  CHECK(slip.check().code == 0);
}

TEST_CASE("a show's kit is a folder of TOML files and nothing else", "[mailed]") {
  const Mailed m("mailed-show");
  m.folder.file("show.toml", "kit = \"secret.toml\"\n" + m.show_text.substr(m.show_text.find('\n') + 1));
  refused(m.check(), "is a file, not a folder");
  fs::create_directories(m.folder.path / "other");
  m.folder.file("other/notes.txt", "hunter2\n");
  m.folder.file("show.toml", "kit = \"other\"\n" + m.show_text.substr(m.show_text.find('\n') + 1));
  refused(m.check(), "holds no .toml file");
}

TEST_CASE("no cell of a list runs in a spreadsheet, and each is read back as it was", "[mailed]") {
  const Mailed m("mailed-csv");
  const std::vector<std::string> names = {"=1+1", "+44 20", "-20 dB pad", "@home", "'=quoted", "''", "'plain'", "' =x"};
  std::string cases;
  for (std::size_t i = 0; i < names.size(); ++i)
    cases += "[[case]]\ncode = \"C" + std::to_string(i) + "\"\nname = \"" + names[i] + "\"\nform = \"box\"\n";
  m.folder.file("kit/cases.toml", cases);
  const Ran list = program({"list", "cases", m.kit(), "--csv"});
  CHECK(list.out ==
        "code,name,form\r\nC0,'=1+1,box\r\nC1,'+44 20,box\r\nC2,'-20 dB pad,box\r\nC3,'@home,box\r\n"
        "C4,''=quoted,box\r\nC5,'',box\r\nC6,'plain',box\r\nC7,'' =x,box\r\n");
  fs::create_directories(m.folder.path / "again");
  m.folder.file("again/house.toml", "[house]\nname = \"H\"\n");
  const std::string csv = m.folder.file("cases.csv", list.out), again = (m.folder.path / "again").string();
  const Ran import = program({"import", csv, "--kit", again});
  INFO(import.err);
  CHECK(import.code == 0);
  CHECK(program({"list", "cases", again, "--csv"}).out == list.out);
}

TEST_CASE("check finds what print would refuse, at its place", "[mailed]") {
  const Mailed m("mailed-refused");
  const auto both = [&](const std::string& place_and_cause) {
    const Ran check = m.check(), print = m.print();
    INFO(check.err << print.err);
    CHECK(check.code == 1);
    CHECK(print.code == 1);
    CHECK(has(check.err, place_and_cause));
  };
  REQUIRE(m.check().code == 0);
  m.house("languages = [\"en\", \"ess\"]\n");
  both("kit/house.toml:3:20: error: there are no printed words in \"ess\"");
  m.house("languages = [\"en\", \"es\", \"fr\"]\n");
  both("kit/house.toml:3:26: error: at most two languages");
  m.house("label_stock = \"nosuch\"\n");
  both("kit/house.toml:3:15: error: there is no label stock \"nosuch\"");
  m.house("phone = \"\u0627\u0628\"\n");
  both("kit/house.toml:3:9: error: this cannot be printed: no face sets ");
  m.house("");
  m.folder.file("kit/layouts/pull-sheet.toml", "[page]\nmargn = \"9 mm\"\n");
  both("kit/layouts/pull-sheet.toml:2:1: error: \"margn\" is not a key of [page]");
  fs::remove(m.folder.path / "kit/layouts/pull-sheet.toml");
  m.folder.file("kit/layouts/words/en.toml", "language = \"en\"\n[words]\n\"nosuch.word\" = \"x\"\n");
  both("kit/layouts/words/en.toml:3:17: error: no sheet prints the words \"nosuch.word\"");
}
