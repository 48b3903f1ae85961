// SPDX-License-Identifier: MIT
// README's table of exit codes: 1 for what was typed, 3 for the world, with one sentence each.
#include <catch2/catch.hpp>

#include "../shell.h"
#include "program.h"

using dunnage::example;
using dunnage::Folder;
using dunnage::program;
using dunnage::shell;
namespace fs = std::filesystem;

TEST_CASE("an option or argument that is given with nothing is refused by name") {
  const std::string show = example("indoor-afternoon.toml"), kit = example("kit");
  for (const std::vector<std::string>& arguments :
       std::vector<std::vector<std::string>>{{"print", show, "--out", ""},
                                             {"print", show, "--only", ""},
                                             {"print", show, "--for", ""},
                                             {"print", show, "--paper", ""},
                                             {"print", show, "--units", ""},
                                             {"print", show, "--lang", ""},
                                             {"print", ""},
                                             {"check", ""},
                                             {"check", show, "--against", ""},
                                             {"why", show, ""},
                                             {"label", kit, ""},
                                             {"label", ""},
                                             {"label", kit, "--out", ""},
                                             {"label", kit, "--stock", ""},
                                             {"label", kit, "--since", ""},
                                             {"label", kit, "--offset", ""},
                                             {"reckon", ""},
                                             {"list", ""},
                                             {"list", "stocks", ""},
                                             {"help", ""},
                                             {"begin", ""},
                                             {"import", "", "--kit", kit},
                                             {"import", "x.csv", "--kit", ""},
                                             {"import", "x.csv", "--kit", kit, "--as", ""},
                                             {"tally", show, "--out", ""},
                                             {"tally", show, "--back", ""},
                                             {"tally", show, "--sheet", ""},
                                             {"complete", ""},
                                             {"clash", show, ""}}) {
    INFO(arguments.front() << " " << arguments.back());
    const auto ran = program(arguments);
    CHECK(ran.code == 1);
    CHECK(ran.out.empty());
    CHECK(ran.err.find("is given with nothing in it") != std::string::npos);
  }
}

TEST_CASE("a list wants a folder that is there, and only where it is of a kit") {
  for (const char* what : {"stocks", "layouts", "cases", "items"}) {
    INFO(what);
    const auto ran = program({"list", what, "nosuch"});
    CHECK(ran.code == 1);
    CHECK(ran.out.empty());
    CHECK(ran.err.find("there is no folder \"nosuch\"") != std::string::npos);
  }
  for (const char* what : {"docs", "units", "rules", "kit-keys", "show-keys", "layout-keys", "stock-keys"}) {
    INFO(what);
    CHECK(program({"list", what, example("kit")}).code == 1);
    CHECK(program({"list", what}).code == 0);
  }
}

TEST_CASE("a misspelt layout of a stock is told at its line, with the nearest") {
  const Folder folder("stock");
  REQUIRE(program({"begin", folder.path.string()}).code == 0);
  fs::create_directories(folder.path / "kit/layouts/stock");
  std::string stock = dunnage::bytes_of(std::string(SHARE_DIR) + "/layouts/stock/a4-8up.toml");
  const std::size_t at = stock.find("layout = \"") + 10;
  stock.replace(at, stock.find('"', at) - at, "case-lable");
  folder.file("kit/layouts/stock/own.toml", stock);
  const auto ran = program({"label", (folder.path / "kit").string(), "--stock", "own"});
  CHECK(ran.code == 1);
  CHECK(ran.err.find("own.toml:") != std::string::npos);
  CHECK(ran.err.find("there is no layout \"case-lable\"") != std::string::npos);
  CHECK(ran.err.find("did you mean \"case-label\"?") != std::string::npos);
}

TEST_CASE("a file of the program's own that cannot be read or is damaged ends with 3, and is named") {
  const Folder folder("own");
  fs::create_directories(folder.path / "bin");
  fs::create_directories(folder.path / "share");
  fs::copy_file(PROGRAM, folder.path / "bin/dunnage");
  const std::string ours = (folder.path / "share/dunnage").string();
  const std::vector<std::string> commands = {
      "print " + example("indoor-afternoon.toml") + " --lang es --out " + (folder.path / "out").string(),
      "label " + example("kit") + " --lang es --stock a4-8up --out " + (folder.path / "l.pdf").string()};
  for (const std::string file : {"layouts/words/en.toml", "layouts/words/es.toml", "layouts/cover.toml",
                                 "layouts/stock/a4-8up.toml", "layouts/case-label.toml", "fonts/faces.toml"})
    for (const char* harm : {"rm X", "rm X; mkdir X", "printf 'x = [' > X", "printf 'nothing = 1\\n' > X",
                             "rm X; ln -s X X", "rm X; ln -s /dev/zero X", "rm X; mkfifo X", "truncate -s 8G X"}) {
      const std::string path = ours + "/" + file;
      std::string command = "rm -rf " + ours + " && cp -rL " SHARE_DIR " " + ours + "; ";
      for (const char* c = harm; *c; ++c) command += *c == 'X' ? path : std::string(1, *c);
      REQUIRE(shell(command + " 2>&1").status == 0);
      int failed = 0;
      for (const std::string& rest : commands) {
        const auto said = shell((folder.path / "bin/dunnage").string() + " " + rest + " 2>&1");
        INFO(file << " (" << harm << "): " << rest << ": " << said.out);
        CHECK((said.status == 3 || said.status == 0 || said.status == 2 ||
               (said.status == 1 && std::string(harm) == "rm X")));
        failed += said.status == 3 || said.status == 1;
        if (said.status == 3) CHECK(said.out.find("error: ") != std::string::npos);
      }
      INFO(file << " (" << harm << ")");
      CHECK(failed >= 1);
    }
}

TEST_CASE("an output in whose place a huge file or a pipe stands is refused at once") {
  const Folder folder("huge");
  REQUIRE(shell("truncate -s 8G " + (folder.path / "l.pdf").string() + " && mkfifo " + (folder.path / "p.pdf").string())
              .status == 0);
  const auto label = [&](const char* name) {
    return shell("bash -c 'ulimit -v 1000000; exec timeout 20 " PROGRAM " label " + example("kit") + " BAG-1 --out " +
                 (folder.path / name).string() + "' 2>&1");
  };
  CHECK(label("l.pdf").status == 1);
  CHECK(label("l.pdf").out.find("was not printed by this program") != std::string::npos);
  CHECK(label("p.pdf").status == 3);
}

TEST_CASE("however little memory there is, a run ends in its work or a sentence") {
  int sentences = 0;
  for (int megabytes = 10; megabytes <= 200; megabytes += megabytes < 80 ? 2 : 10) {
    const auto said = shell("bash -c 'ulimit -v " + std::to_string(megabytes * 1024) + "; exec \"" PROGRAM "\" check " +
                            example("indoor-afternoon.toml") + "' 2>&1");
    INFO(megabytes << " MB, status " << said.status << ": " << said.out);
    CHECK((said.status == 0 || said.status == 2 || said.status == 3 || said.status == 127));  // 127: the loader's own
    sentences += said.status == 3;
  }
  CHECK(sentences > 0);
}
