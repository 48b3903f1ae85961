// SPDX-License-Identifier: MIT
// A planned load as pictures: from above and from the left, row by row from the door, and where its mass may lie.
#pragma once

#include <optional>

#include "document/load_order.h"
#include "model/picture.h"

namespace dunnage {

/// From the left and from above, the bulkhead at the left of the paper, with the load bars.
picture::BoxViews load_views(const Context& context, const BuiltLoad& built);
/// One view a row, as it is seen from the door.
picture::BoxViews row_views(const Context& context, const BuiltLoad& built);
/// What the plates bear over where the middle of the cargo lies, and a dot for each stage; nothing where a figure is
/// not given.
std::optional<picture::Chart> load_chart(const Context& context, const BuiltLoad& built);

}  // namespace dunnage
