// SPDX-License-Identifier: MIT
// Mistakes of a [[vehicle]], and of a [[load]] against its vehicle, with the exact words that tell them.
#include <catch2/catch.hpp>

#include "telling.h"

using namespace dunnage;

namespace {

// The small kit has 11 lines; a van begins on line 12, and lines are added from line 16.
const std::string van = "[[vehicle]]\ncode = \"VAN\"\nkind = \"van\"\ncargo = \"4 x 2 x 2 m\"\n";
const std::string trailer = "[[vehicle]]\ncode = \"TRAILER\"\nkind = \"trailer\"\ncargo = \"3 x 2 x 2 m\"\n";

std::string of_van(const std::string& lines) { return told_of_kit({small_kit + van + lines}); }
std::string of_trailer(const std::string& lines) { return told_of_kit({small_kit + trailer + lines}); }

/// The small show has 4 lines.
std::string of_load(const std::string& loads) {
  return told(small_kit + van + trailer + "pulled_by = \"VAN\"\n", small_show + loads);
}

}  // namespace

TEST_CASE("A van and a trailer in order are told nothing") {
  CHECK(
      of_van("doors = [{ where = \"Back doors\", size = \"1 x 1 m\" }, { where = \"LEFT\", size = \"1 x 1 m\", at = "
             "\"50 cm\" }]\n"
             "blocks = [{ what = \"arch\", at = \"1 x 0 x 0 m\", size = \"80 x 20 x 25 cm\" }]\nlimit_tongue = \"200 "
             "kg\"\n"
             "empty_front = \"1290 kg\"\nwheelbase = \"360 cm\"\nfront_to_cargo = \"-10 cm\"\nhitch_behind = \"0 m\"\n")
          .empty());
  CHECK(of_trailer("limit_tongue = \"200 kg\"\nempty_tongue = \"0 kg\"\ncoupling_to_axle = \"305 "
                   "cm\"\ncoupling_to_cargo = \"-10 cm\"\n")
            .empty());
}

TEST_CASE("Axles stand apart, and each bears some of the empty vehicle") {
  CHECK(of_van("wheelbase = \"0 m\"\n") ==
        "k1.toml:16:13: error: \"wheelbase\" is out of range\n"
        "  wheelbase = \"0 m\"\n"
        "              ^~~~~\n"
        "hint: distance to an axle: 0.5 m to 20 m\n"
        "1 error\n");
  CHECK(of_van("hitch_behind = \"-20 cm\"\n") ==
        "k1.toml:16:16: error: \"hitch_behind\" is out of range\n"
        "  hitch_behind = \"-20 cm\"\n"
        "                 ^~~~~~~~\n"
        "hint: rear axle to hitch: 0 m to 10 m\n"
        "1 error\n");
  CHECK(of_trailer("coupling_to_axle = \"-3 m\"\n") ==
        "k1.toml:16:20: error: \"coupling_to_axle\" is out of range\n"
        "  coupling_to_axle = \"-3 m\"\n"
        "                     ^~~~~~\n"
        "hint: distance to an axle: 0.5 m to 20 m\n"
        "1 error\n");
  CHECK(of_trailer("empty_axle = \"0 kg\"\n") ==
        "k1.toml:16:14: error: \"empty_axle\" is nothing\n"
        "  empty_axle = \"0 kg\"\n"
        "               ^~~~~~\n"
        "hint: each axle bears some of the empty vehicle: weigh it\n"
        "1 error\n");
}

TEST_CASE("A key of a van is none of a trailer's, and the other way round") {
  CHECK(of_trailer("wheelbase = \"3 m\"\n") ==
        "k1.toml:16:1: error: \"wheelbase\" is a key of a van\n"
        "  wheelbase = \"3 m\"\n"
        "  ^~~~~~~~~\n"
        "hint: take it away, or write kind = \"van\"\n"
        "1 error\n");
  CHECK(of_van("tongue_from = 10\npulled_by = \"VAN\"\n") ==
        "k1.toml:16:1: error: \"tongue_from\" is a key of a trailer\n"
        "  tongue_from = 10\n"
        "  ^~~~~~~~~~~\n"
        "hint: take it away, or write kind = \"trailer\"\n"
        "k1.toml:17:1: error: \"pulled_by\" is a key of a trailer\n"
        "  pulled_by = \"VAN\"\n"
        "  ^~~~~~~~~\n"
        "hint: take it away, or write kind = \"trailer\"\n"
        "2 errors\n");
}

