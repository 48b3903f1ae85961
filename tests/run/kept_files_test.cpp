// SPDX-License-Identifier: MIT
// What stands in a folder, of ours or of somebody else's, is what it was or what the run says that it has become.
#include <sys/stat.h>
#include <sys/xattr.h>
#include <unistd.h>

#include <catch2/catch.hpp>

#include "../shell.h"
#include "program.h"

using dunnage::all_of;
using dunnage::bytes_of;
using dunnage::example;
using dunnage::Folder;
using dunnage::Said;
using dunnage::shell;
namespace fs = std::filesystem;

TEST_CASE("a beginning that was cut short is gone on with, but not over what somebody changed") {
  const Folder folder("unfinished");
  const std::string begun = (folder.path / "new").string(), items = begun + "/kit/items.toml";
  const auto begin = [&](const std::string& where) { return dunnage::program({"begin", where}); };
  REQUIRE(begin(begun).code == 0);
  const auto whole = all_of(begun);
  CHECK(begin(begun).code == 1);
  fs::remove(begun + "/show.toml");
  fs::remove(begun + "/kit/cases.toml");
  CHECK(begin(begun + "/").code == 0);
  CHECK(all_of(begun) == whole);
  fs::remove(begun + "/show.toml");
  std::ofstream(items, std::ios::app) << "# mine\n";
  const std::string mine = bytes_of(items);
  CHECK(begin(begun).code == 1);
  CHECK(bytes_of(items) == mine);
  CHECK_FALSE(fs::exists(begun + "/show.toml"));
}

TEST_CASE("what a run that was cut short left is our own folder; nothing else is taken away, whatever its name") {
  const Folder folder("left");
  const fs::path kit = folder.path / "kit";
  fs::create_directories(kit);
  std::ofstream(kit / "house.toml") << "[house]\nname = \"edited since\"\nphone = \"1\"\n";
  fs::create_hard_link(kit / "house.toml", kit / "house.toml.dunnage-new");
  for (const char* name : {"cover.pdf.dunnage-part", ".dunnage-lock"}) std::ofstream(kit / name) << "mine";
  const auto before = all_of(kit);
  const auto import = [&](const std::string& sheet) {
    return dunnage::program({"import", sheet, "--kit", kit.string()});
  };
  CHECK(import("/nowhere/none.csv").code == 1);
  CHECK(all_of(kit) == before);
  fs::create_directory(kit / ".dunnage-unfinished");
  std::ofstream(kit / ".dunnage-unfinished/1") << "half";
  const auto imported = import(example("gear.csv"));
  CHECK(imported.code == 0);
  CHECK(imported.err.find(".dunnage-unfinished, left by a run that was cut short\n") != std::string::npos);
  auto after = all_of(kit);
  CHECK(after.erase("gear.toml") == 1);
  CHECK(after == before);
  // A folder of that name with something of somebody else's in it is not ours to empty.
  fs::create_directory(kit / ".dunnage-unfinished");
  std::ofstream(kit / ".dunnage-unfinished/plan.txt") << "mine";
  const auto other = dunnage::program({"label", kit.string(), "--out", (kit / "l.pdf").string()});
  CHECK(other.code == 3);
  CHECK(other.err.find(".dunnage-unfinished is in the way") != std::string::npos);
  CHECK(bytes_of(kit / ".dunnage-unfinished/plan.txt") == "mine");
}

TEST_CASE("a file that a person names stays, and the one folder that is ours is refused") {
  const Folder folder("named");
  const std::string at = folder.path.string() + "/";
  const auto label = [&](const std::string& to) {
    return dunnage::program({"label", example("kit"), "BAG-1", "--out", at + to});
  };
  for (const char* name : {".dunnage-lock", "y.dunnage-part", "1", "l.pdf.dunnage-new"}) {
    CHECK(label(name).code == 0);
    CHECK(label("l.pdf").code == 0);
    CHECK((bytes_of(at + name) == bytes_of(at + "l.pdf")));  // no bytes of a PDF on the screen
  }
  CHECK(all_of(folder.path).size() == 5);
  for (const char* name : {".dunnage-unfinished", ".dunnage-unfinished/l.pdf"}) {
    const auto ran = label(name);
    CHECK(ran.code == 1);
    CHECK(ran.err.find("is where this program keeps unfinished files; choose another name\n") != std::string::npos);
  }
  CHECK(all_of(folder.path).size() == 5);
}

