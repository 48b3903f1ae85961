// SPDX-License-Identifier: MIT
// Which further whole cases cover what the show asks for, least mass first: one integer model, solved exactly or, where
// that is too much work, to a gap that is told.
#pragma once

#include "plan/demand_group.h"
#include "plan/draft.h"

namespace dunnage {

/// Demands with no units of their own yet are covered from pieces of units that go anyway, then by other units: with
/// as little missing as possible, then with the fewest units whose mass is not known, then of least total mass, then
/// the fewest, then with least waste of length, then in order of code (fewest units before mass where the kit says so).
/// What no owned unit can serve is `missing`. `effort` 1 is some seconds of work at most, counted in steps.
Cover find_cover(const Draft& draft, double effort = 1);

}  // namespace dunnage
