// SPDX-License-Identifier: MIT
// Candidates that cannot be in any best cover, found before the solver looks: most of a large kit.
#pragma once

#include "plan/cover_model.h"

namespace dunnage {

/// Columns of candidates that a cover of at most the cost `known` (by column: of one already found for its part of the
/// model; `cost` by column) cannot hold. A candidate is better than another when it is no heavier (or as heavy and
/// earlier in order of code), needs nothing, and has at least as much of all that counts. Who takes a candidate and
/// leaves a better one could exchange them and lose nothing; so a best cover that takes it takes all its betters too,
/// and cannot when these alone cost more than is known. Exact: no best cover, ties by later steps included, is lost.
std::vector<int> dominated(const Build& build, const std::vector<double>& known, const std::vector<double>& cost);

}  // namespace dunnage
