// SPDX-License-Identifier: MIT
// Ten spreadsheets, each broken in its own way: nothing is lost, and every guess is told.
#include <catch2/catch.hpp>
#include <fstream>
#include <nlohmann/json.hpp>

#include "../shell.h"
#include "base/utf8.h"
#include "program.h"
#include "read/csv_text.h"

using dunnage::bytes_of;
using dunnage::example;
using dunnage::Folder;
using dunnage::program;
using dunnage::Ran;
namespace fs = std::filesystem;

namespace {

struct Imported {
  Ran ran;
  std::string toml, lost;
};

/// Words of letters and digits of the sheet that the new file does not have; yes and no become true and false.
std::string lost_words(const std::string& sheet, const std::string& toml) {
  dunnage::Sources sources;
  dunnage::Diagnostics diagnostics;
  const std::string low = dunnage::utf8::lower(toml);
  std::string lost;
  for (const auto& row : dunnage::read_csv("sheet", sheet, sources, diagnostics).rows) {
    for (const auto& cell : row.cells) {
      std::string word;
      for (const char c : dunnage::utf8::lower(cell.value) + " ") {
        const bool part = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
        if (part) {
          word += c;
          continue;
        }
        const bool said =
            word.empty() || word == "yes" || word == "no" || word == "x" || low.find(word) != std::string::npos;
        if (!said) lost += word + " ";
        word.clear();
      }
    }
  }
  return lost;
}

/// Imports a sheet into a new kit. The heads are taken off before lost words are looked for.
Imported import(const std::string& sheet, std::vector<std::string> more = {}, const std::string& heads_until = "\n") {
  const Folder folder("import");
  const std::string file = folder.file("Our gear.csv", sheet);
  std::vector<std::string> arguments = {"import", file, "--kit", (folder.path / "kit").string()};
  arguments.insert(arguments.end(), more.begin(), more.end());
  Imported out{program(arguments), {}, {}};
  out.toml = bytes_of(folder.path / "kit/our-gear.toml");
  const std::size_t head_end = sheet.find(heads_until);
  if (sheet.find('\0') == std::string::npos)
    out.lost = lost_words(sheet.substr(head_end == std::string::npos ? 0 : head_end + 1), out.toml);
  if (out.ran.code != 1) {
    const Ran check = program({"list", "cases", (folder.path / "kit").string()});
    CHECK(check.code == 0);
    CHECK(check.err.empty());
  }
  return out;
}

/// The [[unit]] sections of a kit's files, up to the blank line after each.
std::string unit_sections(const fs::path& kit) {
  std::string out;
  for (const auto& entry : fs::directory_iterator(kit)) {
    const std::string text = bytes_of(entry.path());
    for (std::size_t at = 0; (at = text.find("[[unit]]", at)) != std::string::npos; ++at)
      out += text.substr(at, text.find("\n\n", at) - at) + "\n\n";
  }
  return out;
}

bool has(const std::string& text, const std::string& part) {
  UNSCOPED_INFO("looked for: " << part << "\nin: " << text);
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("1: semicolons, decimal commas, Windows-1252") {
  const Imported i = import(
      "Nr;Bezeichnung;Weight (kg);Shelf\r\nA1;Gro\xDF"
      "es Rack;12,5;Regal \xDC\r\nA2;Kabel;1,250;x\r\n",
      {"--column", "Bezeichnung=name"});
  CHECK(i.ran.code == 0);
  CHECK(has(i.ran.out, "semicolons, Windows-1252 (guessed), decimal comma"));
  CHECK(has(i.toml, "name = \"Großes Rack\"\nweighed = \"12.5 kg\"\nhome = \"Regal Ü\""));
  CHECK(has(i.ran.out, "weighed: \"1,250\" read as 1.250"));
}

TEST_CASE("2: UTF-16 and tabs, as an office program calls Unicode text") {
  std::string sheet = "\xFF\xFE";
  for (const char c : std::string("Code\tName\tForm\nBOX\tA box\tbox\n")) sheet += std::string{c, '\0'};
  const Imported i = import(sheet);
  CHECK(i.ran.code == 0);
  CHECK(has(i.toml, "code = \"BOX\"\nname = \"A box\"\nform = \"box\""));
}

TEST_CASE("3: a title above the heads, group titles, a sum, the heads once more") {
  const Imported i = import(
      "Our gear 2027,,,\n,,,\nCode,Name,Type,Weight (lb)\nAUDIO,,,\nFOH,Desk trunk,trunk,90\nCode,Name,Type,Weight "
      "(lb)\nMIC,Mic tub,tub,12\nTotal,,,102\n",
      {}, "(lb)\n");
  CHECK(i.ran.code == 2);
  CHECK(i.lost.empty());
  CHECK(has(i.toml, "# Our gear 2027\n"));
  CHECK(has(i.toml, "# AUDIO\n"));
  CHECK(has(i.ran.err, "Our gear.csv:4:1: warning: this row says one thing alone, and was taken for a title"));
  CHECK(has(i.ran.err, ":6:1: warning: this row is the heads once more"));
  CHECK(has(i.ran.err, ":8:1: warning: this row is a sum, no case"));
}

TEST_CASE("4: contents over several rows under one case") {
  const Imported i =
      import("Case,Name,Contents,Form\n7,Mic tub,6 x vocal mic,tub\n,,4 mic clips,\n,,spare capsule,\n8,Bag,,bag\n");
  CHECK(i.ran.code == 0);
  CHECK(i.lost.empty());
  CHECK(has(i.ran.out, "line 3 goes on with its contents"));
  CHECK(has(i.ran.out, "one \"spare capsule\" taken, as no number is given"));
  CHECK(has(i.ran.out, "code \"7\" written as C7"));
  CHECK(has(i.toml,
            "holds = [{ item = \"VOCA-MI\", count = 6 }, { item = \"MIC-CL\", count = 4 }, { item = \"SPAR-CA\", count "
            "= 1 }]"));
}

TEST_CASE("5: one item a row, with the case it lies in") {
  const Imported i =
      import("Box,Item,Qty,Weight\nDrum box,Clamp mic,4,\nCable tub,25 ft cable,12,3\nDrum box,Kick mic,some,\n");
  CHECK(i.ran.code == 2);
  CHECK(i.lost.empty());
  CHECK(has(i.ran.out, "column \"Item\" taken for \"holds: item\": one item a row, gathered by case"));
  CHECK(has(i.toml,
            "name = \"Drum box\"\nform = \"box\"\nholds = [{ item = \"CLAM-MI\", count = 4 }]\n# Kick mic: some"));
  CHECK(has(i.ran.err, ":4:19: warning: \"some\" is no number of pieces"));
}

TEST_CASE("6: no codes, no forms, the same name twice") {
  const Imported i = import("Name,Weight\nLarge stand bag,27 lbs\nLarge stand bag,28#\nCable crate,\"1,250 g\"\n");
  CHECK(i.ran.code == 0);
  CHECK(has(i.ran.out, "line 2 (LARG-ST): code LARG-ST made from the name; form bag from the name"));
  CHECK(has(i.ran.out, "line 3 (LARG-SB)"));
  CHECK(has(i.toml, "weighed = \"28 lb\""));
  CHECK(has(i.toml, "weighed = \"1250 g\""));
}

TEST_CASE("7: values that cannot be: each is kept in words beside its row") {
  const Imported i = import(
      "Code,Name,Type,Weight "
      "(lb),Size,Wheels,Qty,Inspection\nA,One,tinware,99999,29x21,maybe,0,3/4/"
      "2027\nA,Two,bag,5,,,,\nB,Three,bag,heavy,,,,\n");
  CHECK(i.ran.code == 2);
  CHECK(i.lost.empty());
  CHECK(has(i.toml, "# weighed = \"99999 lb\""));
  CHECK(has(i.toml, "# Type: tinware"));
  CHECK(has(i.toml, "# count = 0"));
  CHECK(has(i.toml, "# code = \"A\"\n# name = \"Two\""));
  CHECK(has(i.ran.err, ":2:15: warning: \"weighed\" is out of range"));
  CHECK(has(i.ran.err, ":3:1: warning: this row is left out: the code \"A\" is given twice"));
  CHECK(has(i.ran.err, "\"heavy\" is no mass"));
  CHECK(has(i.ran.err, "\"3/4/2027\" may be two dates"));
}

TEST_CASE("8: heads that nobody would guess, mapped by hand; columns without a key") {
  const std::string sheet = "Kiste=Nr,Was,Gew,Owner\nK1,Kabel,12,Sorrel \"the Ox\"\n";
  CHECK(import(sheet).ran.code == 1);
  const Imported i = import(
      sheet, {"--column", "Kiste=Nr=code", "--column", "Was=name", "--column", "Gew=weighed", "--unit", "weighed=kg"});
  CHECK(i.ran.code == 0);
  CHECK(i.lost.empty());
  CHECK(has(i.toml, "weighed = \"12 kg\""));
  CHECK(has(i.toml, "# Owner: Sorrel \"the Ox\""));
  const Ran slip = import(sheet, {"--column", "Was=nam"}).ran;
  CHECK(has(slip.err, "there is no key \"nam\""));
  CHECK(has(slip.err, "did you mean \"name\"?"));
  CHECK(has(import(sheet, {"--column", "Waz=name"}).ran.err, "no column is headed \"Waz\""));
}

TEST_CASE("9: numbers without any unit, sizes in three columns, extra cells") {
  const Imported i =
      import("Code,Name,Weight,L (in),W (in),H (in)\nA,Trunk,90,29,21,18,note at the end\nB,Box,12 kg,,10,8\n");
  CHECK(i.ran.code == 2);
  CHECK(i.lost.empty());
  CHECK(has(i.ran.err, "\"90\" has no unit"));
  CHECK(has(i.ran.err, "or say --unit KEY=UNIT"));
  CHECK(has(i.toml, "size = \"29 x 21 x 18 in\"\n"));
  CHECK(has(i.toml, "# column 7: note at the end"));
  CHECK(has(i.ran.err, "a size needs length, width and height"));
}

TEST_CASE("10: an open quote, an empty file, no file: nothing is written") {
  const Ran open = import("Code,Name\nA,\"Trunk\nB,Box\n").ran;
  CHECK(open.code == 1);
  CHECK(has(open.err, ":2:3: error: the quote that begins this cell is never closed"));
  const Imported empty = import("");
  CHECK(empty.ran.code == 1);
  CHECK(empty.toml.empty());
  CHECK(has(import("Code,Name\n").ran.err, "there is no row below the heads"));
  CHECK(has(empty.ran.err, "no row has heads that name a code or a name"));
  CHECK(program({"import", "/nowhere/x.csv", "--kit", "/nowhere/kit"}).code == 1);
}

TEST_CASE("commas are judged by columns of numbers alone") {
  const Imported i = import("Code,Name,Shelf,Weight (lb),Owner\nA,Tub,\"1,5\",\"1,250\",\"2,5\"\n");
  CHECK(has(i.ran.out, "decimal point"));
  CHECK(has(i.toml, "home = \"1,5\"\nweighed = \"1250 lb\""));
}

TEST_CASE("what is no number stays as a remark, and is told") {
  const Imported i = import("Code,Name,Type,Weight (lb)\nA,Tub,tub,1.2.3\n");
  CHECK(i.ran.code == 2);
  CHECK(has(i.ran.err, ":2:11: warning: \"1.2.3\" is no mass"));
  CHECK(has(i.toml, "# Weight (lb): 1.2.3"));
}

TEST_CASE("a code that is made leaves the typed ones to their rows") {
  const Imported i = import("Code,Name,Form,Contents\nA,Tub,tub,2 x Mic\nMIC,Mic trunk,trunk,\n,Mic,bag,\n");
  CHECK(i.ran.code == 0);
  CHECK(has(i.toml, "[[case]]\ncode = \"MIC\"\nname = \"Mic trunk\""));
  CHECK(has(i.toml, "holds = [{ item = \"MICB\", count = 2 }]"));
}

TEST_CASE("80 rows become labels") {
  const Folder folder("eighty");
  const std::string kit = (folder.path / "kit").string();
  const Ran ran = program({"import", example("gear.csv"), "--kit", kit});
  CHECK(ran.code == 0);
  CHECK(has(ran.out, "gear.toml  80 cases, "));
  CHECK(lost_words(bytes_of(example("gear.csv")).substr(bytes_of(example("gear.csv")).find('\n')),
                   bytes_of(kit + "/gear.toml")) == "about about ");  // told as a guess
  CHECK(program({"label", kit, "--out", (folder.path / "labels.pdf").string()}).code == 0);
}

TEST_CASE("a dry run shows the file and writes nothing; a file that stands is never touched") {
  const Folder folder("dry");
  const std::string file = folder.file("a.csv", "code,name,form\nBOX,A box,box\n");
  const std::string kit = (folder.path / "kit").string();
  const Ran dry = program({"import", file, "--kit", kit, "--dry-run"});
  CHECK(dry.code == 0);
  CHECK(has(dry.out, "[[case]]\ncode = \"BOX\""));
  CHECK_FALSE(fs::exists(kit));
  CHECK(program({"import", file, "--kit", kit}).code == 0);
  const std::string before = bytes_of(folder.path / "kit/a.toml");
  const Ran again = program({"import", file, "--kit", kit});
  CHECK(again.code == 1);
  CHECK(has(again.err, "is there already"));
  CHECK(bytes_of(folder.path / "kit/a.toml") == before);
}

TEST_CASE("cases and items go out to a spreadsheet and come back the same, key by key") {
  const Folder folder("round");
  const std::string old_kit = example("kit");
  const std::string items = program({"list", "items", old_kit, "--csv"}).out,
                    cases = program({"list", "cases", old_kit, "--csv"}).out;
  fs::create_directories(folder.path / "kit");
  for (const auto& entry : fs::directory_iterator(old_kit)) {
    const std::string text = bytes_of(entry.path());
    if (!has(text, "[[case]]") && !has(text, "[[item]]")) fs::copy(entry.path(), folder.path / "kit");
  }
  const std::string kit = (folder.path / "kit").string();
  REQUIRE(items.size() + cases.size() > 20000);
  CHECK(program({"import", folder.file("items.csv", items), "--as", "items", "--kit", kit}).code ==
        2);  // the structures name cases that are not there yet
  std::ofstream(folder.path / "kit/units.toml")
      << unit_sections(old_kit);  // what differs of one unit is no row of cases
  CHECK(program({"import", folder.file("cases.csv", cases), "--kit", kit}).code == 0);
  CHECK(program({"list", "items", kit, "--csv"}).out == items);
  CHECK(program({"list", "cases", kit, "--csv"}).out == cases);
  for (const std::string show : {"outdoor-evening", "indoor-afternoon"}) {
    fs::copy(example(show + ".toml"), folder.path);
    const auto units = [](const std::string& file) {
      std::string out;
      const auto plan = nlohmann::json::parse(program({"check", file, "--json"}).out);
      for (const auto& row : plan["cases"])
        out += row["code"].get<std::string>() + " " + row["mass_kg"].dump() + " " + row["because"].dump() + "\n";
      return out + plan["cover"].dump();
    };
    CHECK(units((folder.path / (show + ".toml")).string()) == units(example(show + ".toml")));
  }
}

TEST_CASE("a column beside columns of its own languages is told, and what it says is kept as a remark") {
  const Folder folder("names");
  const std::string kit = (folder.path / "kit").string();
  const Ran ran =
      program({"import", folder.file("gear.csv", "code,name,names,names.es\nA1,Box,Caja,Kiste\n"), "--kit", kit});
  CHECK(ran.code == 2);
  CHECK(ran.err.find(":2:8: warning: \"names\" must be given by language, not a text") != std::string::npos);
  CHECK(bytes_of(fs::path(kit) / "gear.toml").find("# names = \"Caja\"\n# names.es = \"Kiste\"\n") !=
        std::string::npos);
  CHECK(program({"list", "cases", kit}).code == 0);
}

namespace {

/// A kit of two bags and a desk, with more text in its file, and readings of a scale taken into it.
struct Weighed {
  Ran ran;
  std::string before, after, cases;
};

Weighed weigh(const std::string& scale, const std::string& above = "", const std::string& below = "") {
  const Folder folder("weights");
  Weighed out;
  out.before = above +
               "[house]\nname = \"h\"\nphone = \"1\"\nunits = \"us\"\n[[case]]\ncode = \"BAG\"\nname = \"b\"\nform = "
               "\"bag\"\ncount = 2\nweighed = \"27 lb\"\n"
               "[[case]]\ncode = \"DESK\"\nname = \"d\"\nform = \"trunk\"\nweighed = \"86 lb\"\n" +
               below;
  fs::create_directories(folder.path / "kit");
  const std::string file = folder.file("kit/kit.toml", out.before), kit = (folder.path / "kit").string();
  out.ran = program({"import", folder.file("scale.csv", scale), "--kit", kit, "--weights"});
  out.after = bytes_of(file);
  out.cases = program({"list", "cases", kit}).out;
  return out;
}

}  // namespace

TEST_CASE("readings of a case and of all its units are taken together") {
  const Weighed w = weigh("Code,Weight (lb)\nBAG,30\nBAG-1,25\nBAG-2,25\n");
  CHECK(w.ran.code == 0);
  CHECK(has(w.ran.out, "BAG          27 lb -> 30 lb"));
  CHECK(has(w.ran.out, "3 masses written"));
}

TEST_CASE("a reading ends where the desk's mass is looked up") {
  const Weighed w = weigh("Code,Weight (lb)\nDESK,90\n", "", "[[unit]]\ncode = \"DESK\"\nweighed = \"80 lb\"\n");
  CHECK(w.ran.code == 0);
  CHECK(has(w.ran.out, "DESK         80 lb -> 90 lb"));
  CHECK(has(w.cases, "90 lb"));
}

TEST_CASE("a kit that would not read with its new masses stays as it is") {
  const Weighed w = weigh("Code,Weight (lb)\nBAG-2,25\n", "\"\\u0075nit\" = []\n");
  CHECK(w.ran.code == 1);
  CHECK(has(w.ran.err, "scale.csv: error: the masses cannot be written into the kit for you: "));
  CHECK(has(w.ran.err, "Nothing was written.\n"));
  CHECK(w.after == w.before);
}

TEST_CASE("a comma that parted a number is told, and no half of it is written") {
  const Weighed w = weigh("Code,Weight (lb)\nBAG,14,5\nDESK,90,\n");
  CHECK(w.ran.code == 2);
  CHECK(has(w.ran.err, "scale.csv:2:8: warning: \"5\" stands in a column without a head"));
  CHECK(has(w.ran.err, "the row is left out"));
  CHECK(has(w.ran.out, "1 masses written"));
  CHECK(has(w.after, "weighed = \"27 lb\""));
  const Imported i = import("Code,Name,Type,Weight (kg)\nA,Tub,tub,14,5\n");
  CHECK(i.ran.code == 2);
  CHECK(has(i.ran.err, ":2:14: warning: \"5\" stands in a column without a head"));
  CHECK(has(i.toml, "# column 5: 5"));
}

TEST_CASE("of two columns of masses it is told which was taken") {
  const Weighed w = weigh("Code,Gross (lb),Weight (lb)\nDESK,90,70\n");
  CHECK(w.ran.code == 2);
  CHECK(
      has(w.ran.err, "warning: columns \"Gross (lb)\" and \"Weight (lb)\" both mean \"weighed\"; the first is taken"));
}

TEST_CASE("what was taken for granted of a reading is told") {
  const Weighed w = weigh("Code,Weight (lb)\nBAG,~12\nDESK,\"1,500\"\n");
  CHECK(w.ran.code == 0);
  CHECK(has(w.ran.out, "guessed: line 2 (BAG): weighed: \"about\" left out\n"));
  CHECK(has(w.ran.out, "guessed: line 3 (DESK): weighed: \"1,500\" read as 1500\n"));
}
