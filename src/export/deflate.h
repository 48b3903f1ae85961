// SPDX-License-Identifier: MIT
// Bytes made smaller, as PDF streams hold them (zlib format, RFC 1950 and 1951), through libdeflate: half the time of
// the PDF library's own deflating, and better in the same time.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

struct libdeflate_compressor;

namespace dunnage {

/// A deflated stretch that can still be given a beginning.
struct Deflated {
  std::string bytes;        ///< raw deflate
  std::uint32_t adler = 1;  ///< of what was deflated
  std::size_t size = 0;     ///< of what was deflated
};

class Deflater {
 public:
  /// Level 1 (fast) to 12 (small). Throws WorldError when there is no memory.
  explicit Deflater(int level);
  ~Deflater();
  Deflater(const Deflater&) = delete;
  Deflater& operator=(const Deflater&) = delete;

  Deflated deflate(std::string_view bytes);

 private:
  libdeflate_compressor* compressor_;
  std::string room_;
};

/// A stream of `first`, as it is, then what `rest` holds. Asserts that `first` is shorter than 64 KB.
std::string zlib_stream(std::string_view first, const Deflated& rest);

}  // namespace dunnage
