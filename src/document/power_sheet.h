// SPDX-License-Identifier: MIT
// What hangs on which circuit of which supply, how much is left, and what is tested before doors.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section a supply. Blocks: over, unchecked, diagram, facts, circuits, legs, tests, cautions,
/// end, sources. Skipped where neither supplies nor circuits are given.
Made power_sheet(const Context& context);

}  // namespace dunnage
