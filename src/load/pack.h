// SPDX-License-Identifier: MIT
// Boxes into one space: which stand where, with as much volume in as the work allowed finds. Integer lengths, no clock,
// one thread, so that the same question has the same answer everywhere.
//
// The method is that of Araya, Guerrero and Nunez (Computers & Operations Research 82, 2017, 27-35) on blocks of
// several boxes, with full support from below: maximal free spaces, the space nearest to a corner first, a beam whose
// states are each finished greedily to see what they are worth.
#pragma once

#include <cstdint>
#include <vector>

#include "load/pack_problem.h"

namespace dunnage {

struct Packed {
  std::vector<StoodBox> boxes;  ///< in the order in which they were placed
  std::int64_t volume = 0;
  long work = 0;
};

/// Places what it can; ends when all boxes stand or `budget` steps of work are done (about a nanosecond each, of a
/// processor of 2020; counted, never timed).
Packed pack(const PackProblem& problem, long budget);

}  // namespace dunnage