TEST_CASE("a reader that leaves early stops no work") {
  const Folder folder("pipe");
  const std::string at = folder.path.string() + "/", kit = at + "kit";
  const auto into_nothing = [&](const std::string& command) {
    shell("{ sleep 0.2; " PROGRAM " " + command + " 2>&1; echo $? >" + at + "code; } | true");
    return bytes_of(at + "code");
  };
  CHECK(into_nothing("import " + example("gear.csv") + " --kit " + kit) == "0\n");
  CHECK(all_of(kit).size() == 2);
  folder.file(
      "scale.csv", "Code,Weight (kg)\n" + [&] {
        std::string rows;
        const std::string cases = dunnage::program({"list", "cases", kit}).out;
        for (std::size_t line = 0; line < cases.size(); line = cases.find('\n', line) + 1)
          rows += cases.substr(line, cases.find(' ', line) - line) + ",9.25\n";
        return rows;
      }());
  CHECK(into_nothing("import " + at + "scale.csv --weights --kit " + kit) == "0\n");
  CHECK(bytes_of(kit + "/gear.toml").find("9.25 kg") != std::string::npos);
  CHECK(all_of(kit).size() == 2);
  CHECK(into_nothing("print " + example("outdoor-evening.toml") + " --out " + at + "out") == "2\n");
  CHECK(all_of(at + "out").size() > 10);
  CHECK(into_nothing("list cases " + kit) == "0\n");
}

TEST_CASE("masses are written into the very file: owner, rights, attributes and names stay, a link stays a link") {
  const Folder folder("very-file");
  const std::string kit = (folder.path / "kit").string(), head = "[house]\nname = \"h\"\nphone = \"1\"\n";
  fs::create_directories(kit);
  const auto bag = [](const std::string& code) {
    return "[[case]]\ncode = \"" + code + "\"\nname = \"b\"\nform = \"bag\"\nweighed = \"27.125 kg\"\n";
  };
  folder.file("kit/plain.toml", head + bag("PLAIN"));
  folder.file("kit/twice.toml", bag("TWICE"));
  folder.file("elsewhere", bag("LINK"));
  fs::create_hard_link(kit + "/twice.toml", folder.path / "second");
  fs::create_symlink(folder.path / "elsewhere", kit + "/link.toml");
  const bool root = ::geteuid() == 0;
  REQUIRE(::chmod((kit + "/plain.toml").c_str(), 0640) == 0);
  if (root) REQUIRE(::chown((kit + "/plain.toml").c_str(), 1234, 2345) == 0);
  const bool attributes = ::setxattr((kit + "/plain.toml").c_str(), "user.note", "mine", 4, 0) == 0;
  const std::string scale = folder.file("scale.csv", "Code,Weight (kg)\nPLAIN,3\nTWICE,3\nLINK,3\n");
  const auto ran = dunnage::program({"import", scale, "--weights", "--kit", kit});
  CHECK(ran.code == 0);
  CHECK(ran.out.find("3 masses written") != std::string::npos);
  const auto weighed = [](std::string text) { return text.replace(text.find("27.125 kg"), 9, "3 kg"); };
  CHECK(bytes_of(kit + "/plain.toml") == weighed(head + bag("PLAIN")));
  CHECK(bytes_of(folder.path / "second") == weighed(bag("TWICE")));
  CHECK(bytes_of(folder.path / "elsewhere") == weighed(bag("LINK")));
  CHECK(fs::equivalent(kit + "/twice.toml", folder.path / "second"));
  CHECK(fs::is_symlink(kit + "/link.toml"));
  struct stat now {};
  REQUIRE(::stat((kit + "/plain.toml").c_str(), &now) == 0);
  CHECK((now.st_mode & 07777) == 0640);
  if (root) CHECK((now.st_uid == 1234 && now.st_gid == 2345));
  char note[8] = {};
  if (attributes)
    CHECK(::getxattr((kit + "/plain.toml").c_str(), "user.note", note, sizeof note) == 4);
  else
    WARN("no attributes on this file system: this part is skipped");
  CHECK(all_of(kit).size() == 3);
}

TEST_CASE("a copy that an unlucky run left beside a file is told, and stays") {
  const Folder folder("copy");
  folder.file("kit.toml",
              "[house]\nname = \"h\"\nphone = \"1\"\n[[case]]\ncode = \"A\"\nname = \"b\"\nform = \"bag\"\n");
  fs::create_hard_link(folder.path / "kit.toml", folder.path / "second");
  folder.file("kit.toml.before", "mine");
  const auto ran = dunnage::program(
      {"import", folder.file("scale.csv", "Code,Weight (kg)\nA,3\n"), "--weights", "--kit", folder.path.string()});
  CHECK(ran.code == 0);
  CHECK(ran.err.find("note: " + (folder.path / "kit.toml.before").string() +
                     " may be left by a run that was cut short") != std::string::npos);
  CHECK(bytes_of(folder.path / "kit.toml.before") == "mine");
  CHECK(bytes_of(folder.path / "second").find("weighed = \"3 kg\"") != std::string::npos);
  CHECK(all_of(folder.path).size() == 4);
}

