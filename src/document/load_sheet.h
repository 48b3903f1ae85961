// SPDX-License-Identifier: MIT
// Who loads: mass by vehicle against its ratings, and the order in which things go in.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section a vehicle. Blocks: facts, note, rows, end. Skipped where nothing has a vehicle.
Made load_sheet(const Context& context);

}  // namespace dunnage
