// SPDX-License-Identifier: MIT
// Spreadsheets are saved in whatever the office program liked: to UTF-8, before anything else looks at them.
#pragma once

#include <string>
#include <string_view>

namespace dunnage {

struct Recoded {
  std::string text;      ///< UTF-8, without a byte order mark
  std::string encoding;  ///< "UTF-8", "UTF-16", "Windows-1252"
  bool guessed = false;  ///< no byte order mark, and not UTF-8
  std::size_t lost = 0;  ///< signs that the encoding does not have, now U+FFFD
};

/// UTF-8 and UTF-16 by their marks; UTF-16 without one by its zero bytes; UTF-8 where it is well formed; else
/// Windows-1252 (Unicode mapping CP1252.TXT, table version 2.01).
Recoded to_utf8(std::string_view bytes);

}  // namespace dunnage
