// SPDX-License-Identifier: MIT
// Facts of the trade, each of them common practice, no source: what a crew chief takes for granted must come out of
// the whole program, on the sheets.
#include <catch2/catch.hpp>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "../shell.h"
#include "program.h"

using dunnage::Folder;
using dunnage::program;
using dunnage::shell;

namespace {

/// A canopy of four legs, its bags, a cover, and two digital consoles, one of them the spare.
std::string kit_with(const std::string& bag) {
  return R"([house]
name = "Yard crew"
units = "us"
paper = "letter"
[[case]]
code = "BAG"
name = "Sand bag"
form = "bag"
count = 8
weighed = ")" +
         bag + R"("
[[case]]
code = "CANOPY-BAG"
name = "Canopy bag"
form = "bag"
weighed = "60 lb"
[[case]]
code = "COVERS"
name = "Rain cover tub"
form = "tub"
weighed = "12 lb"
goes = [{ setting = "outdoor" }]
[[case]]
code = "DESK"
name = "Digital console trunk"
form = "trunk"
weighed = "80 lb"
serves = ["console-digital"]
[[case]]
code = "DESK-B"
name = "Second digital console trunk"
form = "trunk"
weighed = "60 lb"
serves = ["console-digital"]
spare_for = "console-digital"
[[structure]]
code = "CANOPY"
name = "Canopy"
kind = "canopy"
made_of = [{ code = "CANOPY-BAG", count = 1 }]
legs = ["NW", "NE", "SE", "SW"]
plan = "10 x 10 ft"
)";
}

std::string show_with(const std::string& setting, int bags_a_leg) {
  std::string out = "kit = \"kit\"\n[show]\ntitle = \"Yard\"\ndate = 2027-05-01\nsetting = \"" + setting +
                    "\"\nconsole = \"console-digital\"\n";
  if (bags_a_leg > 0)
    out +=
        "[[use]]\nstructure = \"CANOPY\"\nas = \"desk canopy\"\nballast = [{ legs = \"each\", code = \"BAG\", count "
        "= " +
        std::to_string(bags_a_leg) + " }]\n";
  return out;
}

struct Yard {
  Folder folder{"trade"};
  std::string show;
  Yard(const std::string& bag, const std::string& setting, int bags_a_leg) {
    std::filesystem::create_directory(folder.path / "kit");
    folder.file("kit/kit.toml", kit_with(bag));
    show = folder.file("show.toml", show_with(setting, bags_a_leg));
  }
  std::string sheet(const std::string& document) const {
    const std::string out = (folder.path / "paper").string();
    REQUIRE(program({"print", show, "--only", document, "--out", out}).code != 1);
    return shell("pdftotext -layout " + out + "/" + document + ".pdf - 2>&1").out;
  }
  std::string pulled() const {
    const auto json = nlohmann::json::parse(program({"check", show, "--json"}).out);
    std::string out;
    for (const auto& one : json["cases"]) out += (out.empty() ? "" : " ") + one["code"].get<std::string>();
    return out;
  }
};

}  // namespace

TEST_CASE("four bags of 50 lb are 200 lb on the pull sheet; eight of 35 lb are 280 lb (common practice, no source)") {
  const std::string bare = "kit = \"kit\"\n[show]\ntitle = \"Yard\"\ndate = 2027-05-01\nsetting = \"indoor\"\n";
  Yard yard("50 lb", "indoor", 0);
  yard.show = yard.folder.file("four.toml", "bring = [{ code = \"BAG\", count = 4, because = \"ballast\" }]\n" + bare);
  const std::string four = yard.sheet("pull-sheet");
  CHECK(four.find("50 lb") != std::string::npos);
  CHECK(four.find("200 lb") != std::string::npos);
  Yard other("35 lb", "indoor", 0);
  other.show = other.folder.file("eight.toml", "bring = [{ code = \"BAG\", because = \"ballast\" }]\n" + bare);
  const std::string eight = other.sheet("pull-sheet");
  CHECK(eight.find("35 lb") != std::string::npos);
  CHECK(eight.find("280 lb") != std::string::npos);
}

TEST_CASE("an indoor show leaves shelter, ballast and covers at home (common practice, no source)") {
  CHECK(Yard("50 lb", "outdoor", 1).pulled() == "BAG-1 BAG-2 BAG-3 BAG-4 CANOPY-BAG COVERS DESK DESK-B");
  CHECK(Yard("50 lb", "indoor", 0).pulled() == "DESK DESK-B");
}

TEST_CASE("a digital console brings a digital spare (common practice, no source)") {
  const Yard yard("50 lb", "indoor", 0);
  CHECK(program({"why", yard.show, "DESK-B"}).out.find("stands by for DESK (console-digital)") != std::string::npos);
  CHECK(program({"why", yard.show, "DESK"}).out.find("the show's console asks for console-digital") !=
        std::string::npos);
}
