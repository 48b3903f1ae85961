// SPDX-License-Identifier: MIT
// What belongs on a system: manual page, completion and schema, each judged by the program that will read it.
#include <catch2/catch.hpp>
#include <fstream>

#include "../shell.h"
#include "program.h"
#include "run/command_table.h"

using dunnage::Folder;
using dunnage::program;
using dunnage::shell;

TEST_CASE("the manual page says every command and option, and is well formed") {
  const Folder folder("man");
  const std::string page = program({"help", "man"}).out;
  const std::string shown = shell("mandoc -T utf8 " + folder.file("dunnage.1", page) + " | col -b").out;
  for (const auto& command : dunnage::command_table().commands) {
    CHECK(shown.find("dunnage " + command.name) != std::string::npos);
    for (const auto& option : command.options) CHECK(shown.find(option.name) != std::string::npos);
  }
  CHECK(shell("mandoc -T lint -W error " + (folder.path / "dunnage.1").string()).out.empty());
}

TEST_CASE("three shells take their completion, and bash completes a command and its options") {
  const Folder folder("complete");
  for (const std::string name : {"bash", "zsh", "fish"}) {
    const std::string file = folder.file(name, program({"complete", name}).out);
    INFO(name);
    const auto said = shell(name + " -n " + file + " 2>&1");
    CHECK(said.status == 0);
    CHECK(said.out.empty());
  }
  const auto complete = [&](const std::string& words, const std::string& count) {
    return shell("cd /proc/self/task && bash -c '. " + (folder.path / "bash").string() + "; COMP_WORDS=(" + words +
                 "); COMP_CWORD=" + count + "; _dunnage; echo ${COMPREPLY[*]}'")
        .out;
  };
  CHECK(complete("dunnage ta", "1") == "tally\n");
  CHECK(complete("dunnage tally --b", "2") == "--back\n");
  CHECK(complete("dunnage list st", "2") == "stocks\n");
  CHECK(program({"complete", "tcsh"}).code == 1);
}

TEST_CASE("words that completion offers for list, help and complete are all known") {
  const std::string fish = program({"complete", "fish"}).out;
  for (const std::string command : {"list", "help", "complete"}) {
    const std::string head = "__fish_seen_subcommand_from " + command + "' -f -a '";
    const std::size_t at = fish.find(head);
    REQUIRE(at != std::string::npos);
    std::istringstream words(fish.substr(at + head.size(), fish.find('\'', at + head.size()) - at - head.size()));
    for (std::string word; words >> word;) {
      const auto ran = program({command, word});
      INFO(command << ' ' << word << ": " << ran.err);
      CHECK((ran.code == 0 || ran.err.find("name the kit folder") != std::string::npos));
    }
  }
}

TEST_CASE("the schemas take every example and beginning, and mark mistakes") {
  const Folder folder("schema");
  const std::string judge = folder.file("judge.py", R"(import datetime, json, sys, tomllib
import jsonschema
def plain(x):
    if isinstance(x, dict): return {k: plain(v) for k, v in x.items()}
    if isinstance(x, list): return [plain(v) for v in x]
    return x.isoformat() if isinstance(x, (datetime.date, datetime.time)) else x
schema = json.load(open(sys.argv[1]))
jsonschema.Draft7Validator.check_schema(schema)
for name in sys.argv[2:]:
    for e in jsonschema.Draft7Validator(schema).iter_errors(plain(tomllib.load(open(name, 'rb')))):
        print(list(e.path), e.message)
)");
  const std::string kit = folder.file("kit.json", program({"list", "kit-keys", "--json"}).out),
                    show = folder.file("show.json", program({"list", "show-keys", "--json"}).out);
  const std::string project = PROJECT_DIR;
  CHECK(shell("python3 " + judge + " " + kit + " " + project + "/examples/kit/*.toml " + project +
              "/examples/begin/*/kit/*.toml 2>&1")
            .out.empty());
  CHECK(shell("python3 " + judge + " " + show + " " + project + "/examples/*.toml " + project +
              "/examples/begin/*/show.toml 2>&1")
            .out.empty());
  const std::string wrong = folder.file("wrong.toml",
                                        "[[case]]\nname = \"x\"\nform = \"chest\"\ncount = \"two\"\nwieghed = \"3 "
                                        "lb\"\ngoes = [{ after_dark = \"yes\" }]\n");
  const std::string told = shell("python3 " + judge + " " + kit + " " + wrong + " 2>&1").out;
  for (const std::string mistake : {"'code' is a required property", "'chest' is not one of",
                                    "'two' is not of type 'integer'", "'wieghed' was unexpected", "'goes'"}) {
    INFO(told);
    CHECK(told.find(mistake) != std::string::npos);
  }
}
