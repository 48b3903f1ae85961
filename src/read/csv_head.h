// SPDX-License-Identifier: MIT
// Which row of a spreadsheet has the heads, and what key of the kit each head means.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "base/diagnostic.h"
#include "model/intake.h"
#include "model/key.h"
#include "read/csv_text.h"

namespace dunnage {

/// What the user said about columns, which goes before any guess.
struct ColumnWishes {
  std::vector<std::pair<std::string, std::string>> keys;   ///< head, key ("" for none)
  std::vector<std::pair<std::string, std::string>> units;  ///< key, unit of cells without one
};

struct CsvHead {
  std::size_t row = 0;  ///< index of the heads; rows begin after it
  std::vector<IntakeColumn> columns;
  std::vector<std::string> guesses;  ///< what was taken for granted of the columns
  std::vector<std::string> doubles;  ///< of two columns for one key: which was taken
};

/// Whether the column of this index, from 0, has no head: a cell there may be the end of a number with a comma.
bool headless(const std::vector<IntakeColumn>& columns, std::size_t at);

/// Keys that are no key of the kit: three columns that make a size, and a list of items one a row.
inline constexpr const char* length_part = "size: length";
inline constexpr const char* width_part = "size: width";
inline constexpr const char* height_part = "size: height";
inline constexpr const char* item_part = "holds: item";
inline constexpr const char* item_count_part = "holds: count";

/// The row among the first twenty whose cells mean most. A head is matched as the key itself, then by words that
/// people use for it; what stands in brackets or after a comma may be its unit. `keys`: of the section read.
/// Told as errors: no row of heads, a wish for a head or key that is not there.
CsvHead read_head(const CsvTable& table, const std::vector<Key>& keys, const ColumnWishes& wishes,
                  Diagnostics& diagnostics);

}  // namespace dunnage
