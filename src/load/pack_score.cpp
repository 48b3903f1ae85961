// SPDX-License-Identifier: MIT
#include "load/pack_score.h"

#include <algorithm>

namespace dunnage {
namespace {

constexpr double near_share = 0.04;  // of the room's side: so near counts as touching

constexpr long rule_work = 60;  // a box that stands, for each block that a rule is asked of

/// A neighbour as the face of a block sees it: how far from the block's corner along the face and up, and, for the far
/// faces, how far away.
struct Patch {
  int from, to, low, high, away;
};

std::int64_t shared(const Patch& p, int along, int up) {
  const int a = std::min(p.to, along) - std::max(p.from, 0);
  const int b = std::min(p.high, up) - std::max(p.low, 0);
  return a > 0 && b > 0 ? std::int64_t{a} * b : 0;
}

/// The neighbours of one space, for all blocks that are tried in it.
class Surroundings {
 public:
  Surroundings(const PackGround& ground, const PackState& state, const NextSpace& next)
      : space_(next.space), mirrored_(next.mirrored), room_(ground.room) {
    for (std::size_t k = 0; k < 3; ++k) near_[k] = static_cast<int>(near_share * ground.room[k]);
    for (int k = 0; k < 3; ++k) size_[k] = space_.hi[k] - space_.lo[k];
    wall_[0] = space_.lo[0] <= near_[0];
    wall_[1] = mirrored_ ? room_[1] - space_.hi[1] <= near_[1] : space_.lo[1] <= near_[1];
    for (const StoodBlock& b : state.stood) look(b.where);
  }

  /// The share of a block's surface that touches.
  double touching(int length, int width, int height) const {
    const int side[3] = {length, width, height};
    std::int64_t sum = std::int64_t{length} * width;
    if (room_[2] - space_.lo[2] - height <= near_[2]) sum += std::int64_t{length} * width;
    for (int axis = 0; axis < 2; ++axis) {
      const int along = side[1 - axis];
      const std::int64_t face = std::int64_t{along} * height;
      sum += wall_[axis] ? face : covered(close_[axis], closes_[axis], along, height, face);
      const int end = far_end(axis);
      if (end - side[axis] <= near_[axis])
        sum += face;
      else
        sum += reached(axis, side[axis], along, height, face);
    }
    const std::int64_t all =
        2 * (std::int64_t{length} * width + std::int64_t{length} * height + std::int64_t{width} * height);
    return static_cast<double>(sum) / static_cast<double>(all);
  }

 private:
  static constexpr int most_patches = 24;

  /// From the space's corner to the opposite wall.
  int far_end(int axis) const {
    return axis == 1 && mirrored_ ? space_.hi[1] : room_[static_cast<std::size_t>(axis)] - space_.lo[axis];
  }

  static std::int64_t covered(const Patch* patches, int count, int along, int up, std::int64_t face) {
    std::int64_t sum = 0;
    for (int i = 0; i < count; ++i) sum += shared(patches[i], along, up);
    return std::min(sum, face);
  }

  std::int64_t reached(int axis, int side, int along, int up, std::int64_t face) const {
    std::int64_t sum = 0;
    for (int i = 0; i < fars_[axis]; ++i) {
      const Patch& p = far_[axis][i];
      if (p.away - side <= near_[axis] && p.away >= side) sum += shared(p, along, up);
    }
    return std::min(sum, face);
  }

  void look(const FreeSpace& b) {
    if (b.hi[2] <= space_.lo[2]) return;
    // Along x the corner is always at the low end; along y the axis is turned round where mirrored.
    const int ylo = mirrored_ ? space_.hi[1] - b.hi[1] : b.lo[1] - space_.lo[1];
    const int yhi = mirrored_ ? space_.hi[1] - b.lo[1] : b.hi[1] - space_.lo[1];
    const int xlo = b.lo[0] - space_.lo[0], xhi = b.hi[0] - space_.lo[0];
    const int zlo = b.lo[2] - space_.lo[2], zhi = b.hi[2] - space_.lo[2];
    see(0, xlo, xhi, {ylo, yhi, zlo, zhi, xlo});
    see(1, ylo, yhi, {xlo, xhi, zlo, zhi, ylo});
  }

  void see(int axis, int lo, int hi, const Patch& patch) {
    if (patch.to <= 0 || patch.from >= size_[1 - axis]) return;
    if (hi <= 0 && hi >= -near_[axis] && closes_[axis] < most_patches) close_[axis][closes_[axis]++] = patch;
    if (lo > 0 && lo <= size_[axis] + near_[axis] && fars_[axis] < most_patches) far_[axis][fars_[axis]++] = patch;
  }

