// SPDX-License-Identifier: MIT
// Blocks that stand in boxes of their own, on labels and cards: there is no next page, so what has no room is
// told.
#pragma once

#include <vector>

#include "layout/setting.h"
#include "model/page.h"

namespace dunnage {

/// The blocks of `section` that the layout gives an area, set into their shares of `inner`. A block that does
/// not fit its area is a problem, unless its style cuts; two blocks in one area are one too.
void set_areas(Setting& setting, const Layout& layout, const Section& section, const Box& inner, std::vector<Ink>& ink);

/// How far down the areas reach, as a share of the inner height: 0 where there are none.
double areas_reach(const Layout& layout, const Section& section);

/// A problem for each block that the layout neither places nor leaves out.
void tell_unplaced(Setting& setting, const Layout& layout, const Section& section);

/// Does this part of the layout set that block?
bool places(const BlockSpec& spec, const std::string& block_id);

}  // namespace dunnage
