// SPDX-License-Identifier: MIT
// A thin skin over the packaged integer solver (CBC, through its C interface): the only room that includes it.
#pragma once

#include <vector>

#include "plan/integer_model.h"

namespace dunnage {

/// Exact unless `node_limit` is reached, which never depends on a clock: the same model gives the same
/// answer everywhere. `start`, if given, is a feasible solution to begin from.
IntegerSolution solve(const IntegerModel& model, long node_limit, const std::vector<long>* start = nullptr);

}  // namespace dunnage