  FreeSpace space_;
  bool mirrored_;
  Spot room_;
  int near_[3], size_[3];
  bool wall_[2];
  Patch close_[2][most_patches], far_[2][most_patches];
  int closes_[2] = {0, 0}, fars_[2] = {0, 0};
};

/// The share of the space that the boxes left could still fill if a block of this size stands in its corner.
double still_filled(const PackState& state, const int* space, int length, int width, int height) {
  const double x = length + state.reach[0].down(space[0] - length);
  const double y = width + state.reach[1].down(space[1] - width);
  const double z = height + state.reach[2].down(space[2] - height);
  return x * y * z;
}

void keep(std::vector<PackChoice>& out, std::size_t most, const PackChoice& choice) {
  std::size_t at = out.size();
  while (at > 0 && out[at - 1].score < choice.score) --at;
  if (at >= most) return;
  if (out.size() == most) out.pop_back();
  out.insert(out.begin() + static_cast<std::ptrdiff_t>(at), choice);
}

bool rules_allow(const PackGround& ground, const PackState& state, const NextSpace& next, int block, long& work) {
  if (ground.problem->rules == nullptr) return true;
  work += rule_work * static_cast<long>(state.boxes.size() + 1);
  const PackBlock& b = ground.blocks[static_cast<std::size_t>(block)];
  Spot at = {next.space.lo[0], next.mirrored ? next.space.hi[1] - b.size[1] : next.space.lo[1], next.space.lo[2]};
  std::vector<StoodBox> fresh;
  add_boxes(*ground.problem, ground.blocks, block, at, next.mirrored, fresh);
  return ground.problem->rules->allows(state.boxes, fresh);
}

}  // namespace

bool next_space(const PackGround& ground, PackState& state, NextSpace& out) {
  while (true) {
    std::size_t best = state.spaces.size();
    int best_way = 0;
    std::int64_t best_volume = 0;
    for (std::size_t i = 0; i < state.spaces.size(); ++i) {
      const FreeSpace& s = state.spaces[i];
      const int way = s.lo[0] + s.lo[2] + std::min(s.lo[1], ground.room[1] - s.hi[1]);
      if (best < state.spaces.size() && way > best_way) continue;
      const std::int64_t volume = std::int64_t{s.hi[0] - s.lo[0]} * (s.hi[1] - s.lo[1]) * (s.hi[2] - s.lo[2]);
      if (best < state.spaces.size() && way == best_way && volume <= best_volume) continue;
      best = i;
      best_way = way;
      best_volume = volume;
    }
    if (best == state.spaces.size()) return false;
    out.space = state.spaces[best];
    out.mirrored = out.space.lo[1] > ground.room[1] - out.space.hi[1];
    if (of_use(ground, state, out.space)) return true;
    drop_space(state, out.space);
  }
}

void best_blocks(const PackGround& ground, PackState& state, const NextSpace& next, std::size_t most,
                 std::vector<PackChoice>& out, long& work) {
  out.clear();
  const FreeSpace& s = next.space;
  const int space[3] = {s.hi[0] - s.lo[0], s.hi[1] - s.lo[1], s.hi[2] - s.lo[2]};
  const double whole = static_cast<double>(space[0]) * space[1] * space[2];
  const SizeKey key = space_key(space[0], space[1], space[2]);
  const Surroundings around(ground, state, next);
  const double* worth = ground.worth.data();
  SizeKey* list = state.list.data();
  const std::size_t count = state.list.size();
  double bar = 0;
  long tried = 0;
  std::size_t i = 0;
  for (; i < count; ++i) {
    if (!key_fits(list[i], key)) continue;
    const int block = static_cast<int>(list[i] & 0xFFFF);
    if (worth[block] <= bar) break;
    if (!enough_left(ground, state, block)) {
      list[i] = size_key(fits_nowhere, fits_nowhere, fits_nowhere, block);
      continue;
    }
    ++tried;
    const int length = static_cast<int>(list[i] >> 16 & 0x7FFF), width = static_cast<int>(list[i] >> 32 & 0x7FFF),
              height = static_cast<int>(list[i] >> 48 & 0x7FFF);
    const double part = worth[block] * still_filled(state, space, length, width, height) / whole;
    if (part <= bar) continue;
    const double touch = around.touching(length, width, height);
    const double score = part * touch * touch * touch * touch;
    if (score <= bar || !rules_allow(ground, state, next, block, work)) continue;
    keep(out, most, {score, block});
    if (out.size() == most) bar = out.back().score;
  }
  work += 2000 + static_cast<long>(i) + 30 * tried +
          10 * static_cast<long>(state.stood.size() + state.spaces.size() + state.left.size());
}

}  // namespace dunnage
