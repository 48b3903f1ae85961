// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "../shell.h"
#include "program.h"
#include "run/version.h"

using dunnage::example;
using dunnage::program;
using dunnage::Ran;

TEST_CASE("a misspelt word is answered with the nearest right one, and nothing is done") {
  auto error = [](const std::vector<std::string>& arguments) {
    const Ran ran = program(arguments);
    CHECK(ran.code == 1);
    CHECK(ran.out.empty());
    return ran.err;
  };
  CHECK(error({"pirnt", "x.toml"}) == "error: there is no command \"pirnt\": did you mean \"print\"?\n");
  CHECK(error({"print", "x.toml", "--papper", "a4"}) ==
        "error: there is no option \"--papper\": did you mean \"--paper\"?\n");
  CHECK(error({"print", "x.toml", "--paper", "a5"}) ==
        "error: --paper is one of a4, letter, not \"a5\": did you mean \"a4\"?\n");
  CHECK(error({"print", example("indoor-afternoon.toml"), "--only", "pul-sheet"})
            .find("error: there is no sheet \"pul-sheet\": did you mean \"pull-sheet\"?\n") != std::string::npos);
  CHECK(error({"label", example("kit"), "--stock", "4x6rol"})
            .find("error: there is no label stock \"4x6rol\": did you mean \"4x6-roll\"?\n") != std::string::npos);
  CHECK(error({"list", "doks"}) == "error: there is no list of \"doks\": did you mean \"docs\"?\n");
  CHECK(error({"help", "unit"}) == "error: there is no help on \"unit\": did you mean \"units\"?\n");
  CHECK(error({"reckon", "lift-taem"}).find("lift-team") != std::string::npos);
  CHECK(error({"why", example("indoor-afternoon.toml"), "DESK-Q"}).find("did you mean \"DESK-") != std::string::npos);
}

TEST_CASE("help is there for the asking") {
  CHECK(program({"--help"}).code == 0);
  CHECK(program({"--help"}).out.find("print") != std::string::npos);
  CHECK(program({}).code == 0);
  CHECK(program({"print", "--help"}).out.find("--one-file") != std::string::npos);
  CHECK(program({"--version"}).out == std::string("dunnage ") + dunnage::version + "\n");
}

TEST_CASE("every list and every topic of help has something to say") {
  for (const std::string what : {"docs", "stocks", "units", "rules", "layouts"}) {
    INFO(what);
    const Ran ran = program({"list", what});
    CHECK(ran.code == 0);
    CHECK(!ran.out.empty());
    CHECK(ran.err.empty());
  }
  CHECK(program({"list", "cases", example("kit")}).out.find("DESK-1") != std::string::npos);
  for (const std::string topic : {"", "units", "conditions", "labels", "layouts", "safety"})
    CHECK(program(topic.empty() ? std::vector<std::string>{"help"} : std::vector<std::string>{"help", topic}).code ==
          0);
}

TEST_CASE("a kit where a show is wanted, and a show where a kit is, are told in one message with the remedy") {
  const auto told = [](std::vector<std::string> arguments) { return dunnage::without_folder(program(arguments).err); };
  CHECK(told({"label", example("indoor-afternoon.toml")}) ==
        "examples/indoor-afternoon.toml: error: \"examples/indoor-afternoon.toml\" is a show, and a kit is wanted\n"
        "hint: name its kit's folder: examples/kit\n1 error\n");
  CHECK(told({"check", example("kit/house.toml")}) ==
        "examples/kit/house.toml: error: \"examples/kit/house.toml\" is a file of a kit, and a show is wanted\n"
        "hint: name the show's file: the one with [show] and kit = \"...\" in it\n1 error\n");
  CHECK(told({"print", example("kit")}).find("is a folder, as a kit is, and a show is wanted") != std::string::npos);
  CHECK(told({"list", "cases", example("kit/house.toml")}).find("hint: name the folder: examples/kit\n") !=
        std::string::npos);
}

