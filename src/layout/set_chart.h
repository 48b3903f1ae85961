// SPDX-License-Identifier: MIT
// Curves over axes, drawn for a copier: lines differ by their dashes and are named where they end.
#pragma once

#include <vector>

#include "layout/setting.h"
#include "model/page.h"

namespace dunnage {

/// The chart in its box: names in the block's `head`, figures and axes in its `type`. A box without room for
/// the curves themselves is a problem.
void put_chart(Setting& setting, const BlockSpec& spec, const picture::Chart& chart, const Box& box,
               std::vector<Ink>& ink);

}  // namespace dunnage
