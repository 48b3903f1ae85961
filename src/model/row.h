// SPDX-License-Identifier: MIT
// A row of a table. Packed, since a sheet may have hundreds of thousands of cells and all are held until they are set.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace dunnage {

/// What stands in one cell of a table. A tick box and a blank to write in are cells too.
struct Cell {
  enum class Kind { text, tick, blank } kind = Kind::text;
  std::string text;
  bool strong = false;  ///< bold whatever the column says
};
/// A cell as its row holds it; good while the row is neither changed nor moved.
struct CellView {
  Cell::Kind kind = Cell::Kind::text;
  std::string_view text;
  bool strong = false;
};

/// Cells in the order of the table's columns.
class Row {
 public:
  Row() = default;
  Row(std::initializer_list<Cell> cells) : Row(cells.begin(), cells.end()) {}
  explicit Row(const std::vector<Cell>& cells) : Row(cells.data(), cells.data() + cells.size()) {}

  std::vector<CellView> cells() const;
  /// The cell of a column; an empty text where there are fewer.
  CellView cell(std::size_t column) const;
  /// The same to be changed, for a new row.
  std::vector<Cell> unpacked() const;
  bool empty() const { return packed_.empty(); }

 private:
  Row(const Cell* begin, const Cell* end);
  std::string packed_;  ///< of each cell: length, kind and weight in bytes of seven bits; text
};

}  // namespace dunnage
