// SPDX-License-Identifier: MIT
// A one-line diagram: supply, bus, then a branch a circuit with its breaker, cable and loads.
#pragma once

#include "layout/galley.h"
#include "layout/setting.h"

namespace dunnage {

/// A strip for the supply and one a branch, each at least `height` high, so that many branches may go on over
/// a page: names in the block's `head`, the rest in its `type`.
void set_one_line(Setting& setting, const BlockSpec& spec, const picture::OneLine& diagram, Paper width,
                  Galley& galley);

}  // namespace dunnage
