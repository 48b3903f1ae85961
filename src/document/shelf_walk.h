// SPDX-License-Identifier: MIT
// Who pulls what, in the order the feet take: every sheet that lists units walks the shelves the same way.
#pragma once

#include <string>
#include <vector>

#include "document/context.h"
#include "document/phrase.h"

namespace dunnage {

/// Sorts by home, then by code, digits as numbers.
void sort_by_walk(const Catalogue& catalogue, std::vector<const PlanRow*>& rows);
/// The units that go and are for `context.only_team` (all where it is empty), in order of the shelf walk.
std::vector<const PlanRow*> rows_to_pull(const Context& context);

/// One team's walk. The show's teams in file order, then the units without a team; of a show without teams,
/// one walk for everyone, without a name.
struct Walk {
  std::string team;  ///< as printed: the team's name, "no team", or empty
  std::vector<const PlanRow*> rows;
};
std::vector<Walk> walks(const Context& context);

/// What rides in one vehicle, in order of the shelf walk.
struct VehicleLoad {
  std::string code;  ///< empty: no vehicle is given
  std::string says;  ///< as printed
  std::vector<const PlanRow*> rows;
};
/// In order of the kit's vehicles, what has none last; vehicles that carry nothing are left out.
std::vector<VehicleLoad> vehicle_loads(const Context& context);
/// The rows by place, in the order of the show's places, other places after them, no place last.
std::vector<const PlanRow*> by_place(const Show& show, std::vector<const PlanRow*> rows);

/// Code of a row's unit.
const std::string& code_of(const Catalogue& catalogue, const PlanRow& row);
PrintedSum sum_of(const std::vector<const PlanRow*>& rows, UnitSystem units);

}  // namespace dunnage
