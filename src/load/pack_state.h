// SPDX-License-Identifier: MIT
// A half-filled room: what stands, what is left, which spaces are free and level below.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <vector>

#include "load/blocks.h"
#include "load/length_sums.h"

namespace dunnage {

struct FreeSpace {
  int lo[3], hi[3];
  bool operator==(const FreeSpace&) const = default;
};

/// Sizes side by side in one word, so that one subtraction says whether a block fits a space: from the low end 16 bits
/// for its index, then three times 15 bits and a guard. No block has a side of more than `longest_side`, so that a
/// space that is longer takes whatever one of that length takes.
using SizeKey = std::uint64_t;
inline constexpr int fits_nowhere = longest_side + 1;
static_assert(fits_nowhere < 1 << 15);
inline constexpr SizeKey key_guards = (SizeKey{1} << 31) | (SizeKey{1} << 47) | (SizeKey{1} << 63);
inline SizeKey size_key(int length, int width, int height, int index) {
  return static_cast<SizeKey>(index) | static_cast<SizeKey>(length) << 16 | static_cast<SizeKey>(width) << 32 |
         static_cast<SizeKey>(height) << 48;
}
/// A space as key_fits() compares it with blocks.
inline SizeKey space_key(int length, int width, int height) {
  return size_key(std::min(length, longest_side), std::min(width, longest_side), std::min(height, longest_side),
                  0xFFFF) |
         key_guards;
}
inline bool key_fits(SizeKey small, SizeKey large_with_guards) {
  return ((large_with_guards - small) & key_guards) == key_guards;
}

/// What does not change during a search.
struct PackGround {
  const PackProblem* problem = nullptr;
  Spot room{};
  std::vector<PackBlock> blocks;
  std::vector<double> worth;  ///< by block: volume, less for many boxes; no block scores more
  struct Needs {
    int from = 0, to = 0;
  };
  std::vector<Needs> needs_of;  ///< by block, into `needs`
  std::vector<BlockNeed> needs;
  std::vector<SizeKey> list;  ///< all blocks by falling worth
  struct Side {
    int size = 0, most = 0;
  };
  std::vector<std::vector<Side>>
      sides[3];             ///< by axis and box: its lengths there, and how many the room takes in a row
  std::vector<int> cap[3];  ///< by axis and box: more than so many change no sum
  std::vector<std::vector<SizeKey>> box_keys;  ///< by box: its stances
};

PackGround make_ground(const PackProblem& problem);

struct StoodBlock {
  int block = 0;
  FreeSpace where;
  bool mirrored = false;
};

/// A state is copied far more often than it is made: everything lies in a few flat rows.
struct PackState {
  std::int64_t volume = 0;
  std::vector<FreeSpace> spaces;
  std::vector<FreeSpace> narrow;  ///< on tops, of use to nothing by themselves: only joined with what comes beside
  std::vector<StoodBlock> stood;
  std::vector<int> left;      ///< by box
  std::vector<SizeKey> list;  ///< blocks that may still go in
  std::array<LengthSums, 3> reach;
  std::vector<FreeSpace> pieces;  ///< scratch, kept for its memory
  std::vector<StoodBox> boxes;    ///< only where the problem has rules
};

PackState first_state(const PackGround& ground);
bool enough_left(const PackGround& ground, const PackState& state, int block);
/// Takes the block out of what is left and cuts the free spaces.
void place_block(const PackGround& ground, PackState& state, int block, const FreeSpace& space, bool mirrored);
/// Any box that is left has room in it.
bool of_use(const PackGround& ground, const PackState& state, const FreeSpace& space);
/// A space in which nothing that is left goes: gone, but for what its floor may carry together with a neighbour's.
void drop_space(PackState& state, const FreeSpace& space);
/// Takes blocks off the list for which boxes are missing.
void thin_list(const PackGround& ground, PackState& state);

}  // namespace dunnage
