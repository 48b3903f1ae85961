// SPDX-License-Identifier: MIT
// Which further whole cases cover what the show asks for, least mass first: one integer model, solved exactly.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "plan/draft.h"
#include "plan/servings.h"

namespace dunnage {

/// Demands that are alike: the same word, way and reach.
struct DemandGroup {
  Asked kind;
  int asked = 0;                       ///< pieces, metres or litres, after the site's
  std::vector<Option> options;
  std::vector<long> used;              ///< by option: how often the cover uses it
  long missing = 0;
};

struct Cover {
  std::vector<DemandGroup> groups;
  std::vector<int> units;              ///< to be sent, in order
  CoverReport report;
};

/// Demands with no units of their own yet are covered from pieces of units that go anyway, then by the
/// units of least total mass, then the fewest, then least waste of length, then in order of code (units first
/// where the kit says so). What no owned unit can serve is `missing`.
Cover find_cover(const Draft& draft);

/// The index of the group that a demand belongs to.
std::size_t group_of(const std::vector<DemandGroup>& groups, const Demand& demand);

}  // namespace dunnage
