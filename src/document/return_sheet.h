// SPDX-License-Identifier: MIT
// Load-out: what must come home, by vehicle.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section a vehicle, in order of the kit's vehicles, what has no vehicle last. Blocks: facts, still-out,
/// rows, note, missing, end. With a tally its ticks are filled in, and still-out says what was not scanned.
Made return_sheet(const Context& context);

}  // namespace dunnage
