// SPDX-License-Identifier: MIT
// In and out of the vehicle: the load is unloaded stop by stop, and loaded in its order, piece by piece.
#pragma once

#include "check/load_stowage.h"

namespace dunnage {

/// At each stop every piece for it must leave on a straight way to an open door, past what goes on; and each piece must
/// have come in on one, past what was in before, onto what bears it.
void judge_ways(const Stowage& hold, const Plan& plan, FaultList& faults);

}  // namespace dunnage
