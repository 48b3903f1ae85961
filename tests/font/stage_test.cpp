// SPDX-License-Identifier: MIT
// Staging fails in words that name the package to install, and leaves no list that points at missing files.
#include <catch2/catch.hpp>
#include <filesystem>

#include "../shell.h"

using namespace dunnage;

TEST_CASE("fonts are staged with their list, and a missing one is named with its package") {
  const Folder folder("stage");
  std::filesystem::copy(PROJECT_DIR "/fonts/stage.sh", folder.path);
  const std::string command =
      "sh " + (folder.path / "stage.sh").string() + " " + (folder.path / "out").string() + " 2>&1";

  folder.file("faces.toml", "[[face]]\nrole = \"text\"\nfile = \"a.ttf\"\nfrom = \"" + folder.file("b.ttf", "x") +
                                "\"\npackage = \"fonts-b\"\n");
  CHECK(shell(command).status == 0);
  CHECK(std::filesystem::exists(folder.path / "out/a.ttf"));
  CHECK(std::filesystem::exists(folder.path / "out/faces.toml"));

  folder.file("faces.toml", "[[face]]\nfrom = \"/nowhere/a.ttf\"\nfile = \"a.ttf\"\npackage = \"fonts-a\"\n");
  const Said said = shell(command);
  CHECK(said.status == 1);
  CHECK(said.out == "stage.sh: /nowhere/a.ttf is missing: install the Debian package fonts-a\n");
  CHECK_FALSE(std::filesystem::exists(folder.path / "out/faces.toml"));
}
