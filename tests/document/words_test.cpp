// SPDX-License-Identifier: MIT
// Every key that the sources say has words, every word is said by some source, and each block that a sheet can have
// is placed by its layout.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include "document/documents.h"
#include "read/layout_file.h"
#include "small_house.h"

using namespace dunnage;
namespace fs = std::filesystem;

namespace {

std::string text_of(const fs::path& path) {
  std::ifstream file(path);
  std::stringstream all;
  all << file.rdbuf();
  return all.str();
}

std::set<std::string> matches(const std::string& text, const std::regex& pattern) {
  std::set<std::string> found;
  for (std::sregex_iterator at(text.begin(), text.end(), pattern), end; at != end; ++at) found.insert((*at)[1]);
  return found;
}

}  // namespace

TEST_CASE("words and sources name the same keys") {
  const std::regex key("\"([a-z]+\\.[a-z0-9-]+)\"");
  std::set<std::string> said, has;
  for (const auto& entry : fs::directory_iterator(fs::path(PROJECT_DIR) / "src/document"))
    said.merge(matches(text_of(entry.path()), key));
  for (const auto& [name, text] : english().by_key) has.insert(name);
  for (const std::string& one : said) {
    INFO(one);
    CHECK(has.count(one) == 1);
  }
  for (const std::string& one : has) {
    INFO(one);
    CHECK(said.count(one) == 1);
  }
}

TEST_CASE("no language lacks a word, has one too many, or fills other places") {
  const std::regex place("(\\{[a-z-]+\\})");
  for (const char* language : {"es", "fr"}) {
    Sources sources;
    Diagnostics diagnostics;
    const auto words =
        load_words(fs::path(PROJECT_DIR) / "layouts/words" / (std::string(language) + ".toml"), sources, diagnostics);
    INFO(render(diagnostics, sources));
    REQUIRE(words);
    CHECK(words->language == language);
    CHECK_FALSE(words->read_by_native);  // until somebody has
    for (const auto& [key, text] : english().by_key) {
      INFO(language << " " << key);
      REQUIRE(words->by_key.count(key) == 1);
      CHECK(matches(words->by_key.at(key), place) == matches(text, place));
    }
    CHECK(words->by_key.size() == english().by_key.size());
    CHECK(words->by_key.at("pull.ask-roles") ==
          english().by_key.at("pull.ask-roles"));  // a role is typed in any language
  }
}

namespace {

/// The English texts of the sentences that the sources say: said("..."), in as many pieces as it is typed.
std::set<std::string> sentences_said() {
  const std::regex call("\\bsaid\\(\\s*((?:\"(?:[^\"\\\\]|\\\\.)*\"\\s*)+)"), piece("\"((?:[^\"\\\\]|\\\\.)*)\"");
  std::set<std::string> found;
  for (const char* folder : {"base", "formula", "plan", "check", "document"})
    for (const auto& entry : fs::directory_iterator(fs::path(PROJECT_DIR) / "src" / folder))
      for (const std::string& typed : matches(text_of(entry.path()), call)) {
        std::string sentence;
        for (std::sregex_iterator at(typed.begin(), typed.end(), piece), end; at != end; ++at) sentence += (*at)[1];
        for (std::size_t at = 0; (at = sentence.find("\\\"", at)) != std::string::npos; ++at) sentence.erase(at, 1);
        found.insert(sentence);
      }
  return found;
}

}  // namespace

TEST_CASE("each sentence that the sources say is in every language, and no other") {
  std::set<std::string> said = sentences_said();
  for (const Named<RuleName>& rule : rule_names) said.emplace(rule.name);  // they stand on the cover
  CHECK(said.size() > 400);
  for (const char* language : {"en", "es", "fr"}) {
    Sources sources;
    Diagnostics diagnostics;
    const auto words =
        load_words(fs::path(PROJECT_DIR) / "layouts/words" / (std::string(language) + ".toml"), sources, diagnostics);
    INFO(language << "\n" << render(diagnostics, sources));
    REQUIRE(words);  // with the places of the English sentence, or it is not read
    std::string missing, stale;
    for (const std::string& sentence : said)
      if (!words->sentences.contains(sentence)) missing += sentence + "\n";
    for (const auto& [sentence, in_language] : words->sentences)
      if (said.count(sentence) == 0) stale += sentence + "\n";
    CHECK(missing == "");
    CHECK(stale == "");
  }
  for (const auto& [sentence, in_english] : english().sentences) CHECK(in_english == sentence);
}

TEST_CASE("each sheet's layout places every block that its sources can make") {
  const std::regex added("add(?:_facts|_listing|_notice)?\\((?:section|context, section), \"([a-z-]+)\"");
  const std::regex listing("add_listing\\(section, \"([a-z-]+)\"");
  for (const DocumentKind& kind : document_kinds()) {
    if (kind.name == "case-label") continue;  // its stocks are tested where labels are laid out
    std::string stem(kind.name == "cover" ? "cover_sheet" : kind.name);
    std::replace(stem.begin(), stem.end(), '-', '_');
    const std::string source = text_of(fs::path(PROJECT_DIR) / "src/document" / (stem + ".cpp"));
    REQUIRE_FALSE(source.empty());
    std::set<std::string> ids = matches(source, added);
    for (const std::string& id : matches(source, listing)) ids.insert(id + "-head");
    Sources sources;
    Diagnostics diagnostics;
    const auto layout =
        load_layout(fs::path(PROJECT_DIR) / "layouts" / (std::string(kind.name) + ".toml"), sources, diagnostics);
    INFO(render(diagnostics, sources));
    REQUIRE(layout);
    std::set<std::string> placed(layout->omit.begin(), layout->omit.end());
    for (const BlockSpec& block : layout->blocks) {
      placed.insert(block.id);
      placed.insert(block.also.begin(), block.also.end());
    }
    for (const std::string& id : ids) {
      INFO(kind.name << ": " << id);
      CHECK(placed.count(id) == 1);
    }
    for (const std::string& id : placed) {
      INFO(kind.name << ": no source makes " << id);
      CHECK(ids.count(id) == 1);
    }
  }
}
