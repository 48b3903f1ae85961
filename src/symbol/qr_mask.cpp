// SPDX-License-Identifier: MIT
// Rows and columns are scored alike: columns are the rows of the code turned over its main diagonal.
#include "symbol/qr_mask.h"

#include <bit>
#include <cstdlib>

namespace dunnage {
namespace {

constexpr std::size_t words = std::tuple_size_v<ModuleRow>;
// Penalties (ISO/IEC 18004, table 11).
constexpr long run_penalty = 3, block_penalty = 3, finder_penalty = 40, balance_penalty = 10;

bool get(const ModuleRow& row, int x) { return (row[static_cast<std::size_t>(x) / 64] >> (x % 64) & 1) != 0; }
void set(ModuleRow& row, int x, bool dark) {
  const std::uint64_t bit = std::uint64_t{1} << (x % 64);
  std::uint64_t& word = row[static_cast<std::size_t>(x) / 64];
  word = dark ? word | bit : word & ~bit;
}

Modules turned(const Modules& rows) {
  Modules out(rows.size(), ModuleRow{});
  for (std::size_t y = 0; y < rows.size(); ++y)
    for (std::size_t x = 0; x < rows.size(); ++x)
      if (get(rows[y], static_cast<int>(x))) set(out[x], static_cast<int>(y), true);
  return out;
}

/// Condition of each mask (ISO/IEC 18004, table 10); x is the column, y the row.
bool masked(int mask, int x, int y) {
  switch (mask) {
    case 0:
      return (x + y) % 2 == 0;
    case 1:
      return y % 2 == 0;
    case 2:
      return x % 3 == 0;
    case 3:
      return (x + y) % 3 == 0;
    case 4:
      return (x / 3 + y / 2) % 2 == 0;
    case 5:
      return x * y % 2 + x * y % 3 == 0;
    case 6:
      return (x * y % 2 + x * y % 3) % 2 == 0;
    default:
      return ((x + y) % 2 + x * y % 3) % 2 == 0;
  }
}

/// Middles of the alignment patterns along each side, by version, zeros behind them (ISO/IEC 18004:2015, annex E, table
/// E.1).
constexpr int alignment_table[41][7] = {{},
                                        {},
                                        {6, 18},
                                        {6, 22},
                                        {6, 26},
                                        {6, 30},
                                        {6, 34},
                                        {6, 22, 38},
                                        {6, 24, 42},
                                        {6, 26, 46},
                                        {6, 28, 50},
                                        {6, 30, 54},
                                        {6, 32, 58},
                                        {6, 34, 62},
                                        {6, 26, 46, 66},
                                        {6, 26, 48, 70},
                                        {6, 26, 50, 74},
                                        {6, 30, 54, 78},
                                        {6, 30, 56, 82},
                                        {6, 30, 58, 86},
                                        {6, 34, 62, 90},
                                        {6, 28, 50, 72, 94},
                                        {6, 26, 50, 74, 98},
                                        {6, 30, 54, 78, 102},
                                        {6, 28, 54, 80, 106},
                                        {6, 32, 58, 84, 110},
                                        {6, 30, 58, 86, 114},
                                        {6, 34, 62, 90, 118},
                                        {6, 26, 50, 74, 98, 122},
                                        {6, 30, 54, 78, 102, 126},
                                        {6, 26, 52, 78, 104, 130},
                                        {6, 30, 56, 82, 108, 134},
                                        {6, 34, 60, 86, 112, 138},
                                        {6, 30, 58, 86, 114, 142},
                                        {6, 34, 62, 90, 118, 146},
                                        {6, 30, 54, 78, 102, 126, 150},
                                        {6, 24, 50, 76, 102, 128, 154},
                                        {6, 28, 54, 80, 106, 132, 158},
                                        {6, 32, 58, 84, 110, 136, 162},
                                        {6, 26, 54, 82, 110, 138, 166},
                                        {6, 30, 58, 86, 114, 142, 170}};

/// Modules that carry data: all but the patterns, format and version.
Modules data_modules(int version, int side) {
  Modules data(static_cast<std::size_t>(side), ModuleRow{});
  const auto fill = [&](int left, int top, int width, int height, bool dark) {
    for (int y = top; y < top + height; ++y)
      for (int x = left; x < left + width; ++x) set(data[static_cast<std::size_t>(y)], x, dark);
  };
  fill(0, 0, side, side, true);
  fill(0, 6, side, 1, false);
  fill(6, 0, 1, side, false);
  fill(0, 0, 9, 9, false);
  fill(side - 8, 0, 8, 9, false);
  fill(0, side - 8, 9, 8, false);
  const int last = side - 7;
  for (const int x : alignment_table[version])
    for (const int y : alignment_table[version]) {
      const bool finder = (x == 6 && y == 6) || (x == 6 && y == last) || (x == last && y == 6);
      if (x > 0 && y > 0 && !finder) fill(x - 2, y - 2, 5, 5, false);
    }
  if (version >= 7) {
    fill(side - 11, 0, 3, 6, false);
    fill(0, side - 11, 6, 3, false);
  }
  return data;
}

/// Level and mask with their check bits, twice (ISO/IEC 18004, 7.9); into columns when `turn`.
void draw_format(Modules& rows, int level_bits, int mask, bool turn) {
  const int data = level_bits << 3 | mask;
  int rest = data;
  for (int i = 0; i < 10; ++i) rest = rest << 1 ^ (rest >> 9) * 0x537;
  const int bits = (data << 10 | rest) ^ 0x5412;
  const int side = static_cast<int>(rows.size());
  const auto put = [&](int x, int y, int bit) {
    set(rows[static_cast<std::size_t>(turn ? x : y)], turn ? y : x, (bits >> bit & 1) != 0);
  };
  for (int i = 0; i < 8; ++i) {
    put(8, i < 6 ? i : i + 1, i);
    put(side - 1 - i, 8, i);
  }
  for (int i = 8; i < 15; ++i) {
    put(i == 8 ? 7 : 14 - i, 8, i);
    put(8, side - 15 + i, i);
  }
}

/// Runs of one colour, and what looks like a finder, in one row.
long row_penalty(const ModuleRow& row, int side) {
  int runs[182];  // light, dark, light, ... light: a border stands on both sides
  int count = 0, begin = 0;
  long penalty = 0;
  ModuleRow changes;  // a module that differs from the one before; light stands before the first
  for (std::size_t w = 0; w < words; ++w) changes[w] = row[w] ^ (row[w] << 1 | (w > 0 ? row[w - 1] >> 63 : 0));
  const auto end_run = [&](int end) {
    const int length = end - begin;
    if (length >= 5) penalty += run_penalty + length - 5;
    runs[count++] = length;
    begin = end;
  };
  for (std::size_t w = 0; w < words; ++w)
    for (std::uint64_t left = changes[w]; left != 0; left &= left - 1) {
      const int at = static_cast<int>(w) * 64 + std::countr_zero(left);
      if (at < side) end_run(at);
    }
  end_run(side);
  if (count % 2 == 0) runs[count++] = 0;
  runs[0] += side;
  runs[count - 1] += side;
  for (int i = 3; i + 3 < count; i += 2) {  // the dark core, three times as long as the four runs around it
    const int n = runs[i - 1];
    if (runs[i] != 3 * n || runs[i + 1] != n || runs[i - 2] != n || runs[i + 2] != n) continue;
    const int before = runs[i - 3], after = runs[i + 3];
    penalty += finder_penalty * ((before >= 4 * n && after >= n) + (after >= 4 * n && before >= n));
  }
  return penalty;
}

/// Squares of two by two modules of one colour, by their upper left modules.
long blocks_between(const ModuleRow& a, const ModuleRow& b, int side) {
  long count = 0;
  for (std::size_t w = 0; w < words; ++w) {
    const auto next = [&](const ModuleRow& row) { return row[w] >> 1 | (w + 1 < words ? row[w + 1] << 63 : 0); };
    const std::uint64_t same = ~(a[w] ^ b[w]) & ~(a[w] ^ next(a)) & ~(b[w] ^ next(b));
    const int have = side - 1 - static_cast<int>(w) * 64;  // the last module begins no square
    if (have <= 0) break;
    count += std::popcount(have >= 64 ? same : same & ((std::uint64_t{1} << have) - 1));
  }
  return count;
}

long penalty_of(const Modules& rows, const Modules& columns) {
  const int side = static_cast<int>(rows.size());
  long penalty = 0, dark = 0;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    penalty += row_penalty(rows[i], side) + row_penalty(columns[i], side);
    if (i + 1 < rows.size()) penalty += block_penalty * blocks_between(rows[i], rows[i + 1], side);
    for (const std::uint64_t word : rows[i]) dark += std::popcount(word);
  }
  const long total = static_cast<long>(side) * side;
  const long steps = (std::labs(dark * 20 - total * 10) + total - 1) / total - 1;  // of 5% away from half
  return penalty + steps * balance_penalty;
}

/// A mask over the modules that carry data; by column when `turn`.
Modules mask_over(const Modules& data, int mask, bool turn) {
  Modules out(data.size(), ModuleRow{});
  for (std::size_t y = 0; y < data.size(); ++y)
    for (std::size_t x = 0; x < data.size(); ++x) {
      const int a = static_cast<int>(x), b = static_cast<int>(y);
      if (turn ? masked(mask, b, a) : masked(mask, a, b)) set(out[y], a, true);
    }
  for (std::size_t y = 0; y < data.size(); ++y)
    for (std::size_t w = 0; w < words; ++w) out[y][w] &= data[y][w];
  return out;
}

/// What depends on the version alone: the eight masks, by row and by column.
struct Masks {
  std::array<Modules, 8> rows, columns;
};

Masks masks_of(int version, int side) {
  Masks masks;
  const Modules data = data_modules(version, side);
  for (int mask = 0; mask < 8; ++mask) {
    masks.rows[static_cast<std::size_t>(mask)] = mask_over(data, mask, false);
    masks.columns[static_cast<std::size_t>(mask)] = mask_over(data, mask, true);  // patterns lie the same both ways
  }
  return masks;
}

void change(Modules& code, const Modules& mask) {
  for (std::size_t y = 0; y < code.size(); ++y)
    for (std::size_t w = 0; w < words; ++w) code[y][w] ^= mask[y][w];
}

}  // namespace

Modules best_masked(const Modules& first, int version, int level_bits) {
  thread_local std::array<Masks, 41> known;  // by version, made when first asked for
  Masks& masks = known[static_cast<std::size_t>(version)];
  if (masks.rows[0].empty()) masks = masks_of(version, static_cast<int>(first.size()));
  Modules rows = first;
  change(rows, masks.rows[0]);
  const Modules bare = rows;
  const Modules bare_columns = turned(bare);
  Modules columns, best;
  long least = 0;
  for (int mask = 0; mask < 8; ++mask) {
    rows = bare;
    change(rows, masks.rows[static_cast<std::size_t>(mask)]);
    draw_format(rows, level_bits, mask, false);
    columns = bare_columns;
    change(columns, masks.columns[static_cast<std::size_t>(mask)]);
    draw_format(columns, level_bits, mask, true);
    const long penalty = penalty_of(rows, columns);
    if (mask > 0 && penalty >= least) continue;
    least = penalty;
    best = rows;
  }
  return best;
}

}  // namespace dunnage
