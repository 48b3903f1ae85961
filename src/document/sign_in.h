// SPDX-License-Identifier: MIT
// The sheet at the gate: who is here, since when, and who has heard the briefing.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section. Blocks: briefing-head, briefing, rows, end. As many rows as people are stated, and some more.
Made sign_in(const Context& context);

}  // namespace dunnage
