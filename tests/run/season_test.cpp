// SPDX-License-Identifier: MIT
// A season with one kit: begin, import, label, print, pull, lose two and find one, tally, weigh, print again.
#include <catch2/catch.hpp>
#include <fstream>
#include <nlohmann/json.hpp>

#include "../shell.h"
#include "program.h"

using dunnage::bytes_of;
using dunnage::Folder;
using dunnage::program;
using dunnage::Ran;
using dunnage::shell;
namespace fs = std::filesystem;

namespace {

std::string text_of(const fs::path& pdf) { return shell("pdftotext -layout " + pdf.string() + " - 2>&1").out; }

std::string missing_of(const Ran& ran) {
  std::string out;
  const auto tally = nlohmann::json::parse(ran.out);
  for (const auto& one : tally["missing"]) out += one["code"].get<std::string>() + " ";
  return out;
}

}  // namespace

TEST_CASE("both beginnings check and print at once, and nothing is written over") {
  for (const std::string units : {"metric", "us"}) {
    const Folder folder("begin");
    const std::string crew = (folder.path / "crew").string();
    REQUIRE(program({"begin", crew, "--units", units}).code == 0);
    const Ran check = program({"check", crew + "/show.toml"});
    CHECK(check.code == 0);
    CHECK(check.err.empty());
    CHECK(program({"print", crew + "/show.toml", "--out", crew + "/paper"}).code == 0);
    CHECK(program({"label", crew + "/kit", "--out", crew + "/labels.pdf"}).code == 0);
    const std::string before = bytes_of(crew + "/show.toml");
    const Ran again = program({"begin", crew});
    CHECK(again.code == 1);
    CHECK(again.err.find("is not empty; name a new folder. Nothing was written") != std::string::npos);
    CHECK(bytes_of(crew + "/show.toml") == before);
  }
}

TEST_CASE("a season") {
  const Folder folder("season");
  const auto at = [&](const std::string& name) { return (folder.path / name).string(); };
  REQUIRE(program({"begin", at("crew"), "--units", "us"}).code == 0);
  fs::copy(at("crew/kit"), at("kit-before"));

  // New cases come from a spreadsheet and get labels.
  const std::string sheet =
      folder.file("new.csv",
                  "Code,Name,Type,Qty,Weight (lb),Shelf,Place,Handles,Goes\nMAT,Cable mat,loose,3,14,Shelf "
                  "C,stage,1,always\nAID,First aid box,box,1,6,Shelf A,stage,1,always\n");
  CHECK(program({"import", sheet, "--kit", at("crew/kit"), "--column", "Goes=goes"}).code == 0);
  const Ran label =
      program({"label", at("crew/kit"), "--since", at("kit-before"), "--stock", "4x6-roll", "--out", at("labels.pdf")});
  CHECK(label.code == 0);
  CHECK(label.out.find("MAT-1        new\nMAT-2        new\nMAT-3        new\nAID          new\n") == 0);
  const std::string labels = text_of(at("labels.pdf"));
  CHECK(labels.find("MAT-3") != std::string::npos);
  CHECK(labels.find("DESK") == std::string::npos);

  // The show is printed, and pulled by two people with two phones.
  const std::string show = at("crew/show.toml");
  CHECK(program({"print", show, "--out", at("paper")}).code == 0);
  CHECK(text_of(at("paper/pull-sheet.pdf")).find("MAT-2") != std::string::npos);
  const std::string ana = folder.file("ana.txt",
                                      "16:02 DESK  Console trunk\nmass 86 lb (1a2b)\nroll; 2 people\nbelongs to Our "
                                      "sound crew\nphone your number\n\nMICS\ncable wheel squeaks\n");
  const std::string ben = folder.file("ben.txt", "\nBAG-1,TORCH\r\nMAT-1\r\nMAT-2\r\nMAT-3\r\nAID\r\nAID\r\n");
  const Ran pulled = program({"tally", show, "--out", ana, "--out", ben});
  CHECK(pulled.code == 0);
  CHECK(pulled.out.find("out: 9 of 9 are in") == 0);
  CHECK(pulled.out.find("cable: wheel squeaks") != std::string::npos);

  // Two do not come home.
  const std::string home = folder.file("home.txt", "DESK\nMICS\nCABLE\nBAG-1\nTROCH\nMAT-1\nMAT-3\nAID\n");
  const Ran first = program({"tally", show, "--out", ana, "--out", ben, "--back", home, "--sheet", at("return.pdf")});
  CHECK(first.code == 2);
  CHECK(first.out.find("missing (2):\n  TORCH  Box of torches: last seen going out in list ben") != std::string::npos);
  CHECK(first.out.find("\"TROCH\": did you mean \"TORCH\"?") != std::string::npos);
  const std::string filled = text_of(at("return.pdf"));
  CHECK(filled.find("NOT SCANNED") != std::string::npos);
  CHECK(filled.find("MAT-2 Cable mat: last seen going out, list ben; pulled by ben") != std::string::npos);
  CHECK(missing_of(program({"tally", show, "--back", home, "--json"})) == "TORCH MAT-2 ");

  // One was found: the slip is mended.
  const std::string found = folder.file("found.txt", "TORCH in the van's door\n");
  const Ran second = program({"tally", show, "--out", ana, "--out", ben, "--back", home, "--back", found, "--json"});
  CHECK(second.code == 2);
  CHECK(missing_of(second) == "MAT-2 ");

  // Everything is weighed; the lost mat leaves the kit by hand. Every other byte of the kit stays.
  const std::string before = bytes_of(at("crew/kit/cases.toml"));
  const std::string scale =
      folder.file("scale.csv", "code;weight\nMICS;\"14,5 lb\"\nBAG-1;27 lb\nBAG-2;25 lb\nDESK;88 lb\n");
  CHECK(program({"import", scale, "--kit", at("crew/kit"), "--weights"}).code == 0);
  std::string undone = bytes_of(at("crew/kit/cases.toml"));
  CHECK(undone.find("weighed = \"14.5 lb\"") != std::string::npos);
  for (const auto& [now, then] :
       std::vector<std::pair<std::string, std::string>>{{"weighed = \"14.5 lb\"\n", ""},
                                                        {"\"88 lb\"", "\"86 lb\""},
                                                        {"\n[[unit]]\ncode = \"BAG-2\"\nweighed = \"25 lb\"\n", ""}}) {
    const std::size_t place = undone.find(now);
    REQUIRE(place != std::string::npos);
    undone.replace(place, now.size(), then);
  }
  CHECK(undone == before);
  std::ofstream(at("crew/kit/lost.toml")) << "[[unit]]\ncode = \"MAT-2\"\nout_of_service = \"lost at the hall\"\n";

  // The next show prints with what was learned.
  CHECK(program({"print", show, "--out", at("paper")}).code == 0);
  CHECK(text_of(at("paper/pull-sheet.pdf")).find("88 lb") != std::string::npos);
  CHECK(program({"why", show, "MAT-2"}).out.find("lost at the hall") != std::string::npos);
  CHECK(program({"check", show}).out.find("8 pieces go") == 0);
  CHECK(program({"label", at("crew/kit"), "--since", at("kit-before"), "MICS", "--out", at("one.pdf")})
            .out.find("MICS         mass") == 0);
}