TEST_CASE("a kit of which a file or the folder cannot be read is not taken for one without it") {
  const Folder folder("unread");
  const std::string kit = (folder.path / "kit").string();
  const std::string sheet = folder.file("gear.csv", "Code,Name,Form\nBOX,Box,box\n");
  const auto import = [&] { return dunnage::program({"import", sheet, "--kit", kit}); };
  REQUIRE(import().code == 0);
  fs::rename(kit + "/gear.toml", kit + "/cases.toml");
  fs::rename(kit + "/house.toml", folder.path / "house.toml");
  fs::create_symlink("/nowhere/house.toml", kit + "/house.toml");
  const auto before = all_of(kit);
  const auto dangling = import();
  CHECK(dangling.code == 1);
  CHECK(dangling.err.find("there is no file \"" + kit + "/house.toml\"") != std::string::npos);
  CHECK(dangling.err.find("The kit must be in order before anything is added to it.\n") != std::string::npos);
  CHECK(all_of(kit) == before);
  fs::remove(kit + "/house.toml");
  fs::rename(folder.path / "house.toml", kit + "/house.toml");
  const std::string bound = ::geteuid() == 0 ? "setpriv --bounding-set=-dac_override,-dac_read_search " : "";
  const auto import_bound = [&] { return shell(bound + PROGRAM " import " + sheet + " --kit " + kit + " 2>&1"); };
  fs::permissions(kit + "/cases.toml", fs::perms::none);
  const Said unread = import_bound();
  CHECK(unread.status == 1);
  CHECK(unread.out.find("cannot be read: Permission denied") != std::string::npos);
  fs::permissions(kit + "/cases.toml", fs::perms::owner_all);
  fs::permissions(kit, fs::perms::owner_exec | fs::perms::owner_write);
  const Said unlisted = import_bound();
  CHECK(unlisted.status == 3);
  CHECK(unlisted.out.find("Permission denied") != std::string::npos);
  fs::permissions(kit, fs::perms::owner_all);
  CHECK(all_of(kit).size() == 2);
  const std::string file = folder.file("kit.toml", "");
  CHECK(dunnage::program({"import", sheet, "--kit", file}).code == 1);
  fs::create_directories(kit + "/layouts/stock");
  fs::permissions(kit + "/layouts/stock", fs::perms::none);
  const Said unseen = shell(bound + PROGRAM " label " + kit + " --out " + kit + "/l.pdf 2>&1");
  CHECK(unseen.status == 1);
  CHECK(unseen.out == "error: the folder " + kit + "/layouts/stock cannot be read: Permission denied\n");
}

TEST_CASE("what is said goes into no file where a stream was closed before the run") {
  const Folder folder("closed");
  const std::string at = folder.path.string() + "/";
  folder.file("kit.toml",
              "[house]\nname = \"h\"\nphone = \"1\"\n[[case]]\ncode = \"A\"\nname = \"b\"\nform = \"bag\"\n");
  fs::create_hard_link(at + "kit.toml", at + "second");
  folder.file("kit.toml.before", "mine");
  folder.file("scale.csv", "Code,Weight (kg)\nA,3\n");
  const std::string weigh = PROGRAM " import " + at + "scale.csv --weights --kit " + folder.path.string();
  CHECK(shell(weigh + " <&- >&- 2>&-").status == 3);
  CHECK(bytes_of(at + "kit.toml").starts_with("[house]\n"));
  CHECK(bytes_of(at + "kit.toml").find("weighed = \"3 kg\"\n") != std::string::npos);
  CHECK(bytes_of(at + "kit.toml").find("note:") == std::string::npos);
  const Said deaf = shell(PROGRAM " label " + folder.path.string() + " --out " + at + "l.pdf 2>&1 >&-");
  CHECK(deaf.status == 3);
  CHECK(deaf.out == "error: the output could not be written\n");
  const std::string silent = bytes_of(at + "l.pdf");
  CHECK(shell(PROGRAM " label " + folder.path.string() + " --out " + at + "l.pdf").status == 0);
  CHECK((bytes_of(at + "l.pdf") == silent));
}
