// SPDX-License-Identifier: MIT
// What README.md shows is what the program does: its first kit and show print, its commands exist, and every line
// that it shows of an output is said by the program, in that order. Line numbers are not held against each other, so
// that an example may grow.
#include <algorithm>
#include <catch2/catch.hpp>
#include <regex>
#include <set>
#include <sstream>

#include "../shell.h"

namespace fs = std::filesystem;
using dunnage::Folder;
using dunnage::Said;
using dunnage::shell;

namespace {

std::string readme() {
  std::ifstream in(fs::path(PROJECT_DIR) / "README.md");
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

using Lines = std::vector<std::string>;

Lines lines_of(const std::string& text) {
  Lines lines;
  std::stringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

/// What stands between two fences of backquotes.
std::vector<Lines> blocks() {
  std::vector<Lines> out;
  bool inside = false;
  for (const std::string& line : lines_of(readme())) {
    if (line.rfind("```", 0) == 0) {
      inside = !inside;
      if (inside) out.emplace_back();
    } else if (inside) {
      out.back().push_back(line);
    }
  }
  return out;
}

/// The block that begins with the comment `# name`.
std::string block_named(const std::string& name) {
  std::string text;
  for (const Lines& block : blocks())
    if (!block.empty() && block.front() == "# " + name)
      for (const std::string& line : block) text += line + "\n";
  INFO("a block that begins with \"# " << name << "\"");
  REQUIRE(!text.empty());
  return text;
}

/// A folder with the files that README.md shows, and the examples beside them, as a reader would have it.
struct Desk : Folder {
  Desk() : Folder("readme") {
    fs::create_directory(path / "kit");
    for (const std::string name : {"kit/kit.toml", "show.toml"}) file(name, block_named(name));
    for (const std::string name : {"scale.csv", "ana.txt", "home.txt"}) {
      const std::string block = block_named(name);
      file(name, block.substr(block.find('\n') + 1));  // its name is no part of it
    }
    fs::create_directory_symlink(fs::path(PROJECT_DIR) / "examples", path / "examples");
  }
  Said say(const std::string& command) const {
    const std::string program = fs::path(PROGRAM).parent_path().string();
    return shell("cd '" + path.string() + "' && PATH='" + program + "':$PATH && " + command + " 2>&1");
  }
};

std::string without_numbers(const std::string& line) {
  return std::regex_replace(line, std::regex("(\\.toml):[0-9]+:[0-9]+"), "$1");
}

std::set<std::string> firsts(const std::string& text, const std::regex& pattern) {
  std::set<std::string> out;
  for (std::sregex_iterator at(text.begin(), text.end(), pattern), end; at != end; ++at) out.insert((*at)[1]);
  return out;
}

}  // namespace

TEST_CASE("the first kit and show of README.md are short and print a pull sheet") {
  const Desk desk;
  CHECK(lines_of(block_named("kit/kit.toml") + block_named("show.toml")).size() < 30);
  const Said said = desk.say("dunnage print show.toml --out paper");
  INFO(said.out);
  CHECK(said.status == 0);
  CHECK(fs::exists(desk.path / "paper" / "pull-sheet.pdf"));
}

TEST_CASE("README.md and the program name the same commands") {
  const std::set<std::string> told = firsts(readme(), std::regex("\\| `dunnage ([a-z]+)"));
  std::string help = shell(std::string("'") + PROGRAM + "' --help 2>&1").out;
  const std::size_t list = help.find("Subcommands:");
  REQUIRE(list != std::string::npos);
  help.erase(0, list);
  CHECK(told == firsts(help, std::regex("\n  ([a-z]+) ")));
}

TEST_CASE("every output that README.md shows is what the program says") {
  const Desk desk;
  const std::string prompt = "$ ";
  for (const Lines& block : blocks()) {
    if (block.empty() || block.front().rfind(prompt, 0) != 0) continue;
    Lines lines;
    auto from = lines.begin();
    std::string told;
    for (const std::string& shown : block) {
      if (shown.rfind(prompt, 0) == 0) {
        const Said said = desk.say(shown.substr(prompt.size()));
        told = shown + "\n" + said.out;
        lines = lines_of(said.out);
        from = lines.begin();
        continue;
      }
      INFO(told << "\nREADME.md shows: " << shown);
      const auto at = std::find_if(
          from, lines.end(), [&](const std::string& line) { return without_numbers(line) == without_numbers(shown); });
      REQUIRE(at != lines.end());
      from = at + 1;
    }
  }
}
