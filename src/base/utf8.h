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

/// Code points of well-formed text.
std::u32string decode(std::string_view text);
std::string encode(std::u32string_view text);
std::string encode(char32_t one);

/// Number of code points of well-formed text.
std::size_t length(std::string_view text);

/// Lower case for ASCII letters only: for comparing codes and words.
std::string lower(std::string_view text);

}  // namespace dunnage::utf8
