// SPDX-License-Identifier: MIT
// What the code on a label says is read back as that label's case and nothing else, whatever a house may call its
// things: for every text that the readers take.
#include <catch2/catch.hpp>
#include <random>

#include "base/toml_quote.h"
#include "check/lifting.h"
#include "document/case_label.h"
#include "program.h"
#include "read/cross_check.h"
#include "read/kit_file.h"
#include "read/scans.h"
#include "run/house_style.h"

using namespace dunnage;

namespace {

/// What a name may be made of that could be taken for something else.
const std::vector<std::string> pieces = {
    "Trunk", "BAG-2", "BAG",        "FOH-1",   "ROLL",          "MASS", "  ",    " ",        ";",    ",",
    "\"",    "|",     "2027-06-19", "22:10",   "(old)",         "*",    "12 lb", "damaged:", "note", "\u00D1and\u00FA",
    "#2",    "#",     "10:13 PM",   "phone 5", "mass 9 kg (x)", "\\",   "' = '"};
/// What no line may hold.
const std::vector<std::string> breaks = {"\n", "\r\n", "\t", "\u2028", "\u202E", "\u0085"};

class Mangler {
 public:
  std::string text() {
    std::string out;
    for (std::size_t n = 1 + below(4); n > 0; --n)
      out += below(60) == 0 ? breaks[below(breaks.size())] : pieces[below(pieces.size())];
    return out;
  }
  std::size_t below(std::size_t n) { return random_() % n; }

 private:
  std::mt19937 random_{19};
};

std::string kit_text(Mangler& mangler) {
  const auto line = [&](const char* key) { return std::string(key) + " = " + toml_quoted(mangler.text()) + "\n"; };
  std::string out = "[house]\n" + line("name");
  if (mangler.below(2) == 0) out += line("phone");
  out += "[[item]]\ncode = \"MIC\"\n" + line("name") + line("names.es");
  for (const char* box : {"FOH-1\"\nform = \"trunk\"\nwheels = true\nweighed = \"20 kg\"\nrevision = \"A\"\n",
                          "BAG\"\nform = \"bag\"\ncount = 2\nrevision = \"A\"\n", "ROLL\"\nform = \"box\"\n",
                          "MASS\"\nform = \"box\"\nweighed = \"90 kg\"\n"})
    out += "[[case]]\ncode = \"" + std::string(box) + line("name") + line("names.es") + line("looks") + line("home") +
           "holds = [{ item = \"MIC\", count = 2 }]\n";
  return out;
}

std::optional<Catalogue> catalogue_of(const std::string& text) {
  Sources sources;
  Diagnostics diagnostics;
  const auto kit = read_kit_texts("kit", {{"k.toml", text}}, sources, diagnostics);
  if (!kit) return std::nullopt;
  Catalogue catalogue = make_catalogue(*kit);
  cross_check(catalogue, nullptr, diagnostics);
  if (diagnostics.has_errors()) return std::nullopt;
  return catalogue;
}

/// "FOH-1 BAG-2(note)@time".
std::string scanned(const std::string& text, const Catalogue& catalogue) {
  Sources sources;
  Diagnostics diagnostics;
  std::string out;
  for (const Scan& scan : read_scans("list.txt", text, Stage::out, catalogue, sources, diagnostics))
    out += (scan.unit < 0 ? "?" + scan.typed : catalogue.units[static_cast<std::size_t>(scan.unit)].code) +
           (scan.note.empty() ? "" : "(" + scan.note + ")") + (scan.time.empty() ? "" : "@" + scan.time) + " ";
  return out;
}

std::vector<Words> all_words() {
  std::vector<Words> out;
  Sources sources;
  Diagnostics diagnostics;
  for (const char* language : {"en", "es", "fr"})
    out.push_back(load_words_for(SHARE_DIR, {language}, Kit{}, sources, diagnostics).front());
  return out;
}

}  // namespace

TEST_CASE("The code of every label that a check lets through is read back as its case alone", "[label]") {
  const std::vector<Words> languages = all_words();
  Mangler mangler;
  int taken = 0;
  for (int n = 0; n < 1000; ++n) {
    const std::string text = kit_text(mangler);
    const std::optional<Catalogue> catalogue = catalogue_of(text);
    if (!catalogue) continue;
    ++taken;
    for (const Words& words : languages)
      for (int u = 0; u < static_cast<int>(catalogue->units.size()); ++u) {
        const Handling handling = handling_of(catalogue->case_at(u), catalogue->mass_of(u), catalogue->kit.house.lift);
        const std::string label = label_text(*catalogue, handling, u, words, UnitSystem::us, "7");
        const std::string code = catalogue->units[static_cast<std::size_t>(u)].code;
        INFO(text << "\n" << label);
        REQUIRE(scanned(label, *catalogue) == code + " ");
        REQUIRE(scanned(label + "\n" + label + "\nBAG-1\n", *catalogue) == code + " " + code + " BAG-1 ");
      }
  }
  CHECK(taken > 200);  // the others hold a line's end or a sign that nobody sees somewhere, or an empty name
  CHECK(taken < 800);
}

TEST_CASE("What stands on one line is typed on one line", "[label]") {
  const std::string kit =
      "[house]\nname = \"The house\"\n[[item]]\ncode = \"MIC\"\nname = \"Mic\"\n[[case]]\ncode = \"FOH-1\"\n"
      "form = \"trunk\"\nname = ";
  CHECK(catalogue_of(kit + "\"Trunk\"\n"));
  for (const char* key : {"", "looks = ", "home = ", "names.es = ", "place = ", "vehicle = "})
    for (const char* text : {"\"Trunk\\nBAG-2  Ballast\"\n", "\"Trunk\\r\\nBAG-2  Ballast\"\n", "\"a\\tb\"\n",
                             "\"\"\"Trunk\nBAG-2  Ballast\"\"\"\n"})
      CHECK_FALSE(catalogue_of(kit + (*key == 0 ? "" : "\"Trunk\"\n") + key + text));
}
