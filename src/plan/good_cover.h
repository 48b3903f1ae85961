// SPDX-License-Identifier: MIT
// A good cover quickly, where all rows only ask for enough: what the exact solver then starts from.
#pragma once

#include <optional>
#include <vector>

#include "plan/integer_model.h"

namespace dunnage {

/// True where every row asks for so much at least and every column can only help: a cover of many things by many.
bool only_covers(const IntegerModel& model);

/// A solution near the best; nothing where there is none at all. The model only covers, and costs are not negative.
/// Counts its work: the same model gives the same answer everywhere.
std::optional<std::vector<long>> good_cover(const IntegerModel& model, double effort);

}  // namespace dunnage
