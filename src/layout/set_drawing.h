// SPDX-License-Identifier: MIT
// Which room draws which kind of picture: the list of all there are.
#pragma once

#include <vector>

#include "layout/galley.h"
#include "layout/setting.h"

namespace dunnage {

/// In the flow: charts and plans `height` high (70 mm where that is not given), the others as high as they
/// are.
void set_drawing(Setting& setting, const BlockSpec& spec, const block::Picture& picture, Paper width, Galley& galley);
/// In a box: charts and plans fill it; another that is higher is a problem.
void put_drawing(Setting& setting, const BlockSpec& spec, const block::Picture& picture, const Box& box,
                 std::vector<Ink>& ink);

}  // namespace dunnage
