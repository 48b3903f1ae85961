// SPDX-License-Identifier: MIT
// How a load rests on axles, hitch and sides at departure and after every stop, and how its rows change places for it.
#pragma once

#include "load/cargo.h"

namespace dunnage {

/// What is wrong with a load's balance, worst stage by worst stage. Smaller is better.
struct Trim {
  double over = 0;    ///< kg beyond what axles, hitch and window allow, summed over all stages
  double uneven = 0;  ///< kg more on one side than a tenth of the load, at departure
  bool operator<(const Trim& o) const { return over != o.over ? over < o.over : uneven < o.uneven; }
};

/// `tongue`: kg that a trailer rests on this vehicle's hitch. Without the vehicle's data nothing is over.
Trim trim_of(const Cargo& cargo, const std::vector<StoodBox>& boxes, double tongue);
/// kg on the hitch at departure; 0 where not known.
double tongue_of(const Cargo& cargo, const std::vector<StoodBox>& boxes);

/// Rows between which nothing reaches across, from the bulkhead; strips belong to none (-1).
std::vector<int> rows_of(const Cargo& cargo, const std::vector<StoodBox>& boxes);
/// Leaves room for hands between rows where the length allows it, then swaps, mirrors and moves rows while that betters
/// the trim.
std::vector<StoodBox> trimmed(const Cargo& cargo, const std::vector<StoodBox>& boxes, double tongue);

}  // namespace dunnage
