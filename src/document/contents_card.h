// SPDX-License-Identifier: MIT
// The card inside the lid: what belongs in here, with boxes for before and after.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section (a card) a unit that goes and holds anything, rows in packing order as typed.
/// Blocks: code, name, facts, rows, note, end, qr, owner.
Made contents_card(const Context& context);

}  // namespace dunnage
