// SPDX-License-Identifier: MIT
// Faces through FreeType, with the answer for each character kept: layout asks for widths by the million.
#include "font/faces.h"

#include <ft2build.h>
#include FT_FREETYPE_H
#include FT_ADVANCES_H

#include <array>
#include <cassert>
#include <cstdint>
#include <map>

#include "base/error.h"
#include "base/file_bytes.h"
#include "base/utf8.h"
#include "font/tables.h"

namespace dunnage {
namespace {

constexpr char32_t kReplacement = 0xFFFD;

/// Characters that one glyph after the other cannot set right (Unicode 15 blocks): control characters,
/// scripts that run from right to left or whose letters change shape, and what the PDF library's two-byte
/// codes cannot name.
bool beyond_us(char32_t c) {
  return c < 0x20 || (c >= 0x7F && c < 0xA0) || (c >= 0x0590 && c < 0x10A0) || (c >= 0x1780 && c < 0x18B0) ||
         (c >= 0xD800 && c < 0xF900) || (c >= 0xFB1D && c < 0xFE00) || (c >= 0xFE70 && c < 0xFF00) || c > 0xFFFD;
}

/// Which face sets a character of a role, and how wide. `by`: 0 not asked yet, 1 none, else the face + 2.
struct Setting {
  std::uint16_t by = 0;
  std::uint16_t width = 0;
};
constexpr std::uint16_t kNobody = 1, kFirst = 2;
using Block = std::array<Setting, 256>;

struct Loaded {
  std::string bytes;
  FT_Face face = nullptr;
  FaceMetrics metrics;
};

/// The height of a letter in font units, 0 when the face lacks it.
double letter_height(FT_Face face, char32_t letter) {
  const FT_UInt glyph = FT_Get_Char_Index(face, letter);
  if (glyph == 0 || FT_Load_Glyph(face, glyph, FT_LOAD_NO_SCALE) != 0) return 0;
  return static_cast<double>(face->glyph->metrics.horiBearingY);
}

/// Letter heights are measured: not every face states them.
FaceMetrics measured(FT_Face face) {
  const double em = face->units_per_EM;
  return {face->ascender / em, -face->descender / em, letter_height(face, U'H') / em, letter_height(face, U'x') / em};
}

std::string read_font(const FaceFile& file) {
  constexpr std::size_t most = 64u * 1024 * 1024;
  FileBytes read = file_bytes(file.file, most);
  if (read.fault != FileBytes::Fault::none || read.bytes.empty())
    throw WorldError("cannot read the font file " + file.file.string() + " (face \"" + file.role +
                     "\"): stage the fonts again");
  return std::move(read.bytes);
}

}  // namespace

struct Faces::Impl {
  std::vector<FaceFile> files;
  std::vector<std::vector<int>> chain;  ///< by face: itself, then its fallbacks
  FT_Library library = nullptr;
  std::vector<std::unique_ptr<Loaded>> loaded;
  std::vector<std::array<std::unique_ptr<Block>, 256>> settings;  ///< by face and high byte

  explicit Impl(std::vector<FaceFile> list) : files(std::move(list)), loaded(files.size()), settings(files.size()) {
    std::map<std::string, int> index;
    for (const FaceFile& f : files) {
      const bool fresh = index.emplace(f.role, static_cast<int>(index.size())).second;
      assert(fresh && "two faces play one role");
    }
    for (const FaceFile& f : files) {
      std::vector<int>& order = chain.emplace_back(1, index.at(f.role));
      for (const std::string& role : f.fallback) {
        assert(index.contains(role) && "a fallback is no role of the list");
        order.push_back(index.at(role));
      }
    }
  }
  Impl(const Impl&) = delete;
  Impl& operator=(const Impl&) = delete;
  ~Impl() {
    for (const auto& l : loaded)
      if (l && l->face) FT_Done_Face(l->face);
    if (library) FT_Done_FreeType(library);
  }

