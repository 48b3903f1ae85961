// SPDX-License-Identifier: MIT
// Only the masses change; every other byte stays.
#include "write/weigh_edit.h"

#include <catch2/catch.hpp>

#include "../read/telling.h"
#include "write/csv_out.h"
#include "write/intake_text.h"

using namespace dunnage;

namespace {

struct Edited {
  std::string text, told;
  std::size_t changes = 0;
};

Edited weigh(const std::string& kit, const std::vector<std::pair<std::string, std::string>>& readings) {
  Sources sources;
  Diagnostics diagnostics;
  const Catalogue c = make_catalogue(*read_kit_texts("kit", {{"k.toml", kit}}, sources, diagnostics));
  const SourceFile* file = sources.add("w.csv", "");
  std::vector<ScaleReading> list;
  for (const auto& [code, mass] : readings) {
    const Place place{file, static_cast<std::uint32_t>(list.size() + 1), 1, 1};
    list.push_back({{code, place}, {Mass::from_si(*parse_quantity(mass, Measure::mass).si), place}, mass});
  }
  const WeighEdit edit = weigh_edit(c, list, diagnostics);
  return {edit.files.empty() ? kit : edit.files.at("k.toml"), render(diagnostics, sources), edit.changes.size()};
}

const std::string head = "[house]\r\nname = \"Añil\" # whose\r\n\r\n[[case]]\r\n";

}  // namespace

TEST_CASE("a mass that is there is replaced, one that is not comes after the code") {
  const std::string kit = head +
                          "  code = 'A' # ä\r\nname = \"á\"\r\nform = \"box\"\r\nweighed = \"10 lb\"   # last "
                          "year\r\n[[case]]\r\n\tcode = \"B\"\t#x\r\nname=\"b\"\r\nform=\"bag\"\r\n";
  CHECK(weigh(kit, {{"A", "12 lb"}, {"B", "3.5 kg"}}).text ==
        head +
            "  code = 'A' # ä\r\nname = \"á\"\r\nform = \"box\"\r\nweighed = \"12 lb\"   # last "
            "year\r\n[[case]]\r\n\tcode = \"B\"\t#x\r\n\tweighed = \"3.5 kg\"\r\nname=\"b\"\r\nform=\"bag\"\r\n");
  CHECK(weigh(kit, {{"A", "10 lb"}}).changes == 0);
  CHECK(weigh(kit, {{"A", "10 lb"}}).text == kit);
}

TEST_CASE("one of several gets a [[unit]], or its own changed; all alike set the case") {
  const std::string kit = "[house]\nname = \"h\"\n[[case]]\ncode = \"BAG\"\nname = \"b\"\nform = \"bag\"\ncount = 2";
  CHECK(weigh(kit, {{"BAG-2", "9 kg"}}).text == kit + "\n\n[[unit]]\ncode = \"BAG-2\"\nweighed = \"9 kg\"\n");
  const std::string with = kit + "\n[[unit]]\ncode = \"BAG-2\"\nhome = \"Rack\"\n";
  CHECK(weigh(with, {{"BAG-2", "9 kg"}}).text ==
        kit + "\n[[unit]]\ncode = \"BAG-2\"\nweighed = \"9 kg\"\nhome = \"Rack\"\n");
  CHECK(weigh(kit, {{"BAG-1", "9 kg"}, {"BAG-2", "9 kg"}}).text.find("code = \"BAG\"\nweighed = \"9 kg\"\nname") !=
        std::string::npos);
  const std::string two = weigh(kit, {{"BAG-1", "8 kg"}, {"BAG-2", "9 kg"}}).text;
  CHECK(two ==
        kit + "\n\n[[unit]]\ncode = \"BAG-1\"\nweighed = \"8 kg\"\n\n[[unit]]\ncode = \"BAG-2\"\nweighed = \"9 kg\"\n");
}

