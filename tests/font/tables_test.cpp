// SPDX-License-Identifier: MIT
// A damaged font is told in words; it never reaches the PDF library, which would read and write beyond its
// tables.
#include "font/tables.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "base/error.h"
#include "font/faces.h"

using namespace dunnage;

namespace {

std::string font_bytes(const char* file) {
  std::ifstream in(std::string(SHARE_DIR "/fonts/") + file, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

/// Where a table begins, from the directory.
std::size_t start_of(const std::string& font, const std::string& tag) {
  const std::size_t entry = font.find(tag);
  std::size_t at = 0;
  for (std::size_t i = 8; i < 12; ++i) at = at << 8 | static_cast<unsigned char>(font[entry + i]);
  return at;
}

std::string fault_after(std::string font, std::size_t at, std::string bytes) {
  font.replace(at, bytes.size(), bytes);
  return font_fault(font);
}

}  // namespace

TEST_CASE("the staged fonts are sound") {
  for (const auto& entry : std::filesystem::directory_iterator(SHARE_DIR "/fonts"))
    if (entry.path().extension() == ".ttf") {
      INFO(entry.path());
      CHECK(font_fault(font_bytes(entry.path().filename().c_str())) == "");
    }
}

TEST_CASE("a damaged font is told in words") {
  const std::string font = font_bytes("JetBrainsMono-Bold.ttf");
  using namespace std::string_literals;
  CHECK(font_fault("") == "it is too short");
  CHECK(font_fault("OTTO\0\1 and so on"s) == "it is no TrueType font");
  CHECK(font_fault(font.substr(0, 100)) == "its list of tables is cut off");
  CHECK(font_fault(font.substr(0, font.size() / 2)).ends_with("table is cut off"));
  CHECK(fault_after(font, font.find("glyf"), "golf") == "it has no glyf table");
  CHECK(fault_after(font, start_of(font, "head") + 18, "\0\0"s) == "its units per em are out of range");
  CHECK(fault_after(font, start_of(font, "maxp") + 4, "\0\0"s) == "it has no glyphs");
  CHECK(fault_after(font, start_of(font, "hhea") + 34, "\xFF\xFF") == "its widths are cut off");
  CHECK(fault_after(font, start_of(font, "loca") + 8, "\xFF\xFF\xFF\xFF") == "its glyph index is damaged");
}

TEST_CASE("no damage to a byte of the tables makes the check itself fail") {
  const std::string font = font_bytes("JetBrainsMono-Bold.ttf");
  std::size_t told = 0;
  for (const char* tag : {"head", "maxp", "hhea", "loca", "cmap", "name"})
    for (std::size_t i = 0; i < 60; ++i) told += !fault_after(font, start_of(font, tag) + i, "\xFF").empty();
  for (std::size_t i = 0; i < 12 + 16 * 12; ++i) told += !fault_after(font, i, "\xFF").empty();
  CHECK(told > 50);
}

TEST_CASE("parts of parts are found: the dots and the letter of an accented letter built of both") {
  const std::string font = font_bytes("DejaVuSans.ttf");
  std::size_t built = 0, deepest = 0;
  for (std::uint16_t glyph = 0; glyph < 6000; ++glyph) {
    const auto parts = glyph_parts(font, glyph);
    built += !parts.empty();
    deepest = std::max(deepest, parts.size());
    for (std::uint16_t part : parts)
      for (std::uint16_t deeper : glyph_parts(font, part)) CHECK(std::ranges::binary_search(parts, deeper));
  }
  CHECK(built > 1000);
  CHECK(deepest >= 3);
}

TEST_CASE("a damaged font stops the run with its file, role and fault") {
  const std::filesystem::path path = std::filesystem::temp_directory_path() / "dunnage-damaged.ttf";
  std::ofstream(path, std::ios::binary) << font_bytes("JetBrainsMono-Bold.ttf").substr(0, 50000);
  const Faces faces({{"code", path, {}}});
  try {
    faces.width(0, "A");
    FAIL("a damaged font was taken");
  } catch (const WorldError& fault) {
    const std::string said = fault.what();
    CHECK(said.starts_with("the font file " + path.string() + " (face \"code\") is damaged: its "));
    CHECK(said.ends_with(" table is cut off"));
  }
  std::filesystem::remove(path);
}
