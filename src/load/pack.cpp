// SPDX-License-Identifier: MIT
#include "load/pack.h"

#include <algorithm>
#include <numeric>

#include "load/pack_score.h"

namespace dunnage {
namespace {

/// A state of the beam with what it comes to when it is finished greedily.
struct BeamState {
  PackState state;
  std::int64_t value = -1;
};

/// A block that a state of the beam could take next.
struct BeamChild {
  std::size_t parent = 0;
  NextSpace next;
  int block = 0;
  std::int64_t value = 0, volume = 0;
};

class Beam {
 public:
  Beam(const PackGround& ground, long budget) : ground_(ground), budget_(budget) {
    for (const PackBox& box : ground.problem->boxes) {
      if (box.stances.empty()) continue;
      const Spot& size = box.stances.front().size;
      all_ += std::int64_t{size[0]} * size[1] * size[2] * box.count;
    }
    first_.state = first_state(ground);
    first_.value = finish(first_.state);
  }

  bool over() const { return work_ >= budget_ || best_.volume == all_; }
  long work() const { return work_; }
  const PackState& best() const { return best_; }

  void run(std::size_t width) {
    std::vector<BeamState> states = {first_};
    while (!states.empty() && !over()) {
      std::vector<BeamChild> children;
      for (std::size_t i = 0; i < states.size() && !over(); ++i) grow(states[i], i, width, children);
      states = chosen(states, children, width);
    }
  }

 private:
  /// The value of a copy of the state when each step takes the best block.
  std::int64_t finish(const PackState& from) {
    scratch_ = from;
    work_ += 1000 + static_cast<long>(scratch_.list.size()) / 2;
    NextSpace next;
    while (next_space(ground_, scratch_, next)) {
      best_blocks(ground_, scratch_, next, 1, picks_, work_);
      if (picks_.empty())
        drop_space(scratch_, next.space);
      else
        place_block(ground_, scratch_, picks_.front().block, next.space, next.mirrored);
    }
    if (scratch_.volume > best_.volume || best_.stood.empty()) best_ = scratch_;
    return scratch_.volume;
  }

  void grow(BeamState& from, std::size_t parent, std::size_t width, std::vector<BeamChild>& children) {
    NextSpace next;
    std::vector<PackChoice> choices;
    while (choices.empty()) {
      if (!next_space(ground_, from.state, next)) return;
      best_blocks(ground_, from.state, next, width, choices, work_);
      if (choices.empty()) drop_space(from.state, next.space);
    }
    for (std::size_t i = 0; i < choices.size() && !over(); ++i) {
      BeamChild child{parent, next, choices[i].block, from.value, from.state.volume};
      child.volume += ground_.blocks[static_cast<std::size_t>(child.block)].volume;
      if (i > 0) {  // the best block is what finishing the parent took, too
        trial_ = from.state;
        place_block(ground_, trial_, child.block, next.space, next.mirrored);
        child.value = finish(trial_);
      }
      children.push_back(child);
    }
  }

  std::vector<BeamState> chosen(const std::vector<BeamState>& states, std::vector<BeamChild>& children,
                                std::size_t width) {
    std::stable_sort(children.begin(), children.end(), [](const BeamChild& a, const BeamChild& b) {
      return a.value != b.value ? a.value > b.value : a.volume > b.volume;
    });
    std::vector<BeamState> out;
    const BeamChild* last = nullptr;
    for (const BeamChild& child : children) {
      if (out.size() == width) break;
      // Two ways to one plan would fill the beam with copies of it.
      if (last != nullptr && last->value == child.value && last->volume == child.volume) continue;
      last = &child;
      out.push_back({states[child.parent].state, child.value});
      place_block(ground_, out.back().state, child.block, child.next.space, child.next.mirrored);
      thin_list(ground_, out.back().state);
    }
    return out;
  }

  const PackGround& ground_;
  long budget_ = 0, work_ = 0;
  std::int64_t all_ = 0;
  BeamState first_;
  PackState best_, scratch_, trial_;
  std::vector<PackChoice> picks_;
};

/// The coarsest grid on which all boxes lie: sums of lengths are then short rows of bits. Rules think in the caller's
/// lengths, so that with them it stays as it is.
int grid_of(const PackProblem& problem) {
  if (problem.rules != nullptr || !problem.standing.empty()) return 1;
  int grid = 0;
  for (const PackBox& box : problem.boxes)
    for (const PackStance& s : box.stances)
      for (const int side : s.size) grid = std::gcd(grid, side);
  return std::max(1, grid);
}

PackProblem on_grid(PackProblem problem, int grid) {
  for (int& side : problem.room) side /= grid;
  for (PackObstacle& o : problem.obstacles)
    for (std::size_t k = 0; k < 3; ++k) {
      o.from[k] /= grid;
      o.to[k] = (o.to[k] + grid - 1) / grid;
    }
  for (PackBox& box : problem.boxes)
    for (PackStance& s : box.stances)
      for (int& side : s.size) side /= grid;
  return problem;
}

}  // namespace

Packed pack(const PackProblem& problem, long budget) {
  const int grid = grid_of(problem);
  if (grid > 1) {
    Packed out = pack(on_grid(problem, grid), budget);
    for (StoodBox& b : out.boxes)
      for (std::size_t k = 0; k < 3; ++k) {
        b.at[k] *= grid;
        b.size[k] *= grid;
      }
    out.volume *= std::int64_t{grid} * grid * grid;
    return out;
  }
  const PackGround ground = make_ground(problem);
  Beam beam(ground, budget);
  for (std::size_t width = 2; !beam.over() && width <= 4096; width *= 2) beam.run(width);
  Packed out;
  out.volume = beam.best().volume;
  out.work = beam.work();
  for (const StoodBlock& b : beam.best().stood)
    if (b.block >= 0)
      add_boxes(problem, ground.blocks, b.block, {b.where.lo[0], b.where.lo[1], b.where.lo[2]}, b.mirrored, out.boxes);
  return out;
}

}  // namespace dunnage
