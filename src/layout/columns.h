// SPDX-License-Identifier: MIT
// How wide the columns of a table are: fixed, as wide as their content, or a share of what is left.
#pragma once

#include <vector>

#include "layout/setting.h"

namespace dunnage {

/// One column as it stands on paper. The first and the last are flush with the block's edges.
struct Column {
  const ColumnSpec* spec = nullptr;
  std::size_t source = 0;  ///< which of the document's columns
  std::string head;
  const ColumnSpec* under = nullptr;  ///< what stands in the same cells as a further line
  std::size_t under_source = 0;
  Paper x, width;  ///< of the cell
  Paper text_x, text_width;
};

/// The columns of a table that is `width` wide, in the layout's order. Problems as set_table says.
std::vector<Column> measure_columns(Setting& setting, const BlockSpec& spec, const block::Table& table, Paper width);

/// Side of the table's tick boxes, and the white between a box and its words.
Paper tick_side(const BlockSpec& spec);
Paper tick_gap(const BlockSpec& spec);

}  // namespace dunnage
