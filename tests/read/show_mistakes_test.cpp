// SPDX-License-Identifier: MIT
// Mistakes of a show, and of a show against its kit, with the exact words that tell them.
#include <catch2/catch.hpp>

#include "telling.h"

using namespace dunnage;

namespace {

const std::string canopy_kit =
    small_kit +
    "[[case]]\ncode = \"BAG\"\nname = \"Sand bag\"\nform = \"bag\"\ncount = 4\n"
    "[[structure]]\ncode = \"CANOPY\"\nkind = \"canopy\"\nlegs = [\"NW\", \"NE\", \"SE\", \"SW\"]\n";

// The small show has 4 lines and ends inside its [show].
std::string use(const std::string& as, const std::string& ballast) {
  return "[[use]]\nstructure = \"CANOPY\"\nas = \"" + as + "\"\nballast = [" + ballast + "]\n";
}

}  // namespace

TEST_CASE("A show in order is told nothing") {
  CHECK(told(small_kit, small_show).empty());
  CHECK(told(canopy_kit, small_show + use("foh", "{ legs = \"each\", code = \"BAG\", count = 2 }")).empty());
}

TEST_CASE("What a rule asks for must be stated by the show, and is told once") {
  CHECK(
      told(small_kit + "goes = [{ after_dark = true }, { after_dark = false, setting = \"indoor\" }]\n", small_show) ==
      "k1.toml:12:11: error: a rule asks for \"after_dark\", and the show does not state it\n"
      "  goes = [{ after_dark = true }, { after_dark = false, setting = \"indoor\" }]\n"
      "            ^~~~~~~~~~\n"
      "hint: state it in show.toml: [show] after_dark = false\n"
      "show.toml:2:1: note: the show is described here\n"
      "  [show]\n"
      "  ^~~~~~\n"
      "k1.toml:12:54: error: a rule asks for \"setting\", and the show does not state it\n"
      "  goes = [{ after_dark = true }, { after_dark = false, setting = \"indoor\" }]\n"
      "                                                       ^~~~~~~\n"
      "hint: state it in show.toml: [show] setting = \"indoor\" or \"outdoor\"\n"
      "show.toml:2:1: note: the show is described here\n"
      "  [show]\n"
      "  ^~~~~~\n"
      "2 errors\n");
  CHECK(told(small_kit + "per = [{ every = 6, of = \"crew\", send = 1 }]\n", small_show + "crew = 3\n").empty());
}

TEST_CASE("A unit stands in one place: twice is told at both") {
  CHECK(told(canopy_kit, small_show + use("foh", "{ legs = [\"NW\"], code = \"BAG-1\" }") +
                             use("stage", "{ legs = [\"NE\"], code = \"BAG-1\" }")) ==
        "show.toml:12:36: error: \"BAG-1\" stands twice\n"
        "  ballast = [{ legs = [\"NE\"], code = \"BAG-1\" }]\n"
        "                                     ^~~~~~~\n"
        "hint: a unit stands in one place: keep one of the two\n"
        "show.toml:8:36: note: it is first named here\n"
        "  ballast = [{ legs = [\"NW\"], code = \"BAG-1\" }]\n"
        "                                     ^~~~~~~\n"
        "1 error\n");
  CHECK(told(canopy_kit, small_show + "[[place]]\ncode = \"foh\"\ntakes = [\"BAG-1\"]\n"
                                      "[[place]]\ncode = \"stage\"\ntakes = [\"BAG\"]\n") ==
        "show.toml:10:10: error: \"BAG-1\" is taken twice\n"
        "  takes = [\"BAG\"]\n"
        "           ^~~~~\n"
        "hint: a unit stands in one place: keep one of the two\n"
        "show.toml:7:10: note: it is first named here\n"
        "  takes = [\"BAG-1\"]\n"
        "           ^~~~~~~\n"
        "1 error\n");
  CHECK(told(canopy_kit, small_show + use("foh", "{ legs = \"each\", code = \"BAG-1\" }")) ==
        "show.toml:8:36: error: \"BAG-1\" is one unit and is asked for 4 times\n"
        "  ballast = [{ legs = \"each\", code = \"BAG-1\" }]\n"
        "                                     ^~~~~~~\n"
        "hint: name the case, \"BAG\", to take any of its units\n"
        "1 error\n");
}

TEST_CASE("A weight stands on a leg that the structure has") {
  CHECK(told(canopy_kit, small_show + use("foh", "{ legs = [\"NM\"], code = \"BAG\" }")) ==
        "show.toml:8:22: error: \"NM\" is not a leg of CANOPY\n"
        "  ballast = [{ legs = [\"NM\"], code = \"BAG\" }]\n"
        "                       ^~~~\n"
        "hint: did you mean \"NW\"?\n"
        "1 error\n");
  CHECK(told(canopy_kit, small_show + use("foh", "{ legs = [\"NE\", \"NE\"], code = \"BAG\" }")) ==
        "show.toml:8:28: error: the leg \"NE\" is named twice\n"
        "  ballast = [{ legs = [\"NE\", \"NE\"], code = \"BAG\" }]\n"
        "                             ^~~~\n"
        "hint: raise \"count\" to put more on it\n"
        "show.toml:8:22: note: named first here\n"
        "  ballast = [{ legs = [\"NE\", \"NE\"], code = \"BAG\" }]\n"
        "                       ^~~~\n"
        "1 error\n");
}

