// SPDX-License-Identifier: MIT
#include "read/scans.h"

#include <catch2/catch.hpp>

#include "telling.h"

using namespace dunnage;

namespace {

const std::string kit = small_house +
                        "[[case]]\ncode = \"FOH-1\"\nname = \"Front trunk\"\nform = \"trunk\"\n"
                        "[[case]]\ncode = \"BAG\"\nname = \"Stand bag\"\nform = \"bag\"\ncount = 3\n"
                        "[[case]]\ncode = \"TORCH\"\nname = \"Torches\"\nform = \"box\"\n";

/// "CODE@time(note)" of each scan; what no unit bears has a ? behind.
std::string read(const std::string& text) {
  Sources sources;
  Diagnostics diagnostics;
  const Catalogue c = make_catalogue(*read_kit_texts("kit", {{"k.toml", kit}}, sources, diagnostics));
  std::string out;
  for (const Scan& scan : read_scans("lists/ana.txt", text, Stage::out, c, sources, diagnostics)) {
    CHECK(scan.list == "ana");
    out += scan.typed + (scan.unit < 0 ? "?" : "") + (scan.time.empty() ? "" : "@" + scan.time) +
           (scan.note.empty() ? "" : "(" + scan.note + ")") + " ";
  }
  return out;
}

}  // namespace

TEST_CASE("bare codes, one or more a line, in any case of letters") {
  CHECK(read("FOH-1\r\nbag-2\n\n  \n# later\nBAG-3, TORCH\n") == "FOH-1 bag-2 BAG-3 TORCH ");
}

TEST_CASE("the whole text of a QR code is one scan, wherever a time stands") {
  const std::string qr =
      "FOH-1  Front trunk\nmass 83 lb (a1b2)\nroll; 2 people\n6 x Vocal mic\nbelongs to The house\nphone 555-0142\n";
  CHECK(read(qr + "BAG-1  Stand bag\nmass 20 lb (a1b2)\ncarry; 1 person\n" + qr) == "FOH-1 BAG-1 FOH-1 ");
  CHECK(read("2027-06-19 22:10:03,\"FOH-1  Front trunk\nmass 83 lb (x)\nphone 555-0142\"\nTORCH\n") ==
        "FOH-1@2027-06-19 22:10:03 TORCH ");
}

TEST_CASE("times before and after") {
  CHECK(read("19/06/2027, 22:10 FOH-1\nBAG-1 22:11\nBAG-2;2027-06-19T22:12:00Z\n10:13 PM TORCH\n") ==
        "FOH-1@19/06/2027, 22:10 BAG-1@22:11 BAG-2@2027-06-19T22:12:00Z TORCH@10:13 PM ");
}

TEST_CASE("words after a code, and lines of damage, are notes") {
  CHECK(read("FOH-1 wheel broken\nBAG-1 22:10 - strap torn\nBAG-2 Stand bag\nTORCH\ndamaged: one lamp\n") ==
        "FOH-1(wheel broken) BAG-1@22:10(strap torn) BAG-2 TORCH(damaged: one lamp) ");
}

TEST_CASE("slips and strangers stay as typed") {
  CHECK(read("FHO-1\nBAG\nBAG4\nXYZ-9  Their trunk\nmass 80 lb\nTROCH\n") == "FHO-1? BAG? BAG4? XYZ-9? TROCH? ");
}

TEST_CASE("UTF-16 lists are read, and an empty list is told") {
  CHECK(read(std::string("\xFF\xFE"
                         "T\0O\0R\0C\0H\0\n\0",
                         14)) == "TORCH ");
  Sources sources;
  Diagnostics diagnostics;
  CHECK(read_scans("a.txt", "\n\n", Stage::back, Catalogue{}, sources, diagnostics).empty());
  CHECK(render(diagnostics, sources).find("there is no scan in this list") != std::string::npos);
}
