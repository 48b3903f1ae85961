// SPDX-License-Identifier: MIT
// Where things come from: every library is in the table of licences, and no source is a nameless one.
#include <catch2/catch.hpp>
#include <regex>
#include <sstream>

#include "../shell.h"

namespace fs = std::filesystem;
using dunnage::bytes_of;

namespace {

const fs::path project = PROJECT_DIR;

/// What examples/install.sh installs to build, without what builds.
std::vector<std::string> linked_packages() {
  const std::string text = bytes_of(project / "examples/install.sh");
  const std::size_t from = text.find("packages=\"") + 10;
  std::istringstream words(text.substr(from, text.find('"', from) - from));
  std::vector<std::string> out;
  for (std::string word; words >> word;)
    if (word != "g++" && word != "cmake" && word != "ninja-build" && word != "pkg-config") out.push_back(word);
  return out;
}

/// "Source: a manual" or a rule's source that is "a page": somebody who doubts the figure cannot look it up.
const std::regex nameless(
    "[Ss]ources?: (a|an|one|some) [a-z]|an? "
    "(city|council|county|maker|operator|supplier|university|magazine|stake)('s)? "
    "(tent permit|park event|manual|page|guide|study|fire)|owners' manuals|published inputs|guidance citing|"
    "(an?|one) (trade magazine|axle supplier|state health)");

}  // namespace

TEST_CASE("every package that is linked or copied is in README's table of licences") {
  const std::string readme = bytes_of(project / "README.md");
  const std::string table = readme.substr(readme.find("| what | for | licence |"));
  const std::vector<std::string> packages = linked_packages();
  CHECK(packages.size() > 10);
  for (const std::string& package : packages) {
    INFO(package);
    CHECK(
        std::regex_search(table, std::regex("[(, ]" + std::regex_replace(package, std::regex("\\+"), "\\+") + "[,)]")));
  }
}

TEST_CASE("a source has a name, or says that it is from memory or common practice") {
  int read = 0;
  for (const char* folder : {"src", "layouts", "tests/published", "tests/check", "tests/formula"})
    for (const auto& entry : fs::recursive_directory_iterator(project / folder)) {
      if (!entry.is_regular_file()) continue;
      std::istringstream lines(bytes_of(entry.path()));
      int number = 0;
      for (std::string line; std::getline(lines, line);) {
        ++number;
        INFO(entry.path().string() << ":" << number << ": " << line);
        const bool vague = std::regex_search(line, nameless);
        CHECK_FALSE(vague);
      }
      ++read;
    }
  CHECK(read > 300);
  std::smatch found;
  const std::string safety = bytes_of(project / "SAFETY.md");
  CHECK_FALSE(std::regex_search(safety, found, nameless));
}
