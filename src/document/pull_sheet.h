// SPDX-License-Identifier: MIT
// What each team takes off the shelves. The sheet for a stranger with a torch.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section a team that pulls anything, rows in order of the shelf walk, grouped by home.
/// Blocks: intro, facts, rows, stays-head, stays, ask, missing, end.
Made pull_sheet(const Context& context);

}  // namespace dunnage
