// SPDX-License-Identifier: MIT
// A planned load in the order in which it is built: numbers that the list and all pictures share.
#pragma once

#include <string>
#include <vector>

#include "document/context.h"
#include "document/shelf_walk.h"

namespace dunnage {

/// One piece with the number that it has on the sheet, and the numbers of what bears it.
struct BuiltPiece {
  int number = 0;
  const LoadedPiece* piece = nullptr;
  std::vector<int> on;  ///< empty: it stands on the floor
};
/// All that a sheet says of one vehicle's planned load. Empty pieces: nothing is planned, or the plan was dropped.
struct BuiltLoad {
  const Vehicle* vehicle = nullptr;
  const VehicleLoading* loading = nullptr;
  const LoadingDetail* detail = nullptr;
  std::vector<BuiltPiece> pieces;
};
/// The findings about one vehicle, by its code.
std::vector<const Finding*> findings_about(const Context& context, const std::string& vehicle);
BuiltLoad built_load(const Context& context, const std::string& vehicle);

/// A row as it is built, or a part of one that has more pieces than a person keeps in mind.
struct BuiltPart {
  std::string title;  ///< "Row 2", "Row 2, 8 to 14"; of what stands in no row, "Along the walls and on top"
  std::size_t first = 0, last = 0;  ///< of the pieces, one past the end
  std::optional<Length> begins;     ///< behind the bulkhead; of the first part of a row that does not begin there
};
std::vector<BuiltPart> parts_of(const Context& context, const BuiltLoad& built);
/// "on 3, 4", or "floor, 2 ft 3 in from the left wall"; then which way its long side lies.
std::string stands_words(const Context& context, const BuiltLoad& built, const BuiltPiece& one);
/// The rows of the list, row by row as built; then what is in no plan.
std::vector<Group> built_groups(const Context& context, const BuiltLoad& built, const VehicleLoad& load);
/// Departure and stops: "departure", "after Stage left".
std::string stage_words(const Context& context, const std::string& after);

}  // namespace dunnage
