// SPDX-License-Identifier: MIT
#include "read/csv_bytes.h"

#include <algorithm>

#include "base/utf8.h"

namespace dunnage {
namespace {

constexpr char32_t replacement = 0xFFFD;
/// 0x80 to 0x9F of Windows-1252; 0: not assigned. All else is as in Latin-1.
constexpr char32_t windows[32] = {0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021,
                                  0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0,      0x017D, 0,
                                  0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022, 0x2013, 0x2014,
                                  0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

Recoded from_windows(std::string_view bytes) {
  Recoded out{{}, "Windows-1252", true, 0};
  std::u32string text;
  for (const char c : bytes) {
    const auto byte = static_cast<unsigned char>(c);
    char32_t sign = byte;
    if (byte >= 0x80 && byte < 0xA0) sign = windows[byte - 0x80];
    if (sign == 0 && byte != 0) {
      sign = replacement;
      ++out.lost;
    }
    text += sign;
  }
  out.text = utf8::encode(text);
  return out;
}

char32_t unit_at(std::string_view bytes, std::size_t at, bool big_end) {
  const auto first = static_cast<unsigned char>(bytes[at]), second = static_cast<unsigned char>(bytes[at + 1]);
  return static_cast<char32_t>(big_end ? first * 256 + second : second * 256 + first);
}

Recoded from_utf16(std::string_view bytes, bool big_end, bool guessed) {
  Recoded out{{}, "UTF-16", guessed, bytes.size() % 2};
  std::u32string text;
  for (std::size_t at = 0; at + 1 < bytes.size(); at += 2) {
    char32_t sign = unit_at(bytes, at, big_end);
    const bool high = sign >= 0xD800 && sign < 0xDC00, low = sign >= 0xDC00 && sign < 0xE000;
    if (high && at + 3 < bytes.size()) {
      const char32_t next = unit_at(bytes, at + 2, big_end);
      if (next >= 0xDC00 && next < 0xE000) {
        text += static_cast<char32_t>(0x10000 + (sign - 0xD800) * 0x400 + (next - 0xDC00));
        at += 2;
        continue;
      }
    }
    if (high || low) {
      sign = replacement;
      ++out.lost;
    }
    text += sign;
  }
  out.text = utf8::encode(text);
  return out;
}

/// Which half of the pairs is zero in the beginning of a text that has ASCII letters: 0 none, 1 first, 2 second.
int zero_half(std::string_view bytes) {
  std::size_t first = 0, second = 0;
  const std::size_t seen = std::min<std::size_t>(bytes.size(), 2000) / 2;
  for (std::size_t i = 0; i < seen; ++i) {
    first += bytes[2 * i] == '\0';
    second += bytes[2 * i + 1] == '\0';
  }
  if (seen > 0 && first * 2 > seen) return 1;
  return seen > 0 && second * 2 > seen ? 2 : 0;
}

Recoded decoded(std::string_view bytes) {
  if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
  if (bytes.starts_with("\xFF\xFE")) return from_utf16(bytes.substr(2), false, false);
  if (bytes.starts_with("\xFE\xFF")) return from_utf16(bytes.substr(2), true, false);
  if (const int zeros = zero_half(bytes)) return from_utf16(bytes, zeros == 1, true);
  if (!utf8::first_fault(bytes)) return {std::string(bytes), "UTF-8", false, 0};
  return from_windows(bytes);
}

}  // namespace

Recoded to_utf8(std::string_view bytes) {
  Recoded out = decoded(bytes);
  // Lines that end in a carriage return alone, as some programs still save them: places count line feeds.
  if (out.text.find('\n') == std::string::npos) std::replace(out.text.begin(), out.text.end(), '\r', '\n');
  return out;
}

}  // namespace dunnage
