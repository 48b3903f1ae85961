// SPDX-License-Identifier: MIT
// Boxes, the room for them and what must hold: the question that pack() answers.
#pragma once

#include <array>
#include <vector>

namespace dunnage {

using Spot = std::array<int, 3>;  ///< along x, y, z

/// A solid part of the space. Nothing stands on it.
struct PackObstacle {
  Spot from, to;
};

/// One way in which a box may stand.
struct PackStance {
  Spot size;
  int word = 0;
};  ///< word: the caller's name for it

/// Boxes that are all alike, to the rules as well as in size.
struct PackBox {
  std::vector<PackStance> stances;
  int count = 1;
};

/// One box as it stands.
struct StoodBox {
  int box = 0;   ///< index of its PackBox
  int word = 0;  ///< of its stance
  Spot at, size;
};

/// Where it ends along an axis.
inline int end(const StoodBox& b, std::size_t axis) { return b.at[axis] + b.size[axis]; }

/// What else must hold besides room and support. Asked of a new lot of boxes together with those that stand.
class PackRules {
 public:
  virtual ~PackRules() = default;
  /// `fresh` boxes may join `standing` ones. Whatever it allows must be allowed for each part of `fresh`, too.
  virtual bool allows(const std::vector<StoodBox>& standing, const std::vector<StoodBox>& fresh) const = 0;
};

struct PackProblem {
  Spot room;
  std::vector<PackObstacle> obstacles;
  std::vector<PackBox> boxes;
  std::vector<StoodBox> standing;  ///< there already: they bear and take room, and are no part of the answer
  const PackRules* rules = nullptr;
  int most_blocks = 3000;
};

}  // namespace dunnage