TEST_CASE("A trailer is pulled by a van, and not by itself") {
  CHECK(of_trailer("pulled_by = \"TRAILER\"\n") ==
        "k1.toml:16:13: error: \"TRAILER\" cannot pull itself\n"
        "  pulled_by = \"TRAILER\"\n"
        "              ^~~~~~~~~\n"
        "hint: name the van that pulls it\n"
        "1 error\n");
  CHECK(of_trailer("pulled_by = \"CART\"\n[[vehicle]]\ncode = \"CART\"\nkind = \"trailer\"\n") ==
        "k1.toml:16:13: error: \"CART\" is a trailer itself\n"
        "  pulled_by = \"CART\"\n"
        "              ^~~~~~\n"
        "hint: name the van that pulls this one\n"
        "k1.toml:17:1: note: the trailer\n"
        "  [[vehicle]]\n"
        "  ^~~~~~~~~~~\n"
        "1 error\n");
}

TEST_CASE("A door is in one wall of the cargo space") {
  CHECK(of_van("doors = [{ where = \"tailgate\", size = \"1 x 1 m\" }]\n") ==
        "k1.toml:16:20: error: \"tailgate\" names no wall of the cargo space\n"
        "  doors = [{ where = \"tailgate\", size = \"1 x 1 m\" }]\n"
        "                     ^~~~~~~~~~\n"
        "hint: write where = \"rear\", \"left side\" or \"right side\"\n"
        "1 error\n");
  CHECK(of_van("doors = [{ where = \"right side, near the rear\", size = \"1 x 1 m\" }]\n") ==
        "k1.toml:16:20: error: \"right side, near the rear\" names two walls\n"
        "  doors = [{ where = \"right side, near the rear\", size = \"1 x 1 m\" }]\n"
        "                     ^~~~~~~~~~~~~~~~~~~~~~~~~~~\n"
        "hint: write where = \"rear\", \"left side\" or \"right side\"\n"
        "1 error\n");
  CHECK(of_van("doors = [{ where = \"rear\", size = \"1 x 1 m\", at = \"1 m\" }]\n") ==
        "k1.toml:16:51: error: \"at\" is a key of a side door\n"
        "  doors = [{ where = \"rear\", size = \"1 x 1 m\", at = \"1 m\" }]\n"
        "                                                    ^~~~~\n"
        "hint: take it away: the rear door is where the cargo space ends\n"
        "1 error\n");
  CHECK(of_van("doors = [{ where = \"left side\", size = \"1 x 1 m\", at = \"4 m\" }]\n") ==
        "k1.toml:16:56: error: the door is beyond the cargo space\n"
        "  doors = [{ where = \"left side\", size = \"1 x 1 m\", at = \"4 m\" }]\n"
        "                                                         ^~~~~\n"
        "hint: \"at\" is from the bulkhead back to the door's nearer edge\n"
        "k1.toml:15:9: note: the cargo space\n"
        "  cargo = \"4 x 2 x 2 m\"\n"
        "          ^~~~~~~~~~~~~\n"
        "1 error\n");
}

TEST_CASE("A wheel arch reaches into the cargo space") {
  CHECK(of_van("blocks = [{ what = \"arch\", at = \"1 x 2 x 0 m\", size = \"80 x 20 x 25 cm\" }]\n") ==
        "k1.toml:16:33: error: the block lies outside the cargo space\n"
        "  blocks = [{ what = \"arch\", at = \"1 x 2 x 0 m\", size = \"80 x 20 x 25 cm\" }]\n"
        "                                  ^~~~~~~~~~~~~\n"
        "hint: \"at\" is back from the bulkhead x from the left wall x up from the floor\n"
        "k1.toml:15:9: note: the cargo space\n"
        "  cargo = \"4 x 2 x 2 m\"\n"
        "          ^~~~~~~~~~~~~\n"
        "1 error\n");
  CHECK(of_van("blocks = [{ what = \"arch\", at = \"1 x 1.9 x 0 m\", size = \"80 x 20 x 25 cm\" }]\n").empty());
}

