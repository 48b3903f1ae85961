// SPDX-License-Identifier: MIT
// Faces by role, and how wide text is in them: the same widths that the PDF will carry, so that what was
// measured is what is drawn.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/face.h"
#include "base/quantity.h"

namespace dunnage {

/// Heights of a face as shares of the type size, all positive; `descent` reaches below the baseline.
struct FaceMetrics {
  double ascent = 0, descent = 0, cap_height = 0, x_height = 0;
};

/// A stretch of text that one face sets.
struct Piece {
  int face = 0;
  std::string text;  ///< UTF-8
  int width = 0;     ///< thousandths of an em
};
struct Pieces {
  std::vector<Piece> pieces;
  /// What could not be set, in order: no face has it, it lies above U+FFFF, or its script needs shaping
  /// (Hebrew, Arabic, the scripts of India ...). A replacement character stands for it in `pieces`.
  std::vector<char32_t> missing;
  int width = 0;  ///< of all pieces, thousandths of an em
};

/// The faces of a run. A face is read from disk when it is first asked about. For one thread.
class Faces {
 public:
  /// Asserts that roles differ and that every fallback names a role of the list.
  explicit Faces(std::vector<FaceFile> files);
  ~Faces();
  Faces(Faces&&) noexcept;
  Faces& operator=(Faces&&) noexcept;

  /// The index of a role, as `ink::Words::face` wants it; nothing when no face plays it.
  std::optional<int> find(std::string_view role) const;
  /// The same for a role that has been checked: asserts that it is there.
  int at(std::string_view role) const;
  /// In the order of the list, which is the order of the indices.
  std::vector<std::string> roles() const;

  /// Splits well-formed UTF-8 by the face that has each character. No kerning, no ligatures.
  /// This and all below throw WorldError when a font file is missing or damaged.
  Pieces pieces(int face, std::string_view text) const;
  /// Advance of well-formed text with fallback, in thousandths of an em.
  int width(int face, std::string_view text) const;
  Paper width(int face, Paper size, std::string_view text) const;
  /// Advance of one character with fallback, in thousandths of an em.
  int advance(int face, char32_t character) const;
  /// Whether this very face has the character (fallback not asked).
  bool has(int face, char32_t character) const;
  /// The glyph of a character that this very face has; 0 where it has not.
  std::uint16_t glyph(int face, char32_t character) const;
  const FaceMetrics& metrics(int face) const;

  const FaceFile& file(int face) const;
  /// The font file's bytes, its tables checked.
  std::string_view bytes(int face) const;

 private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace dunnage
