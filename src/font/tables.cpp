// SPDX-License-Identifier: MIT
// Reading big-endian tables without ever leaving them. Layout of the tables: OpenType specification 1.9.
#include "font/tables.h"

#include <cassert>
#include <cstddef>
#include <optional>
#include <set>

namespace dunnage {
namespace {

/// A stretch of the file; reading beyond it is our mistake.
struct Table {
  std::string_view bytes;
  std::size_t size() const { return bytes.size(); }
  std::uint16_t u16(std::size_t at) const {
    assert(at + 2 <= bytes.size());
    return static_cast<std::uint16_t>(static_cast<unsigned char>(bytes[at]) << 8 |
                                      static_cast<unsigned char>(bytes[at + 1]));
  }
  std::uint32_t u32(std::size_t at) const { return static_cast<std::uint32_t>(u16(at)) << 16 | u16(at + 2); }
};

constexpr std::size_t kDirectoryEntry = 16;

/// The table called `tag`; nothing when there is none or it does not lie inside the file.
std::optional<Table> table(std::string_view bytes, std::string_view tag) {
  const Table file{bytes};
  const std::size_t count = file.u16(4);
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t entry = 12 + i * kDirectoryEntry;
    if (bytes.substr(entry, 4) != tag) continue;
    const std::size_t offset = file.u32(entry + 8), length = file.u32(entry + 12);
    if (offset > bytes.size() || length > bytes.size() - offset) return std::nullopt;
    return Table{bytes.substr(offset, length)};
  }
  return std::nullopt;
}

std::string directory_fault(std::string_view bytes) {
  if (bytes.size() < 12) return "it is too short";
  const Table file{bytes};
  const std::uint32_t kind = file.u32(0);
  if (kind != 0x00010000 && kind != 0x74727565) return "it is no TrueType font";  // the second spells "true"
  const std::size_t count = file.u16(4);
  if (count == 0 || 12 + count * kDirectoryEntry > bytes.size()) return "its list of tables is cut off";
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t entry = 12 + i * kDirectoryEntry;
    const std::size_t offset = file.u32(entry + 8), length = file.u32(entry + 12);
    if (offset > bytes.size() || length > bytes.size() - offset)
      return "its " + std::string(bytes.substr(entry, 4)) + " table is cut off";
  }
  return {};
}

std::string sizes_fault(std::string_view bytes) {
  struct Least {
    const char* tag;
    std::size_t size;
  };
  for (const auto& [tag, size] :
       {Least{"head", 54}, Least{"maxp", 6}, Least{"hhea", 36}, Least{"hmtx", 4}, Least{"loca", 4}, Least{"glyf", 0},
        Least{"cmap", 4}, Least{"name", 6}, Least{"OS/2", 78}, Least{"post", 32}}) {
    const std::optional<Table> found = table(bytes, tag);
    if (!found) return std::string("it has no ") + tag + " table";
    if (found->size() < size) return std::string("its ") + tag + " table is too short";
  }
  return {};
}

std::size_t glyph_count(std::string_view bytes) { return table(bytes, "maxp")->u16(4); }

std::size_t glyph_offset(std::string_view bytes, std::size_t glyph) {
  const Table loca = *table(bytes, "loca");
  const bool wide = table(bytes, "head")->u16(50) != 0;
  return wide ? loca.u32(4 * glyph) : std::size_t{2} * loca.u16(2 * glyph);
}

std::string metrics_fault(std::string_view bytes) {
  const Table head = *table(bytes, "head");
  const std::size_t em = head.u16(18);
  if (em < 16 || em > 16384) return "its units per em are out of range";
  if (head.u16(50) > 1) return "its glyph index has an unknown form";
  const std::size_t glyphs = glyph_count(bytes), widths = table(bytes, "hhea")->u16(34);
  if (glyphs == 0) return "it has no glyphs";
  if (widths == 0 || widths > glyphs || table(bytes, "hmtx")->size() < 4 * widths + 2 * (glyphs - widths))
    return "its widths are cut off";
  return {};
}

std::string outlines_fault(std::string_view bytes) {
  const std::size_t glyphs = glyph_count(bytes), end = table(bytes, "glyf")->size();
  const std::size_t entry = table(bytes, "head")->u16(50) != 0 ? 4 : 2;
  if (table(bytes, "loca")->size() < entry * (glyphs + 1)) return "its glyph index is cut off";
  std::size_t before = 0;
  for (std::size_t i = 0; i <= glyphs; ++i) {
    const std::size_t offset = glyph_offset(bytes, i);
    if (offset < before || offset > end) return "its glyph index is damaged";
    before = offset;
  }
  return {};
}

/// The library follows platform 3, encoding 1, format 4 and nothing else.
std::string characters_fault(std::string_view bytes) {
  const Table cmap = *table(bytes, "cmap");
  const std::size_t count = cmap.u16(2);
  if (cmap.size() < 4 + 8 * count) return "its cmap table is cut off";
  for (std::size_t i = 0; i < count; ++i) {
    if (cmap.u16(4 + 8 * i) != 3 || cmap.u16(6 + 8 * i) != 1) continue;
    const std::size_t at = cmap.u32(8 + 8 * i);
    if (at + 14 > cmap.size() || cmap.u16(at) != 4) return "its character map has an unknown form";
    const std::size_t length = cmap.u16(at + 2), segments = cmap.u16(at + 6);
    if (segments == 0 || segments % 2 != 0 || length < 16 + 4 * segments || at + length > cmap.size())
      return "its character map is cut off";
    return {};
  }
  return "it has no character map for Unicode";
}