TEST_CASE("A vehicle has one load, a load each stop and each piece once") {
  CHECK(of_load("[[load]]\nvehicle = \"VAN\"\n[[load]]\nvehicle = \"VAN\"\n") ==
        "show.toml:8:11: error: the load of \"VAN\" stands twice\n"
        "  vehicle = \"VAN\"\n"
        "            ^~~~~\n"
        "hint: put both under one [[load]]\n"
        "show.toml:6:11: note: it stands first here\n"
        "  vehicle = \"VAN\"\n"
        "            ^~~~~\n"
        "1 error\n");
  CHECK(of_load("[[load]]\nvehicle = \"VAN\"\nstops = [\"gate\", \"foh\", \"gate\"]\n") ==
        "show.toml:7:25: error: the stop \"gate\" stands twice\n"
        "  stops = [\"gate\", \"foh\", \"gate\"]\n"
        "                          ^~~~~~\n"
        "hint: a vehicle stops once at a place: keep one of the two\n"
        "show.toml:7:10: note: it stands first here\n"
        "  stops = [\"gate\", \"foh\", \"gate\"]\n"
        "           ^~~~~~\n"
        "1 error\n");
  CHECK(of_load("[[load]]\nvehicle = \"VAN\"\nstands = [{ code = \"BOX\", from_front = \"1 m\" },\n  { code = \"BOX\", "
                "from_front = \"2 m\" }]\n") ==
        "show.toml:8:12: error: the piece \"BOX\" stands twice\n"
        "    { code = \"BOX\", from_front = \"2 m\" }]\n"
        "             ^~~~~\n"
        "hint: a piece stands in one place: keep one of the two\n"
        "show.toml:7:20: note: it stands first here\n"
        "  stands = [{ code = \"BOX\", from_front = \"1 m\" },\n"
        "                     ^~~~~\n"
        "1 error\n");
}

TEST_CASE("A piece stands inside the cargo space") {
  CHECK(of_load("[[load]]\nvehicle = \"VAN\"\nstands = [{ code = \"BOX\", from_front = \"4.1 m\" }]\n") ==
        "show.toml:7:11: error: \"BOX\" stands beyond the cargo space\n"
        "  stands = [{ code = \"BOX\", from_front = \"4.1 m\" }]\n"
        "            ^~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~\n"
        "hint: \"from_front\" is from the bulkhead to its middle\n"
        "k1.toml:15:9: note: the cargo space of \"VAN\"\n"
        "  cargo = \"4 x 2 x 2 m\"\n"
        "          ^~~~~~~~~~~~~\n"
        "1 error\n");
  CHECK(of_load("[[load]]\nvehicle = \"VAN\"\nstands = [{ code = \"BOX\", from_front = \"4 m\" }]\n").empty());
}

TEST_CASE("A trailer comes to the stops in the order of its van") {
  CHECK(of_load("[[load]]\nvehicle = \"VAN\"\nstops = [\"gate\", \"foh\", \"stage\"]\n"
                "[[load]]\nvehicle = \"TRAILER\"\nstops = [\"foh\", \"shed\", \"gate\"]\n") ==
        "show.toml:10:25: error: \"TRAILER\" stops at \"gate\" after \"foh\", and \"VAN\", which pulls it, before\n"
        "  stops = [\"foh\", \"shed\", \"gate\"]\n"
        "                          ^~~~~~\n"
        "hint: give both the same order\n"
        "show.toml:7:10: note: the van's order\n"
        "  stops = [\"gate\", \"foh\", \"stage\"]\n"
        "           ^~~~~~\n"
        "1 error\n");
  CHECK(of_load("[[load]]\nvehicle = \"VAN\"\nstops = [\"gate\", \"foh\", \"stage\"]\n"
                "[[load]]\nvehicle = \"TRAILER\"\nstops = [\"gate\", \"shed\", \"stage\"]\n")
            .empty());
}
