// SPDX-License-Identifier: MIT
// What holds each structure down, for the people who build it and the one who signs that it stands as
// planned.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section a structure that stands in the wind. Blocks: over, unchecked, levels, plan, chart, legs,
/// facts, cautions, end, sources. Skipped where nothing stands in the wind.
Made ballast_sheet(const Context& context);

}  // namespace dunnage
