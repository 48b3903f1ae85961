// SPDX-License-Identifier: MIT
// The house keeps its floors: which folder may include which, no circles, no two rooms with one stem, nothing from
// outside but where it belongs, and nothing that has grown too long to read.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <regex>
#include <set>
#include <sstream>

namespace fs = std::filesystem;

namespace {

using Names = std::set<std::string>;

/// The table of DEVELOPERS.md. Every folder may include itself.
const std::map<std::string, Names> floors = {
    {"base", {}},
    {"symbol", {"base"}},
    {"font", {"base"}},
    {"formula", {"base"}},
    {"model", {"base"}},
    {"read", {"base", "model"}},
    {"write", {"base", "model"}},
    {"compare", {"base", "model"}},
    {"document", {"base", "model"}},
    {"plan", {"base", "model", "formula"}},
    {"check", {"base", "model", "formula"}},
    {"load", {"base", "model", "formula"}},
    {"reckon", {"base", "model", "formula"}},
    {"layout", {"base", "model", "font", "symbol"}},
    {"export", {"base", "model", "font", "symbol"}},
    {"run",
     {"base", "model", "formula", "font", "symbol", "read", "write", "compare", "document", "plan", "load", "check",
      "reckon", "layout", "export"}},
    {"main", {"base", "run"}},
};

/// Libraries from outside, and the one folder that may include each.
const std::map<std::string, std::string> outside = {
    {"toml++", "read"},   {"hpdf", "export"}, {"CLI", "run"},         {"qrcodegen", "symbol"},
    {"ft2build", "font"}, {"coin", "plan"},   {"nlohmann", "export"}, {"csv", "read"},
};

struct Room {
  std::string folder, stem, path;
  std::vector<std::string> includes;  ///< as written
  int lines = 0;
};

std::vector<Room> rooms() {
  static const std::regex include("^\\s*#include\\s+[<\"]([^>\"]+)[>\"]");
  std::vector<Room> out;
  for (const auto& entry : fs::recursive_directory_iterator(fs::path(PROJECT_DIR) / "src")) {
    const fs::path& path = entry.path();
    if (path.extension() != ".h" && path.extension() != ".cpp") continue;
    const fs::path relative = fs::relative(path, fs::path(PROJECT_DIR) / "src");
    Room room;
    room.path = relative.string();
    room.stem = relative.stem().string();
    room.folder = relative.has_parent_path() ? relative.begin()->string() : "main";
    std::ifstream in(path);
    std::string line;
    std::smatch match;
    while (std::getline(in, line)) {
      ++room.lines;
      if (std::regex_search(line, match, include)) room.includes.push_back(match[1]);
    }
    out.push_back(room);
  }
  std::sort(out.begin(), out.end(), [](const Room& a, const Room& b) { return a.path < b.path; });
  return out;
}

std::string first_part(const std::string& include) { return include.substr(0, include.find_first_of("/.")); }

}  // namespace

TEST_CASE("a folder includes only folders of lower floors") {
  for (const Room& room : rooms()) {
    INFO(room.path);
    REQUIRE(floors.count(room.folder) == 1);
    for (const std::string& include : room.includes) {
      const std::string folder = include.substr(0, include.find('/'));
      if (folder == include || floors.count(folder) == 0 || folder == room.folder) continue;
      INFO("includes " << include);
      CHECK(floors.at(room.folder).count(folder) == 1);
    }
  }
}

TEST_CASE("a library from outside is included in its one folder only") {
  for (const Room& room : rooms())
    for (const std::string& include : room.includes) {
      const auto at = outside.find(first_part(include));
      if (at == outside.end()) continue;
      INFO(room.path << " includes " << include);
      CHECK(room.folder == at->second);
    }
}

TEST_CASE("no rooms include each other in a circle") {
  std::map<std::string, Names> uses;  // a source and its header are one room
  for (const Room& room : rooms()) {
    const std::string self = room.folder + "/" + room.stem;
    for (const std::string& include : room.includes) {
      const std::string other = include.substr(0, include.rfind('.'));
      if (floors.count(include.substr(0, include.find('/'))) == 1 && other != self) uses[self].insert(other);
    }
  }
  std::map<std::string, int> state;  // 1: on the way, 2: done
  std::function<void(const std::string&)> visit = [&](const std::string& room) {
    if (state[room] == 2) return;
    INFO("a circle through " << room);
    REQUIRE(state[room] != 1);
    state[room] = 1;
    for (const std::string& other : uses[room]) visit(other);
    state[room] = 2;
  };
  for (const auto& entry : std::map<std::string, Names>(uses)) visit(entry.first);
}

TEST_CASE("no two rooms have one stem") {
  std::map<std::string, std::string> seen;
  for (const Room& room : rooms()) {
    const std::string place = room.folder + "/" + room.stem;
    const auto [at, fresh] = seen.emplace(room.stem, place);
    INFO(place << " and " << at->second);
    CHECK((fresh || at->second == place));
  }
}

/// Two types of one name in one namespace break each other's vectors, and no compiler and no linker says so.
TEST_CASE("no two types have one name") {
  static const std::regex type("^(struct|class) ([A-Za-z_0-9]+)( final)?( : [^{]*)? \\{");
  std::map<std::string, std::string> seen;
  for (const auto& entry : fs::recursive_directory_iterator(fs::path(PROJECT_DIR) / "src")) {
    if (entry.path().extension() != ".h" && entry.path().extension() != ".cpp") continue;
    std::ifstream in(entry.path());
    std::vector<std::string> spaces;
    std::smatch found;
    for (std::string line; std::getline(in, line);) {
      if (line.rfind("namespace ", 0) == 0 && line.back() == '{') spaces.push_back(line);
      if (line.rfind("}  // namespace", 0) == 0 && !spaces.empty()) spaces.pop_back();
      const bool own = std::find(spaces.begin(), spaces.end(), "namespace {") != spaces.end();
      if (own || !std::regex_search(line, found, type)) continue;
      std::string name = found[2];
      for (const std::string& space : spaces) name = space + " " + name;
      const auto [at, fresh] = seen.emplace(name, entry.path().string());
      INFO(name << " in " << entry.path() << " and " << at->second);
      CHECK(fresh);
    }
  }
  CHECK(seen.size() > 100);
}

TEST_CASE("every file says its licence and none is too long to read") {
  for (const Room& room : rooms()) {
    INFO(room.path);
    std::ifstream in(fs::path(PROJECT_DIR) / "src" / room.path);
    std::string first;
    std::getline(in, first);
    CHECK(first == "// SPDX-License-Identifier: MIT");
    CHECK(room.lines <= 400);
  }
}

TEST_CASE("DEVELOPERS.md draws the same table of floors") {
  std::ifstream in(fs::path(PROJECT_DIR) / "DEVELOPERS.md");
  std::stringstream text;
  text << in.rdbuf();
  const std::string page = text.str();
  for (const auto& [folder, may] : floors) {
    if (folder == "run" || folder == "main") continue;
    std::string row = "| " + folder + " | ";
    std::string list;
    for (const std::string& other : may) list += (list.empty() ? "" : ", ") + other;
    INFO(row + list);
    CHECK(page.find(row + (list.empty() ? "nothing" : list) + " |") != std::string::npos);
  }
}
