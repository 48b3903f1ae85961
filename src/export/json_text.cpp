// SPDX-License-Identifier: MIT
#include "export/json_text.h"

#include <fmt/format.h>

#include "base/shown.h"
#include "base/utf8.h"

namespace dunnage {

std::string json_text(const nlohmann::ordered_json& value) {
  const std::string plain = value.dump(2) + "\n";
  std::string out;
  out.reserve(plain.size());
  for (std::size_t at = 0; at < plain.size();) {
    const std::size_t from = at;
    const auto sign = static_cast<unsigned>(utf8::next(plain, at));
    if (sign < 0x7F || !is_unprinted(sign))  // below, the library has escaped all but its own line ends
      out += plain.substr(from, at - from);
    else if (sign <= 0xFFFF)
      out += fmt::format("\\u{:04x}", sign);
    else
      out += fmt::format("\\u{:04x}\\u{:04x}", 0xD800 + (sign - 0x10000) / 0x400, 0xDC00 + (sign - 0x10000) % 0x400);
  }
  return out;
}

}  // namespace dunnage
