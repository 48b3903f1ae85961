// SPDX-License-Identifier: MIT
// No sentence of a rule is out of all tests: each that the sources of the checks say stands in a text of the tests
// beside this one, its places filled, or in what `check` says of the examples.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <vector>

namespace fs = std::filesystem;

namespace {

std::string text_of(const fs::path& path) {
  std::ifstream file(path);
  std::stringstream all;
  all << file.rdbuf();
  return all.str();
}

/// The string typed at `at` in as many pieces as it has; `at` is then behind it. Without its escapes.
std::string literal_at(const std::string& source, std::size_t& at) {
  std::string out;
  for (;;) {
    std::size_t next = source.find_first_not_of(" \n", at);
    if (next == std::string::npos || source[next] != '"') return out;
    for (++next; source[next] != '"'; ++next) {
      if (source[next] == '\\') ++next;
      out += source[next];
    }
    at = next + 1;
  }
}

/// What `said(` says in the sources of the checks, and in which file.
std::map<std::string, std::string> sentences() {
  std::map<std::string, std::string> out;
  for (const auto& entry : fs::directory_iterator(fs::path(PROJECT_DIR) / "src/check")) {
    const std::string source = text_of(entry.path());
    for (std::size_t at = 0; (at = source.find("said(", at)) != std::string::npos;) {
      at += 5;
      const std::string sentence = literal_at(source, at);
      if (!sentence.empty()) out.emplace(sentence, entry.path().filename().string());
    }
  }
  return out;
}

/// Every text of the tests of the checks but this one's.
std::string texts_of_tests() {
  std::string out;
  for (const auto& entry : fs::directory_iterator(fs::path(PROJECT_DIR) / "tests/check")) {
    if (entry.path().filename() == "sentences_test.cpp") continue;
    const std::string source = text_of(entry.path());
    for (std::size_t at = 0; (at = source.find('"', at)) != std::string::npos;) {
      const std::string text = literal_at(source, at);
      out += text + "\n";
    }
  }
  for (const auto& entry : fs::directory_iterator(fs::path(PROJECT_DIR) / "tests/golden"))
    if (entry.path().string().ends_with(".check.txt")) out += text_of(entry.path());
  return out;
}

/// Whether the sentence stands in a line of the texts, with something in each of its places.
bool stands_in(const std::string& texts, const std::string& sentence) {
  std::vector<std::string> parts;
  std::size_t begin = 0;
  for (std::size_t at; (at = sentence.find("{}", begin)) != std::string::npos; begin = at + 2)
    parts.push_back(sentence.substr(begin, at - begin));
  parts.push_back(sentence.substr(begin));
  for (std::size_t line = 0; line < texts.size();) {
    const std::size_t end = std::min(texts.find('\n', line), texts.size());
    std::size_t at = texts.find(parts.front(), line);
    if (at == std::string::npos) return false;
    if (at >= end) {  // no line before that one has it
      line = texts.rfind('\n', at) + 1;
      continue;
    }
    bool all = true;
    for (std::size_t i = 0; all && i < parts.size(); ++i) {
      at = texts.find(parts[i], i == 0 ? at : at + 1);
      all = at != std::string::npos && at + parts[i].size() <= end;
      if (all) at += parts[i].size();
    }
    if (all) return true;
    line = end + 1;
  }
  return false;
}

}  // namespace

/// Said by no test yet. Whoever writes one takes its line out: what is listed here and does stand in a test fails.
const std::set<std::string> owed = {
    "Generator: fenced off, exhaust away from people; refuelled off and cooled; extinguisher {} to {} away.",
    "Its axle loads after {} are not those of the drawing.",
    "Its axle loads at departure are not those of the drawing.",
    "{} must be lifted by {} or more people; the show has {}.",
    "{}: {}. Stop work in the open, or in turns of minutes.",
};

TEST_CASE("each sentence of the checks stands in a test") {
  const std::map<std::string, std::string> said = sentences();
  REQUIRE(said.size() > 300);
  const std::string texts = texts_of_tests();
  std::string out;
  for (const auto& [sentence, file] : said)
    if (stands_in(texts, sentence) == owed.contains(sentence)) out += file + ": " + sentence + "\n";
  CHECK(out == "");
}

TEST_CASE("a sentence stands where its words do, in their order, on one line") {
  CHECK(stands_in("It has 3 of 4.\n", "has {} of {}."));
  CHECK_FALSE(stands_in("It has 3 of\n4.\n", "has {} of {}."));
  CHECK_FALSE(stands_in("of 4, has 3.\n", "has {} of {}."));
  CHECK(stands_in("has\nIt has 3 of 4.\n", "has {} of {}."));
}
