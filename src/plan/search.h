// SPDX-License-Identifier: MIT
// Small integer models solved here: most portions of a cover have a handful of columns, and starting the packaged
// solver costs a hundred times what answering them does.
#pragma once

#include <optional>
#include <vector>

#include "plan/integer_model.h"

namespace dunnage {

/// The best solution, or that there is none: always proved. Nothing where `most_nodes` do not suffice to tell. Of
/// equally good solutions the one found first; `start`, a feasible solution, where none is better.
std::optional<IntegerSolution> search(const IntegerModel& model, long most_nodes, const std::vector<long>* start);

}  // namespace dunnage
