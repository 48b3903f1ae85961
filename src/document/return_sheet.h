// SPDX-License-Identifier: MIT
// Load-out: what must come home, by vehicle.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section a vehicle, in order of the kit's vehicles, what has no vehicle last. Blocks: facts, rows, note,
/// missing, end.
Made return_sheet(const Context& context);

}  // namespace dunnage
