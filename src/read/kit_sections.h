// SPDX-License-Identifier: MIT
// The sections of a kit's files, one room each.
#pragma once

#include "model/kit.h"
#include "read/table_reader.h"

namespace dunnage {

House read_house(TableReader& section);
Item read_item(TableReader& section);
Case read_case(TableReader& section);
UnitChange read_unit_change(TableReader& section);
Structure read_structure(TableReader& section);
Vehicle read_vehicle(TableReader& section);

/// `goes`, `per` and `needs` of a case.
Goes read_goes(TableReader& section);
std::vector<Per> read_per(TableReader& section);
std::vector<Need> read_needs(TableReader& section);

/// The most units, pieces or people that one entry may name: beyond it a digit has slipped.
inline constexpr int most_pieces = 9999;

}  // namespace dunnage
