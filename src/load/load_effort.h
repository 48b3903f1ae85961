// SPDX-License-Identifier: MIT
// How much is tried before a plan of a load is as good as it gets.
#pragma once

namespace dunnage {

/// Work is counted in steps of about a nanosecond, never timed.
struct LoadEffort {
  long budget = 100'000'000;  ///< of the search for one vehicle, begun only where rows leave something out
  int hands = 20;             ///< mm between rows: common practice, no source
};

}  // namespace dunnage
