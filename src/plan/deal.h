// SPDX-License-Identifier: MIT
// Hands out pieces: which unit serves which demand, once the cover has said how.
#pragma once

#include "plan/cover.h"
#include "plan/draft.h"

namespace dunnage {

/// Fills each demand's `covered` and `by`, gives the units sent by the cover their reasons, and notes what is
/// short. Pieces of units that go anyway are dealt first; each piece serves one demand.
void deal(Draft& draft, const Cover& cover);

}  // namespace dunnage
