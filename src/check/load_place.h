// SPDX-License-Identifier: MIT
// Whether each piece can stand where it is drawn, alone: inside, in nobody's place, in a legal stance, through a door.
#pragma once

#include "check/load_stowage.h"

namespace dunnage {

/// Outside the cargo space; in another piece or a block.
void judge_places(const Stowage& hold, FaultList& faults);
/// Not as the case is built, not this way up, lying as nobody typed that it may; through no door as it stands.
void judge_stances(const Stowage& hold, FaultList& faults);

/// Where a door is, by the words it was typed with.
enum class Wall { rear, left, right, elsewhere };
Wall wall_of(const DoorOpening& door);
/// As it stands: upright rolled or carried, narrow side first; what lies, end first.
bool passes(const Standing& piece, const DoorOpening& door);

}  // namespace dunnage