TEST_CASE("a case's own reading beside those of its units: each has what the scale said") {
  const std::string kit =
      "[house]\nname = \"h\"\n[[case]]\ncode = \"BAG\"\nname = \"b\"\nform = \"bag\"\ncount = 2\nweighed = \"27 lb\"\n";
  const std::string heavy =
      "[house]\nname = \"h\"\n[[case]]\ncode = \"BAG\"\nname = \"b\"\nform = \"bag\"\ncount = 2\nweighed = \"30 lb\"\n";
  const auto unit = [](const std::string& code, const std::string& mass) {
    return "\n[[unit]]\ncode = \"" + code + "\"\nweighed = \"" + mass + "\"\n";
  };
  CHECK(weigh(kit, {{"BAG", "30 lb"}, {"BAG-1", "25 lb"}, {"BAG-2", "25 lb"}}).text ==
        heavy + unit("BAG-1", "25 lb") + unit("BAG-2", "25 lb"));
  CHECK(weigh(kit, {{"BAG-1", "27 lb"}, {"BAG", "30 lb"}}).text == heavy + unit("BAG-1", "27 lb"));
  CHECK(weigh(kit, {{"BAG-1", "30 lb"}, {"BAG", "30 lb"}}).text == heavy);
}

TEST_CASE("a case of one whose [[unit]] says a mass gets it there") {
  const std::string kit =
      "[house]\nname = \"h\"\n[[case]]\ncode = \"DESK\"\nname = \"d\"\nform = \"trunk\"\nweighed = \"86 "
      "lb\"\n[[unit]]\ncode = \"DESK\"\n";
  CHECK(weigh(kit + "weighed = \"80 lb\"\n", {{"DESK", "90 lb"}}).text == kit + "weighed = \"90 lb\"\n");
  CHECK(weigh(kit + "weighed = \"80 lb\"\n", {{"DESK", "86 lb"}}).text == kit + "weighed = \"86 lb\"\n");
  CHECK(weigh(kit + "home = \"Van\"\n", {{"DESK", "90 lb"}}).text.find("form = \"trunk\"\nweighed = \"90 lb\"") !=
        std::string::npos);
}

TEST_CASE("no [[unit]] is put behind a list of units in brackets") {
  const std::string kit =
      "unit = [{ code = \"BAG-1\", home = \"Van\" }]\n[house]\nname = \"h\"\n[[case]]\ncode = \"BAG\"\nname = "
      "\"b\"\nform = \"bag\"\ncount = 2\n";
  for (const std::string unit : {"BAG-1", "BAG-2"}) {
    const Edited edited = weigh(kit, {{unit, "25 lb"}});
    CHECK(edited.text == kit);
    CHECK(edited.told.find("w.csv:1:1: warning: the mass of \"" + unit + "\" cannot be written into the kit for you") ==
          0);
  }
  CHECK(weigh(kit, {{"BAG-2", "25 lb"}})
            .told.find("hint: write { code = \"BAG-2\", weighed = \"25 lb\" } into this list yourself: k.toml:1:1") !=
        std::string::npos);
}

TEST_CASE("what cannot be written is told, and the text stays") {
  const std::string line = "case = [{ code = \"A\", name = \"a\", form = \"box\" }]\n[house]\nname = \"h\"\n";
  const Edited one = weigh(line, {{"A", "3 kg"}});
  CHECK(one.text == line);
  CHECK(one.told.find("the mass of \"A\" cannot be written into the kit for you") != std::string::npos);
  CHECK(one.told.find("write weighed = \"3 kg\" there yourself: k.toml:1:") != std::string::npos);
  const Edited twice = weigh(line, {{"A", "3 kg"}, {"A", "4 kg"}, {"AB", "1 kg"}});
  CHECK(twice.told.find("\"A\" was weighed twice, 3 kg and 4 kg") != std::string::npos);
  CHECK(twice.told.find("the kit has no case \"AB\"") != std::string::npos);
}

TEST_CASE("cells are quoted where a reader would take them apart") {
  CHECK(csv_text({{"a", "b;c", "d\"e", " f", "g\nh", ""}}) == "a,\"b;c\",\"d\"\"e\",\" f\",\"g\nh\",\r\n");
}

TEST_CASE("what was refused stands as a comment") {
  Intake intake{"a.csv", "commas", {}, {}, {}};
  IntakeRow row{"case", {}, {}, {"Owner: x\ny"}, {}, false};
  row.lines = {{"code", std::string("A"), "", {}, false},
               {"weighed", std::string("9999 t"), "W", {}, true},
               {"serves", std::vector<std::string>{"a", "b\"c"}, "", {}, false}};
  intake.rows = {row};
  CHECK(intake_text(intake).text ==
        "# From the spreadsheet a.csv (commas).\n\n[[case]]\ncode = \"A\"\n# weighed = \"9999 t\"\nserves = [\"a\", "
        "\"b\\\"c\"]\n# Owner: x / y\n");
}