TEST_CASE("help on a command is the command's own, and a misspelt word is answered with the nearest of both") {
  CHECK(program({"help", "print"}).out.find("--one-file") != std::string::npos);
  CHECK(program({"help", "pritn"}).err.find("did you mean \"print\"?") != std::string::npos);
  CHECK(program({"help", "safty"}).err.find("did you mean \"safety\"?") != std::string::npos);
}

TEST_CASE("two shows of one kit clash over what both want, and nothing else can be compared") {
  const dunnage::Folder folder("clash");
  std::filesystem::create_directories(folder.path / "kit");
  folder.file("kit/kit.toml",
              "[house]\nname = \"H\"\n[[case]]\ncode = \"BOX\"\nname = \"Box\"\nform = \"box\"\ngoes = \"always\"\n");
  const auto show = [&](const std::string& name, const std::string& date) {
    return folder.file(name + ".toml", "kit = \"kit\"\n[show]\ntitle = \"" + name + "\"\n" + date);
  };
  const std::string one = show("One", "date = 2027-06-19\n"), two = show("Two", "date = 2027-06-19\n"),
                    later = show("Later", "date = 2027-08-19\n");
  const Ran clash = program({"clash", one, two});
  CHECK(clash.code == 2);
  CHECK(clash.out ==
        "BOX (Box): One and Two both want it from 2027-06-19 to 2027-06-19; nothing else owned would do\n");
  const Ran apart = program({"clash", one, later});
  CHECK(apart.code == 0);
  CHECK(apart.out == "No case is wanted by two of these shows at the same time.\n");
  CHECK(program({"clash", one, one}).code == 1);
  CHECK(program({"clash", one, show("Undated", "")}).code == 1);
  CHECK(program({"clash", one, example("indoor-afternoon.toml")}).code == 1);  // of another kit
}

TEST_CASE("what a change of the show changed in what goes, and by what mass") {
  const dunnage::Folder folder("change");
  std::filesystem::create_directories(folder.path / "kit");
  folder.file(
      "kit/kit.toml",
      "[house]\nname = \"H\"\nunits = \"metric\"\n"
      "[[case]]\ncode = \"BOX\"\nname = \"Box\"\nform = \"box\"\nweighed = \"9.04 kg\"\ngoes = \"always\"\nneeds = [{ "
      "code = \"lead\", once = 1 }]\n"
      "[[case]]\ncode = \"LEAD\"\nname = \"Lead\"\nform = \"bag\"\nweighed = \"1.96 kg\"\nserves = [\"lead\"]\n"
      "[[case]]\ncode = \"TENT\"\nname = \"Tent\"\nform = \"bag\"\ncount = 3\nweighed = \"20 kg\"\ngoes = \"asked\"\n");
  const auto show = [&](const std::string& name, const std::string& more) {
    return folder.file(name + ".toml", "kit = \"kit\"\n[show]\ntitle = \"S\"\ndate = 2027-06-19\n" + more);
  };
  const std::string old = show("old", ""),
                    now = show("now", "[[bring]]\ncode = \"TENT\"\ncount = 2\nbecause = \"rain\"\n");
  CHECK(program({"check", now, "--against", old})
            .out.starts_with("added  TENT (Tent): 0 -> 2\nIn all 40.0 kg heavier (11.5 kg -> 51.5 kg).\n"));
  CHECK(program({"check", old, "--against", now})
            .out.starts_with("gone   TENT (Tent): 2 -> 0\nIn all 40.0 kg lighter (51.5 kg -> 11.5 kg).\n"));
  CHECK(program({"check", now, "--against", now}).out.starts_with("Nothing changes in what goes.\n"));
}

TEST_CASE("an answer of reckon as JSON has its figure, its source and its cautions") {
  const Ran ran = program({"reckon", "lift-team", "mass=62 lb", "people=crew", "grips=2", "--json"});
  CHECK(ran.code == 0);
  const auto json = nlohmann::json::parse(ran.out);
  CHECK(json["result"]["value"] == 2);
  CHECK(json["result"]["unit"] == "people");
  CHECK(json["inputs"]["mass"] == "62 lb");
  CHECK(json["source"].get<std::string>().find("INDG143") != std::string::npos);
  CHECK(json["cautions"].size() == 1);
}
