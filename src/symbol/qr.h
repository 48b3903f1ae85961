// SPDX-License-Identifier: MIT
// QR codes (ISO/IEC 18004) of plain UTF-8 text: a thin skin over the packaged generator, and the rule for a
// text that is longer than the label has room for.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace dunnage {

struct QrCode {
  std::string text;        ///< what a reader gets, exactly
  int side = 0;            ///< modules, without the quiet zone
  std::vector<bool> dark;  ///< row by row from the top
  int version = 0;         ///< 1 to 40
  char correction = 'M';   ///< L, M, Q or H: as asked, or better where it costs no room
};

/// Modules kept clear on each side (ISO/IEC 18004).
inline constexpr int qr_quiet = 4;

/// The smallest code of `text`, at most `max_side` modules (21 to 177); nothing when it needs more.
/// Asserts that the correction is L, M, Q or H.
std::optional<QrCode> qr(std::string_view text, char correction, int max_side);

struct QrFit {
  QrCode code;
  int dropped = 0;  ///< lines left out
};

/// The code of as many lines of `text` as `max_side` modules hold. Whole lines are dropped from the end, but
/// the last `keep_last` of them only when nothing else is left to drop; in their place stands `more` with {n}
/// replaced by their number (nothing when `more` is empty). At the least the first line alone: nothing when
/// even that does not fit.
std::optional<QrFit> qr_fit(std::string_view text, std::string_view more, char correction, int max_side,
                            int keep_last = 0);

}  // namespace dunnage
