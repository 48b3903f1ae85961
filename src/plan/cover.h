// SPDX-License-Identifier: MIT
// Which further whole cases cover what the show asks for, least mass first: one integer model, solved exactly.
#pragma once

#include "plan/demand_group.h"
#include "plan/draft.h"

namespace dunnage {

/// Demands with no units of their own yet are covered from pieces of units that go anyway, then by the
/// units of least total mass, then the fewest, then least waste of length, then in order of code (units first
/// where the kit says so). What no owned unit can serve is `missing`.
Cover find_cover(const Draft& draft);

}  // namespace dunnage
