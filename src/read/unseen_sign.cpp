// SPDX-License-Identifier: MIT
#include "read/unseen_sign.h"

#include "base/utf8.h"

namespace dunnage {
namespace {

bool is_unseen(char32_t c) {
  const bool control = c < 0x20 || (c >= 0x7F && c <= 0x9F);
  const bool no_width = c == 0x200B || c == 0x2060 || c == 0xFEFF;
  const bool parts_lines = c == 0x2028 || c == 0x2029;
  const bool turns = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  return control || no_width || parts_lines || turns;
}

}  // namespace

std::optional<char32_t> unseen_sign(std::string_view text) {
  std::optional<char32_t> line_end;
  for (std::size_t at = 0; at < text.size();) {
    const char32_t c = utf8::next(text, at);
    if (!is_unseen(c)) continue;
    if (c != U'\n' && c != U'\r') return c;
    line_end = U'\n';
  }
  return line_end;
}

}  // namespace dunnage
