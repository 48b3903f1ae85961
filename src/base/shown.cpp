// SPDX-License-Identifier: MIT
#include "base/shown.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "base/utf8.h"

namespace dunnage {
namespace {

struct Stretch {
  char32_t first, last;
};

/// UnicodeData.txt 15.0.0, general categories Cc, Cf, Zl and Zp, in order; and four without a glyph.
constexpr Stretch unprinted[] = {
    {0x0000, 0x001F},   {0x007F, 0x009F},   {0x00AD, 0x00AD},   {0x034F, 0x034F},   {0x0600, 0x0605},
    {0x061C, 0x061C},   {0x06DD, 0x06DD},   {0x070F, 0x070F},   {0x0890, 0x0891},   {0x08E2, 0x08E2},
    {0x115F, 0x1160},   {0x180E, 0x180E},   {0x200B, 0x200F},   {0x2028, 0x202E},   {0x2060, 0x206F},
    {0x3164, 0x3164},   {0xFEFF, 0xFEFF},   {0xFFA0, 0xFFA0},   {0xFFF0, 0xFFFB},   {0x110BD, 0x110BD},
    {0x110CD, 0x110CD}, {0x13430, 0x1343F}, {0x1BCA0, 0x1BCA3}, {0x1D173, 0x1D17A}, {0xE0000, 0xE0FFF}};

std::string spelled(char32_t sign) {
  switch (sign) {
    case U'\n':
      return "\\n";
    case U'\t':
      return "\\t";
    case U'\r':
      return "\\r";
    default:
      return sign > 0xFFFF ? fmt::format("\\U{:08X}", static_cast<unsigned>(sign))
                           : fmt::format("\\u{:04X}", static_cast<unsigned>(sign));
  }
}

/// `out` gets what stands at `at`, which moves on. `kept`: signs that stay.
void show_next(std::string_view text, std::size_t& at, std::string_view kept, std::string& out) {
  const auto byte = static_cast<unsigned char>(text[at]);
  if (byte < 0x80) {
    if ((byte >= 0x20 && byte != 0x7F) || kept.find(text[at]) != std::string_view::npos)
      out += text[at];
    else
      out += spelled(byte);
    ++at;
    return;
  }
  const std::size_t size = std::min<std::size_t>(byte >= 0xF0 ? 4 : byte >= 0xE0 ? 3 : 2, text.size() - at);
  const std::string_view whole = text.substr(at, size);
  if (utf8::first_fault(whole)) {
    out += fmt::format("\\x{:02X}", byte);
    ++at;
    return;
  }
  const char32_t sign = utf8::next(text, at);
  if (is_unprinted(sign))
    out += spelled(sign);
  else
    out += whole;
}

std::string shown_but(std::string_view text, std::string_view kept) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) show_next(text, at, kept, out);
  return out;
}

/// How many bytes at the end of `text` may be the beginning of a character.
std::size_t unfinished(std::string_view text) {
  for (std::size_t back = 1; back <= std::min<std::size_t>(3, text.size()); ++back) {
    const auto byte = static_cast<unsigned char>(text[text.size() - back]);
    if ((byte & 0xC0) == 0x80) continue;
    const std::size_t size = byte >= 0xF0 ? 4 : byte >= 0xE0 ? 3 : byte >= 0xC0 ? 2 : 1;
    return size > back ? back : 0;
  }
  return 0;
}

}  // namespace

bool is_unprinted(char32_t sign) {
  const auto* const at = std::lower_bound(std::begin(unprinted), std::end(unprinted), sign,
                                          [](const Stretch& one, char32_t c) { return one.last < c; });
  return at != std::end(unprinted) && sign >= at->first;
}

std::string shown(std::string_view text) { return shown_but(text, {}); }

ShownStream::ShownStream(std::ostream& to) : std::ostream(nullptr), guard_(to) { rdbuf(&guard_); }
ShownStream::~ShownStream() { guard_.finish(); }

void ShownStream::Guard::finish() {
  to_ << shown(begun_);
  begun_.clear();
}

std::streamsize ShownStream::Guard::xsputn(const char* text, std::streamsize size) {
  begun_.append(text, static_cast<std::size_t>(size));
  const std::size_t rest = unfinished(begun_);
  to_ << shown_but(std::string_view(begun_).substr(0, begun_.size() - rest), "\n\t");
  begun_.erase(0, begun_.size() - rest);
  return to_ ? size : 0;
}

ShownStream::Guard::int_type ShownStream::Guard::overflow(int_type sign) {
  if (traits_type::eq_int_type(sign, traits_type::eof())) return traits_type::not_eof(sign);
  const char one = traits_type::to_char_type(sign);
  return xsputn(&one, 1) == 1 ? sign : traits_type::eof();
}

int ShownStream::Guard::sync() {
  to_.flush();
  return to_ ? 0 : -1;
}

}  // namespace dunnage
