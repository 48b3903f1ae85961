// SPDX-License-Identifier: MIT
// What is plugged into the console, by channel or by performer as the show says.
#pragma once

#include "document/context.h"

namespace dunnage {

/// Blocks: console, rows, mixes-head and mixes (where the mix sheet would be skipped), end.
/// Columns that nobody typed anything for are left out, so that the notes have room.
Made input_list(const Context& context);

}  // namespace dunnage
