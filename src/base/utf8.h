// SPDX-License-Identifier: MIT
// UTF-8, checked once at the edge so that no later room meets broken text.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace dunnage::utf8 {

/// Offset of the first byte that is not well-formed UTF-8 (overlong forms, surrogates and values
/// above U+10FFFF included; Unicode 15, table 3-7), or nothing.
std::optional<std::size_t> first_fault(std::string_view text);
/// With U+FFFD in the place of each byte that is no part of a character.
std::string repaired(std::string_view text);

/// The code point of well-formed text that begins at byte `at`, which moves on to the one after; `next_long` knows
/// those beyond ASCII.
char32_t next_long(std::string_view text, std::size_t& at);
inline char32_t next(std::string_view text, std::size_t& at) {
  const auto byte = static_cast<unsigned char>(text[at]);
  if (byte >= 0x80) return next_long(text, at);
  ++at;
  return byte;
}

/// Code points of well-formed text.
std::u32string decode(std::string_view text);
std::string encode(std::u32string_view text);
std::string encode(char32_t one);

/// Number of code points of well-formed text.
std::size_t length(std::string_view text);

/// Lower case for ASCII letters only: for comparing codes and words.
std::string lower(std::string_view text);

}  // namespace dunnage::utf8
