// SPDX-License-Identifier: MIT
// Demands that are alike, and what a cover gives them.
#pragma once

#include <vector>

#include "plan/servings.h"

namespace dunnage {

/// Demands that are alike: the same word, way and reach.
struct DemandGroup {
  Asked kind;
  int asked = 0;                ///< pieces, metres or litres, after the site's
  std::vector<Option> options;  ///< in a cover also what its chains came to
  std::vector<Chain> chains;
  std::vector<long> used;  ///< by option: how often the cover uses it
  long missing = 0;
};

struct Cover {
  std::vector<DemandGroup> groups;
  std::vector<int> units;  ///< to be sent, in order
  CoverReport report;
};

/// The index of the group that a demand belongs to.
std::size_t group_of(const std::vector<DemandGroup>& groups, const Demand& demand);

}  // namespace dunnage
