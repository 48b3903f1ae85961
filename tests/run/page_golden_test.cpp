// SPDX-License-Identifier: MIT
// The first page of each sheet of the indoor example, as a person reads it. When one changes on purpose, read the
// difference and copy the text from the build folder's golden/.
#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <set>
#include <sstream>

#include "../shell.h"
#include "program.h"

using namespace dunnage;
namespace fs = std::filesystem;

namespace {

/// Words in their order, parted by two spaces where there is white between; not the revision, which every layout
/// shapes.
std::string as_read(const std::string& page) {
  std::string out;
  std::istringstream lines(page);
  for (std::string line; std::getline(lines, line);) {
    line.erase(std::remove(line.begin(), line.end(), '\f'), line.end());
    std::string words;
    for (std::size_t at = 0; at < line.size(); ++at) {
      std::size_t end = at;
      while (end < line.size() && line[end] == ' ') ++end;
      if (end > at && !words.empty() && end < line.size()) words += end - at > 1 ? "  " : " ";
      if (end == line.size()) break;
      at = end;
      words += line[at];
    }
    const std::string revision = "revision ";
    if (const auto at = words.find(revision); at != std::string::npos)
      words.replace(at + revision.size(), 8, "........");
    if (!words.empty()) out += words + "\n";
  }
  return out;
}

std::set<std::string> names_in(const fs::path& folder, const std::string& ending) {
  std::set<std::string> out;
  for (const auto& entry : fs::directory_iterator(folder))
    if (entry.path().extension() == ending) out.insert(entry.path().stem().string());
  return out;
}

}  // namespace

TEST_CASE("the first page of each sheet of the indoor example reads as written down", "[golden]") {
  const Folder out("golden-pages");
  std::istringstream docs(program({"list", "docs"}).out);
  std::vector<std::string> arguments = {
      "print", example("indoor-afternoon.toml"), "--units", "metric", "--paper", "a4", "--out", out.path.string()};
  for (std::string line; std::getline(docs, line);) {
    arguments.emplace_back("--only");
    arguments.push_back(line.substr(0, line.find(' ')));
  }
  REQUIRE(program(arguments).code == 0);
  const fs::path written = fs::path(TESTS_DIR) / "golden/indoor-afternoon";
  const fs::path now = fs::path(PROGRAM).parent_path().parent_path() / "golden/indoor-afternoon";
  fs::remove_all(now);
  fs::create_directories(now);
  for (const std::string& name : names_in(out.path, ".pdf"))
    std::ofstream(now / (name + ".txt")) << as_read(
        shell("pdftotext -layout -l 1 " + (out.path / (name + ".pdf")).string() + " -").out);
  CHECK(names_in(written, ".txt") == names_in(now, ".txt"));
  for (const std::string& name : names_in(written, ".txt")) {
    const Said difference =
        shell("diff " + (written / (name + ".txt")).string() + " " + (now / (name + ".txt")).string() + " 2>&1");
    INFO(name << ":\n" << difference.out);
    CHECK(difference.status == 0);
  }
}
