// SPDX-License-Identifier: MIT
// Nothing that a sheet says of its own stays English in another language. The words of that language are a row of dots
// here, so that whatever still reads as a phrase was typed by the house, or was forgotten.
#include <catch2/catch.hpp>
#include <regex>
#include <set>

#include "../document/small_house.h"
#include "check/rules.h"
#include "document/documents.h"
#include "plan/plan_show.h"
#include "program.h"
#include "run/load_show.h"
#include "stress_show.h"

using namespace dunnage;

namespace {

/// Each letter a dot; what is filled in stays.
std::string dotted(const std::string& text) {
  std::string out;
  bool place = false;
  for (const char c : text) {
    place = (place || c == '{') && c != '}';
    out += !place && std::isalpha(static_cast<unsigned char>(c)) ? '.' : c;
  }
  return out;
}

Words dots() {
  Words words = english();
  words.language = "dots";
  for (auto& [key, text] : words.by_key)
    if (key != "pull.ask-roles") text = dotted(text);
  for (auto& [sentence, text] : words.sentences) text = dotted(sentence);
  return words;
}

std::string all_of(const Document& document) {
  std::string out = document.title + "\n" + document.revision + "\n";
  for (const Section& section : document.sections) {
    out += section.recipient + "\n";
    for (const Block& block : section.blocks) out += as_text(block) + "\n";
  }
  return out;
}

/// Phrases of three words or more that nobody typed.
std::set<std::string> english_left(const Loaded& loaded, const std::string& paper) {
  std::string typed;
  for (const auto& file : loaded.sources.files()) typed += file.text + "\n";
  const std::string bare = std::regex_replace(paper, std::regex("([0-9]) (mph|lb|ft|in|gal)\\b"), "$1;");
  const std::regex phrase("[A-Za-z']+(?: [A-Za-z']+){2,}");
  const std::set<std::string> titles = {"OSHA Technical Manual III"};
  std::set<std::string> left;
  for (std::sregex_iterator at(bare.begin(), bare.end(), phrase), end; at != end; ++at)
    if (typed.find(at->str()) == std::string::npos && !titles.contains(at->str())) left.insert(at->str());
  return left;
}

std::string left_on_sheets(const std::string& file) {
  Loaded loaded;
  std::ostringstream told;
  const bool read = load_show(file, loaded, told);
  INFO(told.str());
  REQUIRE(read);
  const Plan plan = plan_show(loaded.catalogue, loaded.show);
  const Findings findings = check_all(loaded.catalogue, loaded.show, plan);
  const Words words = dots();
  const Context context = {
      loaded.catalogue, loaded.show, plan, findings, words, loaded.catalogue.kit.house.units, "mph", "7", {}, {}, {}};
  std::string out;
  for (const DocumentKind& kind : document_kinds()) {
    const Made sheet = kind.make(context);
    if (const Document* document = std::get_if<Document>(&sheet))
      for (const std::string& phrase : english_left(loaded, all_of(*document)))
        out += std::string(kind.name) + ": " + phrase + "\n";
  }
  return out;
}

}  // namespace

TEST_CASE("nothing that a sheet says of its own stays English") {
  CHECK(left_on_sheets(example("outdoor-evening.toml")) == "");
  CHECK(left_on_sheets(example("indoor-afternoon.toml")) == "");
  const Folder folder("sentences");
  CHECK(left_on_sheets(write_stress_show(folder)) == "");
}

TEST_CASE("where little is given, what is missing is named in the language too") {
  const Folder folder("sentences");
  const std::string kit =
      "[house]\nname = \"H\"\n[[case]]\ncode = \"AMP\"\nname = \"Amp\"\nform = \"box\"\ndraws = \"900 W\"\ngoes = "
      "\"always\"\n"
      "[[case]]\ncode = \"MIXER\"\nname = \"Mixer\"\nform = \"box\"\nper = [{ every = 2, of = \"input\", send = 3 }]\n"
      "[[structure]]\ncode = \"CAN\"\nname = \"Canopy\"\nkind = \"canopy\"\n"
      "[[structure]]\ncode = \"MAST\"\nname = \"Mast\"\nkind = \"tower\"\n";
  std::filesystem::create_directories(folder.path / "kit");
  folder.file("kit/kit.toml", kit);
  const std::string show =
      folder.file("show.toml",
                  "kit = \"kit\"\n[show]\ntitle = \"Eve\"\ndate = 2027-06-19\n[[use]]\nstructure = \"CAN\"\nas = "
                  "\"can\"\nwalls = [\"N\"]\n"
                  "[[use]]\nstructure = \"MAST\"\nas = \"mast\"\n[[supply]]\nname = \"gen\"\nkind = \"generator\"\n"
                  "[[circuit]]\nname = \"one\"\nsupply = \"gen\"\nfeeds = [{ code = \"AMP\", count = 1 }]\n"
                  "[[input]]\nchannel = 1\nsource = \"voice\"\n[[mix]]\noutput = \"1\"\nwho = \"all\"\n");
  CHECK(left_on_sheets(show) == "");
}
