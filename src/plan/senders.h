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

/// So many units of a case that stand by, for these that are in use.
struct SpareCall {
  int case_index = 0;
  int count = 0;
  Sentence in_use;
  friend bool operator==(const SpareCall&, const SpareCall&) = default;
};
/// The spares that what goes calls for.
std::vector<SpareCall> spares_wanted(const Draft& draft);
/// Sends spares as such: they never feed a demand.
void send_spares(Draft& draft, const std::vector<SpareCall>& wanted);

}  // namespace dunnage
