// SPDX-License-Identifier: MIT
// A thin skin over the packaged integer solver (CBC, through its C interface): the only room that includes it.
#pragma once

#include <cstddef>
#include <vector>

#include "plan/integer_model.h"

namespace dunnage {

/// Exact unless `node_limit` is reached, which never depends on a clock: the same model gives the same
/// answer everywhere. `start`, if given, is a feasible solution to begin from; one known to be good saves the solver
/// its own search for some.
enum class Start { any, good };
IntegerSolution solve(const IntegerModel& model, long node_limit, const std::vector<long>* start = nullptr,
                      Start quality = Start::any);
/// Models of so many columns are searched to the end without the packaged solver, nearly always.
inline constexpr std::size_t small_columns = 40;

}  // namespace dunnage
