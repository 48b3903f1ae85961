// SPDX-License-Identifier: MIT
// What layout relies on: roles, fallback by character, and that nothing unprintable passes unseen.
#include "font/faces.h"

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>

#include "base/error.h"
#include "base/utf8.h"
#include "read/faces_file.h"

using namespace dunnage;

namespace {

const Faces& staged() {
  static const Faces faces(read_faces(SHARE_DIR "/fonts"));
  return faces;
}

}  // namespace

TEST_CASE("every role of the house has its face") {
  CHECK(staged().roles() ==
        std::vector<std::string>{"text", "text-bold", "narrow", "narrow-bold", "code", "symbols", "symbols-bold"});
  CHECK(staged().find("code") == 4);
  CHECK_FALSE(staged().find("decorative"));
}

TEST_CASE("a character is set by its own face, else by the first fallback that has it") {
  const int text = staged().at("text"), symbols = staged().at("symbols");
  const Pieces p = staged().pieces(text, "gust ≤ 25 mph");
  REQUIRE(p.pieces.size() == 3);
  CHECK(p.missing.empty());
  CHECK(p.pieces[0].text == "gust ");
  CHECK(p.pieces[0].face == text);
  CHECK(p.pieces[1].text == "≤");
  CHECK(p.pieces[1].face == symbols);
  CHECK(p.pieces[2].text == " 25 mph");
  CHECK(p.width == p.pieces[0].width + p.pieces[1].width + p.pieces[2].width);
  CHECK(p.width == staged().width(text, "gust ≤ 25 mph"));
  CHECK_FALSE(staged().has(text, U'≤'));
  CHECK(staged().has(symbols, U'≤'));
}

TEST_CASE("every face sets the letters of European languages without fallback") {
  for (const char* role : {"text", "text-bold", "narrow", "narrow-bold", "code"}) {
    INFO(role);
    const int face = staged().at(role);
    const Pieces p = staged().pieces(face, "Größe, señal, çà, Łódź, Київ, Ёлка, ΐδιος, Tiếng, 0O 1lI");
    CHECK(p.missing.empty());
    REQUIRE(p.pieces.size() == 1);
    CHECK(p.pieces[0].face == face);
  }
}

TEST_CASE("what cannot be set is named and a replacement stands for it") {
  const int text = staged().at("text");
  // A character that no face has; beyond two-byte codes; from right to left; a script that needs shaping; a
  // control.
  for (const char32_t c : {U'日', U'😀', U'ש', U'क', U'\t'}) {
    const Pieces p = staged().pieces(text, "a" + utf8::encode(c));
    CHECK(p.missing == std::vector<char32_t>{c});
    CHECK(p.pieces[0].text == "a\xEF\xBF\xBD");
    CHECK(p.width == staged().width(text, "a") + staged().advance(text, c));
  }
}

TEST_CASE("digits are as wide as each other, so that columns of figures stand") {
  for (const char* role : {"text", "text-bold", "narrow", "narrow-bold", "code"}) {
    const int face = staged().at(role);
    for (char32_t digit = U'1'; digit <= U'9'; ++digit)
      CHECK(staged().advance(face, digit) == staged().advance(face, U'0'));
  }
  const int narrow = staged().at("narrow"), text = staged().at("text");
  CHECK(staged().width(narrow, "Front-of-house trunk") < staged().width(text, "Front-of-house trunk"));
  CHECK(staged().width(text, 10 * unit::point, "00") / unit::point == Approx(11.44));
}

TEST_CASE("heights of a face are shares of its size") {
  for (const std::string& role : staged().roles()) {
    INFO(role);
    const FaceMetrics& m = staged().metrics(staged().at(role));
    CHECK(m.x_height > 0.5);
    CHECK(m.cap_height > m.x_height);
    CHECK(m.cap_height < 0.75);
    CHECK(m.ascent > m.cap_height);
    CHECK(m.descent > 0.2);
    CHECK(m.descent < 0.35);
  }
}

TEST_CASE("a font that is missing is told by its file and role, and only when it is needed") {
  const Faces faces({{"text", SHARE_DIR "/fonts/NotoSans-Regular.ttf", {"code"}}, {"code", "/nowhere/Code.ttf", {}}});
  CHECK(faces.width(0, "all here") > 0);
  CHECK_THROWS_WITH(faces.pieces(1, "x"),
                    "cannot read the font file /nowhere/Code.ttf (face \"code\"): stage the fonts again");
}

TEST_CASE("the list of faces is checked when it is read") {
  const std::filesystem::path folder = std::filesystem::temp_directory_path() / "dunnage-faces-test";
  std::filesystem::create_directories(folder);
  const std::string list = (folder / "faces.toml").string();
  const auto with = [&](const char* text) {
    std::ofstream(list) << text;
    return folder;
  };
  CHECK_THROWS_WITH(read_faces(folder / "none"), Catch::Contains("is missing: build the program again"));
  CHECK_THROWS_WITH(read_faces(with("")), list + " lists no face");
  CHECK_THROWS_WITH(read_faces(with("[[face]]\nrole = \"text\"")), list + ": a face has no role or no file");
  CHECK_THROWS_WITH(read_faces(with("[[face]]\nrole = \"text\"\nfile = \"a.ttf\"\nfallback = [\"signs\"]")),
                    list + ": \"text\" falls back to \"signs\", which is no role");
  CHECK_THROWS_WITH(read_faces(with("[[face]]\nrole = \"a\"\nfile = \"a\"\n[[face]]\nrole = \"a\"\nfile = \"b\"")),
                    list + ": the role \"a\" is given twice");
  std::filesystem::remove_all(folder);
}
