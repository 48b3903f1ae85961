// SPDX-License-Identifier: MIT
// Files that are not there, are something else, or are no TOML: told, never a crash, never taken for empty.
#include <unistd.h>

#include <catch2/catch.hpp>
#include <fstream>

#include "telling.h"

using namespace dunnage;
namespace fs = std::filesystem;

namespace {

/// A folder of its own, gone at the end.
struct TempFolder {
  fs::path path = fs::temp_directory_path() / ("dunnage-read-" + std::to_string(::getpid()));
  TempFolder() {
    fs::remove_all(path);
    fs::create_directories(path);
  }
  ~TempFolder() { fs::remove_all(path); }
  void write(const std::string& name, const std::string& text) const {
    fs::create_directories((path / name).parent_path());
    std::ofstream(path / name, std::ios::binary) << text;
  }
};

/// What is told of a show on disk, with the folder's own name taken out.
std::string told_on_disk(const TempFolder& folder, const std::string& show_name) {
  Sources sources;
  Diagnostics diagnostics;
  const fs::path path = folder.path / show_name;
  if (const auto show = read_show(path, sources, diagnostics))
    read_kit(kit_folder_of(*show, path), sources, diagnostics, show->kit_folder.place);
  std::string text = render(diagnostics, sources);
  const std::string prefix = folder.path.string() + "/";
  for (std::size_t at = 0; (at = text.find(prefix)) != std::string::npos;) text.erase(at, prefix.size());
  return text;
}

}  // namespace

TEST_CASE("A show finds its kit beside itself, and reads the folder's files in order of name") {
  TempFolder folder;
  folder.write("kit/b.toml", "[[item]]\ncode = \"B\"\nname = \"b\"\n");
  folder.write("kit/a.toml", small_kit);
  folder.write("kit/notes.txt", "not read");
  folder.write("kit/deeper/c.toml", "not = read\n");
  folder.write("shows/one.toml", "kit = \"../kit\"\n[show]\ntitle = \"Evening\"\ndate = 2027-06-19\n");
  Sources sources;
  Diagnostics diagnostics;
  const auto show = read_show(folder.path / "shows/one.toml", sources, diagnostics);
  REQUIRE(show);
  CHECK(kit_folder_of(*show, folder.path / "shows/one.toml") == folder.path / "kit");
  const auto kit = read_kit(folder.path / "kit", sources, diagnostics);
  REQUIRE(kit);
  CHECK(render(diagnostics, sources).empty());
  REQUIRE(kit->items.size() == 2);
  CHECK(kit->items[0].code.value == "MIC");
  CHECK(kit->items[1].code.value == "B");
}

TEST_CASE("A missing file, a folder where a file was named, a file where a folder was named") {
  TempFolder folder;
  CHECK(told_on_disk(folder, "show.toml") ==
        "show.toml: error: there is no file \"show.toml\"\n"
        "hint: check the name and the folder it is in\n"
        "1 error\n");
  fs::create_directories(folder.path / "show.toml");
  CHECK(told_on_disk(folder, "show.toml") ==
        "show.toml: error: \"show.toml\" is a folder, not a file\n"
        "hint: name a file inside it\n"
        "1 error\n");
  folder.write("one.toml", small_show);
  CHECK(told_on_disk(folder, "one.toml") ==
        "one.toml:1:7: error: there is no folder \"kit\"\n"
        "  kit = \"kit\"\n"
        "        ^~~~~\n"
        "hint: check the name; a kit is a folder of .toml files\n"
        "1 error\n");
  folder.write("kit", "a file");
  CHECK(told_on_disk(folder, "one.toml") ==
        "one.toml:1:7: error: \"kit\" is a file, not a folder\n"
        "  kit = \"kit\"\n"
        "        ^~~~~\n"
        "hint: a kit is a folder of .toml files: name the folder\n"
        "1 error\n");
}

TEST_CASE("A kit folder without files is empty") {
  TempFolder folder;
  folder.write("one.toml", small_show);
  fs::create_directories(folder.path / "kit");
  CHECK(told_on_disk(folder, "one.toml") ==
        "one.toml:1:7: error: the kit is empty: \"kit\" holds no .toml file\n"
        "  kit = \"kit\"\n"
        "        ^~~~~\n"
        "hint: write its cases into a file such as cases.toml in that folder\n"
        "1 error\n");
}