TEST_CASE("A stake stands on a leg too, and a piece with a position is one of the kit's") {
  const std::string begin = "[[use]]\nstructure = \"CANOPY\"\nas = \"foh\"\n";
  CHECK(told(canopy_kit, small_show + begin + "stakes = [{ legs = \"each\" }]\n").empty());
  CHECK(told(canopy_kit, small_show + begin + "stakes = [{ legs = [\"S\"] }]\n").find("\"S\" is not a leg of CANOPY") !=
        std::string::npos);
  CHECK(told(canopy_kit,
             small_show + "[[load]]\nvehicle = \"VAN\"\nstands = [{ code = \"BAGG\", from_front = \"1 m\" }]\n")
            .find("did you mean \"BAG\"?") != std::string::npos);
}

TEST_CASE("Codes and words of the show are known to the kit, names are given once") {
  CHECK(told(canopy_kit, small_show + "[[use]]\nstructure = \"CANOPI\"\nas = \"foh\"\n") ==
        "show.toml:6:13: error: no structure has the code \"CANOPI\"\n"
        "  structure = \"CANOPI\"\n"
        "              ^~~~~~~~\n"
        "hint: did you mean \"CANOPY\"?\n"
        "1 error\n");
  CHECK(told(small_kit, small_show + "[[input]]\nchannel = 1\nsource = \"voice\"\npickup = \"vocl\"\n"
                                     "[[input]]\nchannel = 1\nsource = \"keys\"\n") ==
        "show.toml:8:10: error: nothing in the kit is or serves as \"vocl\"\n"
        "  pickup = \"vocl\"\n"
        "           ^~~~~~\n"
        "hint: did you mean \"vocal\"?\n"
        "show.toml:10:11: error: the channel \"1\" stands twice\n"
        "  channel = 1\n"
        "            ^\n"
        "hint: change one of the two\n"
        "show.toml:6:11: note: it stands first here\n"
        "  channel = 1\n"
        "            ^\n"
        "2 errors\n");
  CHECK(told(small_kit, "leave = [{ code = \"BOXX\", because = \"not asked\" }]\n" + small_show) ==
        "show.toml:1:19: error: no case has the code \"BOXX\"\n"
        "  leave = [{ code = \"BOXX\", because = \"not asked\" }]\n"
        "                    ^~~~~~\n"
        "hint: did you mean \"BOX\"?\n"
        "1 error\n");
}

TEST_CASE("What the site has may be wanted without the kit owning it") {
  const std::string want = "[[want]]\nwhat = \"table\"\ncount = 2\n";
  CHECK(told(small_kit, small_show + "[site]\nhas = [{ what = \"table\", count = 6, from = \"venue\" }]\n" + want)
            .empty());
  CHECK(told(small_kit, small_show + want) ==
        "show.toml:6:8: error: nothing in the kit is or serves as \"table\"\n"
        "  what = \"table\"\n"
        "         ^~~~~~~\n"
        "hint: add it to the \"serves\" of an item or a case, or correct it\n"
        "1 error\n");
}

TEST_CASE("A key that slipped under a section is sent to the top") {
  CHECK(told(small_kit, "[show]\ntitle = \"Evening\"\ndate = 2027-06-19\nkit = \"kit\"\n") ==
        "show.toml:1:1: error: the top of the file has no \"kit\"\n"
        "  [show]\n"
        "  ^\n"
        "hint: add kit = \"...\"\n"
        "show.toml:4:1: error: \"kit\" is not a key of [show]\n"
        "  kit = \"kit\"\n"
        "  ^~~\n"
        "hint: \"kit\" belongs at the top of the file, above the first section\n"
        "2 errors\n");
}

TEST_CASE("A floor that no rule and no sheet knows is most likely a slip, but no error") {
  CHECK(told(small_kit, small_show + "floor = \"gras\"\n") ==
        "show.toml:5:9: warning: no rule and no sheet knows the floor \"gras\"\n"
        "  floor = \"gras\"\n"
        "          ^~~~~~\n"
        "hint: did you mean \"grass\"?\n");
}

TEST_CASE("A supply has one phase or three") {
  CHECK(told(small_kit, small_show + "[[supply]]\nname = \"House\"\nphases = 3\n").empty());
  CHECK(told(small_kit, small_show + "[[supply]]\nname = \"House\"\nphases = 2\n") ==
        "show.toml:7:10: error: \"phases\" is out of range\n"
        "  phases = 2\n"
        "           ^\n"
        "hint: write phases = 1 or phases = 3\n"
        "1 error\n");
}

TEST_CASE("A whole number too long for any figure says so") {
  CHECK(told(small_kit, small_show + "crew = 99999999999999999999\n") ==
        "show.toml:5:28: error: this number is too long\n"
        "  crew = 99999999999999999999\n"
        "                             ^\n"
        "hint: a whole number has 18 digits at most: check it\n"
        "1 error\n");
}
