// SPDX-License-Identifier: MIT
// The tables of a TrueType file, as far as we must trust or mend them: the PDF library reads fonts without
// checking, and loses the parts of glyphs that are built of glyphs that are built of others.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace dunnage {

/// What is wrong with the file as a TrueType font with glyf outlines (OpenType 1.9), in a few words: "it has
/// no cmap table". Empty when every offset that is followed later stays inside its table.
std::string font_fault(std::string_view bytes);

/// The glyphs that `glyph` is built of, parts of parts included, each once, in rising order; empty for a
/// plain glyph. For a font without fault.
std::vector<std::uint16_t> glyph_parts(std::string_view bytes, std::uint16_t glyph);

/// A character and the glyph that draws it.
struct Mapped {
  std::uint16_t character, glyph;
};

/// The font with a character map of these alone, in rising order, and without the names of its glyphs: the PDF library
/// looks all of Unicode up in the map, and embeds both whole. For a font without fault.
std::string with_characters(std::string_view bytes, const std::vector<Mapped>& characters);

}  // namespace dunnage