TEST_CASE("A device is no file, and a file beyond the cap is not read") {
  Sources sources;
  Diagnostics diagnostics;
  CHECK_FALSE(load_text("/dev/null", sources, diagnostics));
  TempFolder folder;
  folder.write("big.toml", "");
  fs::resize_file(folder.path / "big.toml", 65u * 1024 * 1024);
  CHECK_FALSE(load_text(folder.path / "big.toml", sources, diagnostics));
  CHECK(diagnostics.all()[0].cause == "\"/dev/null\" is not a plain file");
  CHECK(diagnostics.all()[1].cause.ends_with("is larger than 64 MiB"));
}

TEST_CASE("Broken UTF-8 is told at its place") {
  CHECK(told_of_kit({small_kit + "looks = \"É bl\xE4"
                                 "ck\"\n"}) ==
        "k1.toml:12:14: error: the text is not UTF-8 from here\n"
        "  looks = \"É bl?ck\"\n"
        "               ^\n"
        "hint: save the file as UTF-8 in your editor\n"
        "1 error\n");
}

TEST_CASE("A dotted key of 100 KB is refused before it is parsed; dots in texts and comments are not keys") {
  std::string key = "a";
  for (int i = 0; i < 50000; ++i) key += ".a";
  const std::string text = told_of_kit({small_kit + key + " = 1\n"});
  CHECK(text.starts_with("k1.toml:12:128: error: a key has more than 64 parts between dots\n  ..."));
  CHECK(text.ends_with("^\nhint: a dotted name has two or three parts, such as names.es\n1 error\n"));
  const std::string dots(200, '.');
  CHECK(told_of_kit({small_kit + "looks = \"\"\"a\\\"\\\n" + dots + "\"\"\" # " + dots + "\n"}).empty());
  CHECK(told_of_kit({small_kit + "looks = '" + dots + "'\n"}).empty());
}

TEST_CASE("Brackets nested without end are refused") {
  CHECK(told_of_kit({small_kit + "looks = " + std::string(100000, '[') + "\n"})
            .find("error: there are too many brackets inside brackets\n") != std::string::npos);
}

TEST_CASE("TOML syntax is told in plain words, the first mistake of each file, and meaning besides") {
  CHECK(told_of_kit({small_kit + "weighed = 27 lb\n", "[[item]\n",
                     "[[case]]\nnamme = \"x\"\ncode = \"TUB\"\nform = \"tub\"\nname = \"Tub\"\n"}) ==
        "k1.toml:12:14: error: there is more on the line after the value\n"
        "  weighed = 27 lb\n"
        "               ^\n"
        "hint: put words and quantities in double quotes: name = \"Front trunk\"\n"
        "k2.toml:1:8: error: the section's name is broken here\n"
        "  [[item]\n"
        "         ^\n"
        "hint: write [show] for what there is one of, [[case]] for what there are several of\n"
        "k3.toml:2:1: error: \"namme\" is not a key of [[case]]\n"
        "  namme = \"x\"\n"
        "  ^~~~~\n"
        "hint: did you mean \"name\"?\n"
        "3 errors\n");
  CHECK(told_of_kit({small_kit + "weighed =\n"}).starts_with("k1.toml:12:10: error: the key has no value\n"));
  CHECK(told_of_kit({small_kit + "name = \"x\"\n"})
            .starts_with("k1.toml:12:8: error: this key is already given above, in the same section\n"));
  CHECK(told_of_kit({small_kit + "looks = BLACK\n"}).starts_with("k1.toml:12:9: error: this is not a value\n"));
  CHECK(told_of_kit({small_kit + "inspect_by = 2027-02-30\n"})
            .starts_with("k1.toml:12:24: error: this is not a day of the calendar\n"));
  CHECK(told_of_kit({small_kit + "needs = [{ code = \"MIC\", }]\n"})
            .starts_with("k1.toml:12:26: error: there is a comma with nothing after it\n"));
}
