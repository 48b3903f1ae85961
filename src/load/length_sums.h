// SPDX-License-Identifier: MIT
// Which lengths the boxes that are left can add up to, as a row of bits.
#pragma once

#include <bit>
#include <cstdint>
#include <vector>

namespace dunnage {

class LengthSums {
 public:
  /// Sums from 0 to `length`, of nothing yet.
  void clear(int length) {
    words_ = static_cast<std::size_t>(length) / 64 + 1;
    bits_.assign(words_, 0);
    bits_[0] = 1;
  }

  /// `count` more pieces of `size` each may join any sum.
  void add(int size, int count) {
    int step = 1;
    while (count > 0) {
      const int take = step < count ? step : count;
      const std::int64_t by = std::int64_t{take} * size;
      if (by / 64 >= static_cast<std::int64_t>(words_)) {
        // Doubled too far: what is left of the count reaches sums by single steps, which earlier rounds made.
        if (take == 1) return;
        count = take - 1;
        step = 1;
        continue;
      }
      shift_in(static_cast<std::size_t>(by));
      count -= take;
      step *= 2;
    }
  }

  /// The largest sum up to `most`.
  int down(int most) const {
    std::size_t word = static_cast<std::size_t>(most) / 64;
    const std::uint64_t* bits = bits_.data();
    std::uint64_t here = bits[word] & (~std::uint64_t{0} >> (63 - most % 64));
    while (here == 0) here = bits[--word];  // bit 0 is always set
    return static_cast<int>(word) * 64 + 63 - std::countl_zero(here);
  }

 private:
  void shift_in(std::size_t by) {
    const std::size_t whole = by / 64, part = by % 64;
    std::uint64_t* bits = bits_.data();
    if (part == 0) {
      for (std::size_t i = words_; i-- > whole;) bits[i] |= bits[i - whole];
      return;
    }
    for (std::size_t i = words_; i-- > whole + 1;)
      bits[i] |= (bits[i - whole] << part) | (bits[i - whole - 1] >> (64 - part));
    bits[whole] |= bits[0] << part;
  }

  std::size_t words_ = 0;
  std::vector<std::uint64_t> bits_;
};

}  // namespace dunnage
