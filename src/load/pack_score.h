// SPDX-License-Identifier: MIT
// Where the next block goes and what each block that fits there is worth.
#pragma once

#include <vector>

#include "load/pack_state.h"

namespace dunnage {

struct PackChoice {
  double score = 0;
  int block = -1;
};

struct NextSpace {
  FreeSpace space;
  bool mirrored = false;  ///< its corner is the one at the right wall
};

/// The space nearest to a corner of the bulkhead, among those in which a box has room; takes the others away.
bool next_space(const PackGround& ground, PackState& state, NextSpace& out);

/// The up to `most` best blocks for a space, best first. Adds its work to `work`.
void best_blocks(const PackGround& ground, PackState& state, const NextSpace& next, std::size_t most,
                 std::vector<PackChoice>& out, long& work);

}  // namespace dunnage