std::string names_fault(std::string_view bytes) {
  const Table names = *table(bytes, "name");
  const std::size_t count = names.u16(2), strings = names.u16(4);
  if (names.size() < 6 + 12 * count || strings > names.size()) return "its names are cut off";
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t length = names.u16(14 + 12 * i), offset = names.u16(16 + 12 * i);
    if (strings + offset + length > names.size()) return "its names are cut off";
  }
  return {};
}

// Flags of one part of a composite glyph ("glyf", component glyph flags).
constexpr std::uint16_t kWords = 0x0001, kScale = 0x0008, kMore = 0x0020, kTwoScales = 0x0040, kMatrix = 0x0080;

/// The parts that one glyph names itself; nothing when its record runs out of its bytes.
std::optional<std::vector<std::uint16_t>> own_parts(std::string_view bytes, std::size_t glyph) {
  const std::size_t from = glyph_offset(bytes, glyph), to = glyph_offset(bytes, glyph + 1);
  const Table outline{table(bytes, "glyf")->bytes.substr(from, to - from)};
  std::vector<std::uint16_t> parts;
  if (outline.size() == 0) return parts;
  if (outline.size() < 10) return std::nullopt;
  if (static_cast<std::int16_t>(outline.u16(0)) >= 0) return parts;
  std::size_t at = 10;
  std::uint16_t flags = kMore;
  while ((flags & kMore) != 0) {
    if (at + 4 > outline.size()) return std::nullopt;
    flags = outline.u16(at);
    parts.push_back(outline.u16(at + 2));
    at += 4 + ((flags & kWords) != 0 ? 4u : 2u);
    at += (flags & kScale) != 0 ? 2u : (flags & kTwoScales) != 0 ? 4u : (flags & kMatrix) != 0 ? 8u : 0u;
  }
  return parts;
}

std::string composites_fault(std::string_view bytes) {
  const std::size_t glyphs = glyph_count(bytes);
  for (std::size_t i = 0; i < glyphs; ++i) {
    const auto parts = own_parts(bytes, i);
    if (!parts) return "a glyph is cut off";
    for (std::uint16_t part : *parts)
      if (part >= glyphs) return "a glyph is built of one that is not there";
  }
  return {};
}

}  // namespace

std::string font_fault(std::string_view bytes) {
  for (const auto fault :
       {directory_fault, sizes_fault, metrics_fault, outlines_fault, characters_fault, names_fault, composites_fault})
    if (std::string found = fault(bytes); !found.empty()) return found;
  return {};
}

std::vector<std::uint16_t> glyph_parts(std::string_view bytes, std::uint16_t glyph) {
  std::set<std::uint16_t> found;
  std::vector<std::uint16_t> open{glyph};
  while (!open.empty()) {
    const std::uint16_t next = open.back();
    open.pop_back();
    const auto parts = own_parts(bytes, next);
    assert(parts);
    for (std::uint16_t part : *parts)
      if (found.insert(part).second) open.push_back(part);
  }
  return {found.begin(), found.end()};
}

namespace {

void add16(std::string& out, std::size_t value) {
  out += static_cast<char>(value >> 8 & 0xFF);
  out += static_cast<char>(value & 0xFF);
}
void add32(std::string& out, std::size_t value) {
  add16(out, value >> 16);
  add16(out, value);
}

/// A cmap table of format 4 for platform 3, encoding 1: stretches of characters with a fixed distance to their glyphs.
std::string small_map(const std::vector<Mapped>& characters) {
  struct Stretch {
    std::uint16_t first, last, delta;
  };
  std::vector<Stretch> stretches;
  for (const auto& [character, glyph] : characters) {
    const auto delta = static_cast<std::uint16_t>(glyph - character);
    if (!stretches.empty() && stretches.back().last + 1 == character && stretches.back().delta == delta)
      stretches.back().last = character;
    else
      stretches.push_back({character, character, delta});
  }
  stretches.push_back({0xFFFF, 0xFFFF, 1});
  std::string out("\0\0\0\1\0\3\0\1\0\0\0\x0C", 12);  // one map, at byte 12
  add16(out, 4);
  add16(out, 16 + 8 * stretches.size());
  add16(out, 0);
  add16(out, 2 * stretches.size());
  for (int i = 0; i < 3; ++i) add16(out, 0);  // hints for a binary search, which nobody follows
  for (const Stretch& s : stretches) add16(out, s.last);
  add16(out, 0);
  for (const Stretch& s : stretches) add16(out, s.first);
  for (const Stretch& s : stretches) add16(out, s.delta);
  for (std::size_t i = 0; i < stretches.size(); ++i) add16(out, 0);
  return out;
}

}  // namespace

std::string with_characters(std::string_view bytes, const std::vector<Mapped>& characters) {
  const std::string map = small_map(characters);
  std::string post(table(bytes, "post")->bytes.substr(0, 32));
  post.replace(0, 4, std::string("\0\3\0\0", 4));  // version 3: no names
  const Table file{bytes};
  const std::size_t count = file.u16(4);
  std::string directory(bytes.substr(0, 12)), body;
  for (std::size_t i = 0; i < count; ++i) {
    const std::string_view tag = bytes.substr(12 + i * kDirectoryEntry, 4);
    const std::string_view old =
        bytes.substr(file.u32(12 + i * kDirectoryEntry + 8), file.u32(12 + i * kDirectoryEntry + 12));
    const std::string_view kept = tag == "cmap" ? std::string_view(map) : tag == "post" ? std::string_view(post) : old;
    directory += tag;
    add32(directory, 0);  // a checksum that the library writes anew
    add32(directory, 12 + count * kDirectoryEntry + body.size());
    add32(directory, kept.size());
    body += kept;
    body.resize((body.size() + 3) / 4 * 4);
  }
  return directory + body;
}

}  // namespace dunnage