  const Loaded& load(int face);
  std::optional<int> advance(int face, char32_t c);
  Setting setting(int face, char32_t c);
};

const Loaded& Faces::Impl::load(int face) {
  assert(face >= 0 && face < static_cast<int>(files.size()));
  std::unique_ptr<Loaded>& slot = loaded[face];
  if (slot) return *slot;
  const FaceFile& file = files[face];
  auto fresh = std::make_unique<Loaded>();
  fresh->bytes = read_font(file);
  std::string fault = font_fault(fresh->bytes);
  if (fault.empty() && !library && FT_Init_FreeType(&library) != 0) throw WorldError("FreeType does not start");
  if (fault.empty() && (FT_New_Memory_Face(library, reinterpret_cast<const FT_Byte*>(fresh->bytes.data()),
                                           static_cast<FT_Long>(fresh->bytes.size()), 0, &fresh->face) != 0 ||
                        FT_Select_Charmap(fresh->face, FT_ENCODING_UNICODE) != 0))
    fault = "FreeType cannot read it";
  if (!fault.empty())
    throw WorldError("the font file " + file.file.string() + " (face \"" + file.role + "\") is damaged: " + fault);
  fresh->metrics = measured(fresh->face);
  slot = std::move(fresh);
  return *slot;
}

/// Of this very face. Cut to whole thousandths, as the PDF library cuts.
std::optional<int> Faces::Impl::advance(int face, char32_t c) {
  const Loaded& l = load(face);
  const FT_UInt glyph = FT_Get_Char_Index(l.face, c);
  FT_Fixed units = 0;
  if (glyph == 0 || FT_Get_Advance(l.face, glyph, FT_LOAD_NO_SCALE, &units) != 0) return std::nullopt;
  return static_cast<int>(units * 1000 / l.face->units_per_EM);
}

Setting Faces::Impl::setting(int face, char32_t c) {
  assert(face >= 0 && face < static_cast<int>(files.size()));
  if (c > 0xFFFF) return {kNobody, 0};
  std::unique_ptr<Block>& block = settings[face][c >> 8];
  if (!block) block = std::make_unique<Block>();
  Setting& known = (*block)[c & 0xFF];
  if (known.by != 0) return known;
  known.by = kNobody;
  if (beyond_us(c)) return known;
  for (int candidate : chain[face]) {
    const std::optional<int> width = advance(candidate, c);
    if (!width) continue;
    known = {static_cast<std::uint16_t>(candidate + kFirst), static_cast<std::uint16_t>(*width)};
    break;
  }
  return known;
}

Faces::Faces(std::vector<FaceFile> files) : impl_(std::make_unique<Impl>(std::move(files))) {}
Faces::~Faces() = default;
Faces::Faces(Faces&&) noexcept = default;
Faces& Faces::operator=(Faces&&) noexcept = default;

std::optional<int> Faces::find(std::string_view role) const {
  for (std::size_t i = 0; i < impl_->files.size(); ++i)
    if (impl_->files[i].role == role) return static_cast<int>(i);
  return std::nullopt;
}

int Faces::at(std::string_view role) const {
  const std::optional<int> found = find(role);
  assert(found && "no face plays this role");
  return *found;
}

std::vector<std::string> Faces::roles() const {
  std::vector<std::string> all;
  for (const FaceFile& f : impl_->files) all.push_back(f.role);
  return all;
}

Pieces Faces::pieces(int face, std::string_view text) const {
  Pieces result;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t begin = at;
    char32_t c = utf8::next(text, at);
    Setting s = impl_->setting(face, c);
    const bool stands_in = s.by == kNobody;
    if (stands_in) {
      result.missing.push_back(c);
      c = kReplacement;
      s = impl_->setting(face, c);
      if (s.by == kNobody) s = impl_->setting(face, c = U'?');
      if (s.by == kNobody) continue;
    }
    const int by = s.by - kFirst;
    if (result.pieces.empty() || result.pieces.back().face != by) {
      result.pieces.push_back({by, {}, 0});
      result.pieces.back().text.reserve(text.size() - begin);
    }
    Piece& piece = result.pieces.back();
    if (stands_in)
      piece.text += utf8::encode(c);
    else
      piece.text.append(text, begin, at - begin);
    piece.width += s.width;
    result.width += s.width;
  }
  return result;
}

int Faces::advance(int face, char32_t character) const {
  Setting s = impl_->setting(face, character);
  if (s.by == kNobody) s = impl_->setting(face, kReplacement);
  if (s.by == kNobody) s = impl_->setting(face, U'?');
  return s.width;
}

int Faces::width(int face, std::string_view text) const {
  int sum = 0;
  const Block* const known = impl_->settings[face][0].get();
  for (std::size_t at = 0; at < text.size();) {
    const auto byte = static_cast<unsigned char>(text[at]);
    if (byte < 0x80 && known && (*known)[byte].by >= kFirst) {  // nearly always
      sum += (*known)[byte].width;
      ++at;
    } else {
      sum += advance(face, utf8::next(text, at));
    }
  }
  return sum;
}

Paper Faces::width(int face, Paper size, std::string_view text) const { return size * (width(face, text) / 1000.0); }

bool Faces::has(int face, char32_t character) const { return impl_->setting(face, character).by == face + kFirst; }

std::uint16_t Faces::glyph(int face, char32_t character) const {
  return static_cast<std::uint16_t>(FT_Get_Char_Index(impl_->load(face).face, character));
}

const FaceMetrics& Faces::metrics(int face) const { return impl_->load(face).metrics; }

const FaceFile& Faces::file(int face) const {
  assert(face >= 0 && face < static_cast<int>(impl_->files.size()));
  return impl_->files[face];
}

std::string_view Faces::bytes(int face) const { return impl_->load(face).bytes; }

}  // namespace dunnage
