// SPDX-License-Identifier: MIT
// Strips for the console's tape ledge, one a bank, at the pitch of its faders.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section. Blocks: note, strips. A cell is blank for a channel that has no input. Skipped where no
/// inputs are given. Pitch and faders a bank are the layout's.
Made fader_strip(const Context& context);

}  // namespace dunnage
