// SPDX-License-Identifier: MIT
// Words that nothing defines but their use: a slip in one keeps gear at home, so each is known or told.
#include <catch2/catch.hpp>

#include "telling.h"

using namespace dunnage;

namespace {

/// The causes and hints, without lines and carets.
std::string short_of(const std::string& rendered) {
  std::string out;
  for (std::size_t at = 0; at < rendered.size(); at = rendered.find('\n', at) + 1) {
    const std::string line = rendered.substr(at, rendered.find('\n', at) - at);
    if (!line.starts_with("  ")) out += line + "\n";
  }
  return out;
}
std::string kit_says(const std::string& lines, const Surroundings& around = {}) {
  return short_of(told_of_kit({small_kit + lines}, around));
}
std::string show_says(const std::string& kit_lines, const std::string& show_lines) {
  return short_of(told(small_kit + kit_lines, small_show + show_lines));
}

}  // namespace

TEST_CASE("A rule's floor is known from the list, the house's tapes and words, or the show") {
  CHECK(kit_says("goes = { floor = \"gras\" }\n") ==
        "k1.toml:12:10: warning: no show and no sheet knows the floor \"gras\"\nhint: did you mean \"grass\"?\n");
  CHECK(kit_says("goes = { floor = \"grass\" }\n").empty());
  CHECK(kit_says("per = [{ every = \"10 m\", of = \"run\", floor = \"carpett\", send = 1 }]\n") ==
        "k1.toml:12:46: warning: no show and no sheet knows the floor \"carpett\"\nhint: did you mean \"carpet\"?\n");
  CHECK(kit_says("goes = { floor = \"sawdust\" }\n") ==
        "k1.toml:12:10: warning: no show and no sheet knows the floor \"sawdust\"\n"
        "hint: known are: asphalt, cables, carpet, concrete, finished, grass, stage; a word of your own: add it to "
        "words = [...] in [house]\n");
  CHECK(kit_says("goes = { floor = \"sawdust\" }\n[[item]]\ncode = \"T\"\nname = \"Tape\"\nserves = "
                 "[\"tape-sawdust\"]\n")
            .empty());
  CHECK(show_says("goes = { floor = \"sawdust\" }\n", "floor = \"sawdust\"\n").empty());
}

TEST_CASE("A rule's console and source are known from the kit or the show") {
  const std::string kit = "goes = { console = \"consol-digital\" }\n";
  CHECK(show_says(kit, "console = \"console-digital\"\n").find("did you mean \"console-digital\"?") !=
        std::string::npos);
  CHECK(show_says("goes = { console = \"console-digital\" }\n", "console = \"console-digital\"\n").empty());
  CHECK(kit_says("serves = [\"console-digital\"]\n" + kit) ==
        "k1.toml:13:10: warning: no show and nothing in the kit knows the console \"consol-digital\"\n"
        "hint: did you mean \"console-digital\"?\n");
  const std::string show = "[[input]]\nchannel = 1\nsource = \"upright bass\"\n";
  CHECK(
      show_says("goes = { source = \"uprigt bass\" }\n", show) ==
      "k1.toml:12:10: warning: no input of the show is called \"uprigt bass\"\nhint: did you mean \"upright bass\"?\n");
  CHECK(show_says("goes = { source = \"piano\" }\n", show).empty());  // another show's
}

TEST_CASE("A word served that nothing asks for, one letter from one that something does, is a slip") {
  CHECK(kit_says("serves = [\"mic-cabel\"]\n") ==
        "k1.toml:12:11: warning: nothing asks for \"mic-cabel\"\nhint: did you mean \"mic-cable\"?\n");
  CHECK(kit_says("serves = [\"mic-cable\", \"xlr-2\"]\nneeds = [{ code = \"MIC\" }]\n").empty());
  CHECK(show_says(
            "serves = [\"wegde\"]\n[[case]]\ncode = \"W\"\nname = \"Wedge\"\nform = \"box\"\nserves = [\"wedge\"]\n",
            "[[want]]\nwhat = \"wedge\"\n") ==
        "k1.toml:12:11: warning: nothing asks for \"wegde\"\nhint: did you mean \"wedge\"?\n");
  CHECK(
      kit_says("serves = [\"canopy-wall\"]\n[[structure]]\ncode = \"CAN\"\nkind = \"canopy\"\nwall = \"canopy-wal\"\n")
          .find("hint: did you mean \"canopy-wall\"?") != std::string::npos);
}

TEST_CASE("What the site has, stands on and is fed by is known, or told with the nearest") {
  CHECK(show_says("", "[site]\nhas = [{ what = \"drinking-watr\" }]\n") ==
        "show.toml:6:17: warning: nothing asks for \"drinking-watr\" and nothing in the kit serves as it\n"
        "hint: did you mean \"drinking-water\"?\n");
  CHECK(show_says("", "[site]\nground = \"gravle\"\n") ==
        "show.toml:6:10: warning: no rule knows the ground \"gravle\"\nhint: did you mean \"gravel\"?\n");
  CHECK(show_says("", "[[supply]]\nname = \"Set\"\nkind = \"genrator\"\n") ==
        "show.toml:7:8: warning: no rule knows the supply \"genrator\"\nhint: did you mean \"generator\"?\n");
  CHECK(show_says("", "[[supply]]\nname = \"Set\"\nkind = \"battery\"\n").empty());
}

TEST_CASE("Languages and stocks are those that there are") {
  const Surroundings around{{}, {"en", "es", "fr"}, {"4x6-roll", "letter-2x2"}};
  CHECK(kit_says("names.ess = \"Caja\"\n", around) ==
        "k1.toml:12:13: warning: no sheet is printed in \"ess\"\nhint: did you mean \"es\"?\n");
  CHECK(kit_says("names.es = \"Caja\"\n", around).empty());
  const auto house = [&](const std::string& line) {
    return short_of(
        told_of_kit({"[house]\nname = \"The house\"\n" + line + small_kit.substr(small_house.size())}, around));
  };
  CHECK(house("languages = [\"en\", \"ess\"]\n") ==
        "k1.toml:3:20: error: there are no printed words in \"ess\"\nhint: did you mean \"es\"?\n1 error\n");
  CHECK(house("languages = [\"en\", \"es\", \"fr\"]\n")
            .starts_with("k1.toml:3:26: error: at most two languages have room on one sheet\n"));
  CHECK(house("languages = [\"en\", \"en\"]\n").starts_with("k1.toml:3:20: error: the language \"en\" stands twice\n"));
  CHECK(house("label_stock = \"4x6-rol\"\n") ==
        "k1.toml:3:15: error: there is no label stock \"4x6-rol\"\nhint: did you mean \"4x6-roll\"?\n1 error\n");
}
