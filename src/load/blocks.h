// SPDX-License-Identifier: MIT
// Blocks: boxes that stand together with hardly a gap, built before the search so that one step places many boxes.
#pragma once

#include <cstdint>
#include <vector>

#include "load/pack_problem.h"

namespace dunnage {

/// No block is longer, wider or higher: sizes are packed side by side into one word.
inline constexpr int longest_side = 32'766;

/// How many of one box a block takes.
struct BlockNeed {
  int box = 0, count = 0;
};

/// An array of boxes in one stance (`first` < 0), or two blocks joined along an axis.
struct PackBlock {
  Spot size{};
  int flat_length = 0, flat_width = 0;  ///< the level part of its top, from its own corner
  int boxes = 0;
  std::int64_t volume = 0;       ///< of its boxes
  std::vector<BlockNeed> needs;  ///< in order of box
  int box = 0, stance = 0;
  Spot times{1, 1, 1};
  int first = -1, second = -1, axis = 0;
};

/// All arrays of one box, then joins of two blocks that fill at least 98 % of their hull, while there are fewer than
/// `problem.most_blocks`. Whatever joins stands level: sides of equal height, and on top only what the level part
/// carries.
std::vector<PackBlock> make_blocks(const PackProblem& problem);

/// The boxes of a block that stands at `at`; mirrored: turned over from left to right.
void add_boxes(const PackProblem& problem, const std::vector<PackBlock>& blocks, int block, Spot at, bool mirrored,
               std::vector<StoodBox>& out);

}  // namespace dunnage
