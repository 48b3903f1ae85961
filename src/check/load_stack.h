// SPDX-License-Identifier: MIT
// What stands on what, and whether it may.
#pragma once

#include "check/load_stowage.h"

namespace dunnage {

/// Whole bases borne from below; nothing on what is fragile, must not be stacked on, or whose limit nobody typed; mass
/// on top within its limit, handed down by share of contact; nothing on what is lighter. A mass that is not known is
/// never a light one.
void judge_stacks(const Stowage& hold, FaultList& faults);

}  // namespace dunnage
