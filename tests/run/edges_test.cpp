// SPDX-License-Identifier: MIT
// What nobody means to type, and what a disk or a machine gives now and then: one sentence and the right exit code.
#include <catch2/catch.hpp>

#include "../shell.h"
#include "program.h"

using dunnage::example;
using dunnage::Folder;
using dunnage::program;
using dunnage::shell;

TEST_CASE("a name that is no UTF-8 is told, in an argument and in a kit") {
  const Folder folder("names");
  const std::string show = folder.file(
      "sh\xFF"
      "ow.toml",
      dunnage::bytes_of(example("indoor-afternoon.toml")));
  for (const char* more : {"", "--json"}) {
    const auto ran = more[0] ? program({"check", show, more}) : program({"check", show});
    CHECK(ran.code == 1);
    CHECK(ran.err.find("sh\uFFFDow.toml\" is not UTF-8; if it names a file, give the file another name") !=
          std::string::npos);
  }
  folder.file(
      "cas\xFF"
      "es.toml",
      "[house]\nname = \"H\"\n");
  const auto ran = program({"list", "cases", folder.path.string()});
  CHECK(ran.code == 1);
  CHECK(ran.err.find("is not UTF-8") != std::string::npos);
}

TEST_CASE("a disk that fails while it is read is no crash") {
  const auto ran = program({"check", "/proc/self/mem"});  // reading its first byte is an error of input and output
  CHECK(ran.code == 1);
  CHECK(ran.err.find("cannot be read: Input/output error") != std::string::npos);
}

TEST_CASE("a file that may not grow ends as a full disk does") {
  const Folder folder("grow");
  const auto said =
      shell("bash -c 'ulimit -f 1; export " + std::string(dunnage::uncounted) + "; exec \"" PROGRAM "\" print " +
            example("indoor-afternoon.toml") + " --out " + (folder.path / "out").string() + "' 2>&1");
  CHECK(said.status == 3);
  CHECK(said.out.find("File too large") != std::string::npos);
}

TEST_CASE("a quantity beyond all use is refused") {
  for (const char* value : {"value=1e308 t", "value=-1e308 t", "value=1e300 lb"}) {
    const auto ran = program({"reckon", "unit", value, "to=oz"});
    CHECK(ran.code == 1);
    CHECK(ran.err.find("is too much to be said in oz") != std::string::npos);
  }
}

TEST_CASE("SHOW may follow a list, and a number may begin with a zero") {
  const Folder folder("order");
  const std::string out = (folder.path / "out").string(), labels = (folder.path / "l.pdf").string();
  CHECK(program({"print", "--only", "cover", "--lang", "en", example("indoor-afternoon.toml"), "--out", out}).code ==
        0);
  CHECK(program({"label", "--lang", "en", example("kit"), "BAG-1", "--copies", "010", "--out", labels})
            .out.find("10 labels") != std::string::npos);
}

TEST_CASE("labels are not shifted off their page") {
  const Folder folder("shift");
  const auto ran = program({"label", example("kit"), "BAG-1", "--stock", "50x25-roll", "--offset", "20 mm, 0 mm",
                            "--out", (folder.path / "l.pdf").string()});
  CHECK(ran.code == 1);
  CHECK(ran.err.find("part of a label would leave the page") != std::string::npos);
}

TEST_CASE("without its own files the program says where they should be, and ends with 3") {
  const Folder folder("alone");
  std::filesystem::create_directories(folder.path / "bin");
  std::filesystem::copy_file(PROGRAM, folder.path / "bin" / "dunnage");
  for (const std::string& rest :
       {"print " + example("indoor-afternoon.toml"), "label " + example("kit"), std::string("list stocks")}) {
    const auto said = shell("cd " + folder.path.string() + " && bin/dunnage " + rest + " 2>&1");
    CHECK(said.status == 3);
    CHECK(said.out.find("error: ") != std::string::npos);
  }
}

TEST_CASE("a second run into the folder of one that begins, imports or weighs is refused") {
  const Folder folder("held");
  const std::string kit = (folder.path / "kit").string(),
                    sheet = folder.file("gear.csv", "Code,Name,Form\nBOX,Box,box\n");
  std::filesystem::create_directories(kit);
  const auto held = [&](const std::string& command) {
    return shell("flock " + kit + " " PROGRAM " " + command + " 2>&1");
  };
  for (const std::string& command : {"begin " + kit, "import " + sheet + " --kit " + kit}) {
    const auto said = held(command);
    CHECK(said.status == 3);
    CHECK(said.out.find("another run is writing into " + kit) != std::string::npos);
  }
  CHECK(program({"import", sheet, "--kit", kit}).code != 3);
  const auto weighing =
      held("import " + folder.file("scale.csv", "Code,Weight (kg)\nBOX,3\n") + " --weights --kit " + kit);
  CHECK(weighing.status == 3);
  CHECK(weighing.out.find("another run is writing into " + kit) != std::string::npos);
}
