// SPDX-License-Identifier: MIT
#include "export/deflate.h"

#include <libdeflate.h>

#include <cassert>

#include "base/error.h"

namespace dunnage {
namespace {

constexpr std::uint32_t adler_base = 65521;  // the largest prime below 65536 (RFC 1950, 8.2)

/// The checksum of one stretch and another of `size` bytes after it.
std::uint32_t joined_adler(std::uint32_t first, std::uint32_t second, std::size_t size) {
  const std::uint64_t a1 = first & 0xFFFF, b1 = first >> 16, a2 = second & 0xFFFF, b2 = second >> 16;
  const std::uint64_t a = (a1 + a2 + adler_base - 1) % adler_base;
  const std::uint64_t b = (b1 + b2 + size % adler_base * (a1 + adler_base - 1)) % adler_base;
  return static_cast<std::uint32_t>(b << 16 | a);
}

void add_low_first(std::string& out, unsigned value) {
  out += static_cast<char>(value & 0xFF);
  out += static_cast<char>(value >> 8 & 0xFF);
}

}  // namespace

Deflater::Deflater(int level) : compressor_(libdeflate_alloc_compressor(level)) {
  if (!compressor_) throw WorldError("there is no memory left to make the PDF smaller");
}

Deflater::~Deflater() { libdeflate_free_compressor(compressor_); }

Deflated Deflater::deflate(std::string_view bytes) {
  const std::size_t bound = libdeflate_deflate_compress_bound(compressor_, bytes.size());
  if (room_.size() < bound) room_.resize(bound);
  const std::size_t size =
      libdeflate_deflate_compress(compressor_, bytes.data(), bytes.size(), room_.data(), room_.size());
  assert(size > 0);
  return {room_.substr(0, size), libdeflate_adler32(1, bytes.data(), bytes.size()), bytes.size()};
}

std::string zlib_stream(std::string_view first, const Deflated& rest) {
  assert(first.size() < 0x10000);
  std::string out = "\x78\x5E";  // deflate with a window of 32 KB, fast (RFC 1950, 2.2)
  if (!first.empty()) {          // a stored block that is not the last (RFC 1951, 3.2.4)
    out += '\0';
    add_low_first(out, static_cast<unsigned>(first.size()));
    add_low_first(out, ~static_cast<unsigned>(first.size()));
    out += first;
  }
  out += rest.bytes;
  const std::uint32_t adler = joined_adler(libdeflate_adler32(1, first.data(), first.size()), rest.adler, rest.size);
  for (const int shift : {24, 16, 8, 0}) out += static_cast<char>(adler >> shift & 0xFF);
  return out;
}

}  // namespace dunnage
