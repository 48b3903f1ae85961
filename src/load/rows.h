// SPDX-License-Identifier: MIT
// Rows of columns from the bulkhead to the door, stop by stop, last off first in: a load as two people build it.
#pragma once

#include "load/cargo.h"

namespace dunnage {

/// What goes into a row first.
enum class RowOrder { heavy, strong, large, wide };  ///< strong: what bears others ahead of what does not

struct RowPlan {
  std::vector<StoodBox> boxes;  ///< `box` is a kind
  std::vector<int> left;        ///< by kind
  long work = 0;
};

/// The kinds, what goes first ahead.
std::vector<int> row_order(const Cargo& cargo, RowOrder order);
RowPlan build_rows(const Cargo& cargo, std::vector<int> order);

}  // namespace dunnage
