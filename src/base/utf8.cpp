// SPDX-License-Identifier: MIT
// Well-formedness after Unicode 15.0, table 3-7 (well-formed UTF-8 byte sequences).
#include "base/utf8.h"

#include <cassert>

namespace dunnage::utf8 {
namespace {

unsigned byte_at(std::string_view text, std::size_t at) { return static_cast<unsigned char>(text[at]); }

/// Length of the sequence that begins at `at`, or 0 where it is not well formed.
std::size_t sequence(std::string_view text, std::size_t at) {
  const unsigned lead = byte_at(text, at);
  if (lead < 0x80) return 1;
  std::size_t count = 0;
  unsigned low = 0x80, high = 0xBF;  // of the second byte
  if (lead >= 0xC2 && lead <= 0xDF) {
    count = 2;
  } else if (lead >= 0xE0 && lead <= 0xEF) {
    count = 3;
    if (lead == 0xE0) low = 0xA0;   // overlong forms
    if (lead == 0xED) high = 0x9F;  // surrogates
  } else if (lead >= 0xF0 && lead <= 0xF4) {
    count = 4;
    if (lead == 0xF0) low = 0x90;   // overlong forms
    if (lead == 0xF4) high = 0x8F;  // above U+10FFFF
  } else {
    return 0;
  }
  if (at + count > text.size()) return 0;
  if (byte_at(text, at + 1) < low || byte_at(text, at + 1) > high) return 0;
  for (std::size_t i = 2; i < count; ++i)
    if ((byte_at(text, at + i) & 0xC0u) != 0x80) return 0;
  return count;
}

}  // namespace

std::optional<std::size_t> first_fault(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t count = sequence(text, at);
    if (count == 0) return at;
    at += count;
  }
  return std::nullopt;
}

std::string repaired(std::string_view text) {
  std::string out;
  while (const auto fault = first_fault(text)) {
    out.append(text.substr(0, *fault)).append("\uFFFD");
    text.remove_prefix(*fault + 1);
  }
  return out.append(text);
}

std::u32string decode(std::string_view text) {
  std::u32string out;
  out.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) out.push_back(next(text, at));
  return out;
}

char32_t next_long(std::string_view text, std::size_t& at) {
  const std::size_t count = sequence(text, at);
  assert(count > 0 && "text was checked when it was read");
  unsigned point = byte_at(text, at);
  if (count > 1) point &= 0x7Fu >> count;
  for (std::size_t i = 1; i < count; ++i) point = point << 6 | (byte_at(text, at + i) & 0x3Fu);
  at += count;
  return static_cast<char32_t>(point);
}

std::string encode(char32_t one) {
  const auto point = static_cast<unsigned>(one);
  std::string out;
  const auto put = [&out](unsigned byte) { out.push_back(static_cast<char>(byte)); };
  if (point < 0x80) {
    put(point);
  } else if (point < 0x800) {
    put(0xC0 | point >> 6);
    put(0x80 | (point & 0x3F));
  } else if (point < 0x10000) {
    put(0xE0 | point >> 12);
    put(0x80 | (point >> 6 & 0x3F));
    put(0x80 | (point & 0x3F));
  } else {
    put(0xF0 | point >> 18);
    put(0x80 | (point >> 12 & 0x3F));
    put(0x80 | (point >> 6 & 0x3F));
    put(0x80 | (point & 0x3F));
  }
  return out;
}

std::string encode(std::u32string_view text) {
  std::string out;
  for (const char32_t one : text) out += encode(one);
  return out;
}

std::size_t length(std::string_view text) {
  std::size_t count = 0;
  for (const char c : text)
    if ((static_cast<unsigned char>(c) & 0xC0u) != 0x80) ++count;
  return count;
}

std::string lower(std::string_view text) {
  std::string out(text);
  for (char& c : out)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return out;
}

}  // namespace dunnage::utf8
