// SPDX-License-Identifier: MIT
#include "base/toml_quote.h"

namespace dunnage {

std::string toml_quoted(std::string_view text) {
  constexpr std::string_view digits = "0123456789ABCDEF";
  std::string out = "\"";
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\')
      out += std::string("\\") + c;
    else if (c == '\n')
      out += "\\n";
    else if (c == '\r')
      out += "\\r";
    else if (c == '\t')
      out += "\\t";
    else if (byte < 0x20 || byte == 0x7F)
      out += std::string("\\u00") + digits[byte / 16] + digits[byte % 16];
    else
      out += c;
  }
  return out + "\"";
}

}  // namespace dunnage
