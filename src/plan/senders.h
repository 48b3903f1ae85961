// SPDX-License-Identifier: MIT
// What goes before anyone asks for it: the kit's rules, the show's overrides, and what stands at the show.
#pragma once

#include "plan/draft.h"

namespace dunnage {

/// Sends what the show brings.
void send_brought(Draft& draft);
/// Sends what the kit's `goes` and `per` say.
void send_ruled(Draft& draft);
/// Takes the parts, the ballast and what is carried of each structure in use.
void send_structures(Draft& draft);

/// A case whose units stand by for a kind in use: how many spares are wanted, by case.
std::vector<std::pair<int, int>> spares_wanted(const Draft& draft);
/// Sends spares as such: they never feed a demand.
void send_spares(Draft& draft, const std::vector<std::pair<int, int>>& wanted);

}  // namespace dunnage
