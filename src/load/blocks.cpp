// SPDX-License-Identifier: MIT
#include "load/blocks.h"

#include <algorithm>
#include <set>

namespace dunnage {
namespace {

constexpr double least_fill = 0.98;
constexpr int most_ruled = 60;  // boxes in a block of which rules are asked: their answer takes the square of it

std::int64_t hull(const Spot& size) { return std::int64_t{size[0]} * size[1] * size[2]; }

bool inside(const Spot& size, const Spot& room) {
  for (std::size_t k = 0; k < 3; ++k)
    if (size[k] > std::min(room[k], longest_side)) return false;
  return true;
}

class BlockMaker {
 public:
  explicit BlockMaker(const PackProblem& problem) : problem_(problem) {}

  std::vector<PackBlock> make() {
    for (std::size_t b = 0; b < problem_.boxes.size(); ++b)
      for (std::size_t s = 0; s < problem_.boxes[b].stances.size(); ++s) add(array(b, s, {1, 1, 1}), true);
    for (std::size_t b = 0; b < problem_.boxes.size(); ++b)
      for (std::size_t s = 0; s < problem_.boxes[b].stances.size(); ++s) add_arrays(b, s);
    join_all();
    return std::move(blocks_);
  }

 private:
  bool full() const { return blocks_.size() >= static_cast<std::size_t>(problem_.most_blocks); }

  PackBlock array(std::size_t b, std::size_t s, const Spot& times) const {
    const Spot& one = problem_.boxes[b].stances[s].size;
    PackBlock block;
    block.box = static_cast<int>(b);
    block.stance = static_cast<int>(s);
    block.times = times;
    for (std::size_t k = 0; k < 3; ++k) block.size[k] = one[k] * times[k];
    block.flat_length = block.size[0];
    block.flat_width = block.size[1];
    block.boxes = times[0] * times[1] * times[2];
    block.volume = hull(block.size);
    block.needs = {{block.box, block.boxes}};
    return block;
  }

  void add_arrays(std::size_t b, std::size_t s) {
    const Spot& one = problem_.boxes[b].stances[s].size;
    const int count = problem_.boxes[b].count;
    for (int z = 1; z <= count && z * one[2] <= problem_.room[2]; ++z)
      for (int y = 1; y * z <= count && y * one[1] <= problem_.room[1]; ++y)
        for (int x = 1; x * y * z <= count && x * one[0] <= problem_.room[0] && !full(); ++x)
          add(array(b, s, {x, y, z}), false);
  }

  /// Pairs of which one came with the last round, until a round brings nothing.
  void join_all() {
    std::size_t from = 0;
    while (from < blocks_.size() && !full()) {
      const std::size_t to = blocks_.size();
      for (std::size_t i = from; i < to && !full(); ++i)
        for (std::size_t j = 0; j < to && !full(); ++j) {
          join(i, j);
          if (j < from && !full()) join(j, i);
        }
      from = to;
    }
  }

  void join(std::size_t i, std::size_t j) {
    for (int axis = 0; axis < 3; ++axis) {
      const PackBlock& a = blocks_[i];
      const PackBlock& b = blocks_[j];
      if (axis < 2 ? a.size[2] != b.size[2] : b.size[0] > a.flat_length || b.size[1] > a.flat_width) continue;
      const auto k = static_cast<std::size_t>(axis);
      Spot size;
      for (std::size_t d = 0; d < 3; ++d) size[d] = d == k ? a.size[d] + b.size[d] : std::max(a.size[d], b.size[d]);
      if (!inside(size, problem_.room)) continue;
      const std::int64_t volume = a.volume + b.volume;
      if (static_cast<double>(volume) < least_fill * static_cast<double>(hull(size))) continue;
      PackBlock both = joined(a, b, axis);
      both.size = size;
      both.volume = volume;
      if (!enough(both)) continue;
      both.first = static_cast<int>(i);
      both.second = static_cast<int>(j);
      add(std::move(both), false);
    }
  }

  static PackBlock joined(const PackBlock& a, const PackBlock& b, int axis) {
    PackBlock out;
    out.axis = axis;
    out.boxes = a.boxes + b.boxes;
    out.flat_length = axis == 2 ? b.flat_length : a.flat_length;
    out.flat_width = axis == 2 ? b.flat_width : a.flat_width;
    if (axis == 0 && a.flat_length == a.size[0]) {
      out.flat_length = a.flat_length + b.flat_length;
      out.flat_width = std::min(a.flat_width, b.flat_width);
    } else if (axis == 1 && a.flat_width == a.size[1]) {
      out.flat_width = a.flat_width + b.flat_width;
      out.flat_length = std::min(a.flat_length, b.flat_length);
    }
    out.needs = a.needs;
    for (const BlockNeed& need : b.needs) {
      const auto at = std::lower_bound(out.needs.begin(), out.needs.end(), need,
                                       [](const BlockNeed& x, const BlockNeed& y) { return x.box < y.box; });
      if (at != out.needs.end() && at->box == need.box)
        at->count += need.count;
      else
        out.needs.insert(at, need);
    }
    return out;
  }

  bool enough(const PackBlock& block) const {
    return std::all_of(block.needs.begin(), block.needs.end(), [&](const BlockNeed& need) {
      return need.count <= problem_.boxes[static_cast<std::size_t>(need.box)].count;
    });
  }

  void add(PackBlock block, bool always) {
    if ((full() && !always) || !inside(block.size, problem_.room) || blocks_.size() >= 65535) return;
    if (problem_.rules != nullptr && block.boxes > most_ruled) return;
    std::vector<int> key(block.size.begin(), block.size.end());
    key.push_back(block.flat_length);
    key.push_back(block.flat_width);
    for (const BlockNeed& need : block.needs) key.insert(key.end(), {need.box, need.count});
    if (problem_.rules) key.insert(key.end(), {block.first, block.second});
    if (!seen_.insert(std::move(key)).second) return;
    blocks_.push_back(std::move(block));
    if (problem_.rules == nullptr) return;
    std::vector<StoodBox> stood;
    add_boxes(problem_, blocks_, static_cast<int>(blocks_.size()) - 1, {0, 0, 0}, false, stood);
    if (!problem_.rules->allows({}, stood)) blocks_.pop_back();
  }

  const PackProblem& problem_;
  std::vector<PackBlock> blocks_;
  std::set<std::vector<int>> seen_;
};

}  // namespace

std::vector<PackBlock> make_blocks(const PackProblem& problem) { return BlockMaker(problem).make(); }

void add_boxes(const PackProblem& problem, const std::vector<PackBlock>& blocks, int block, Spot at, bool mirrored,
               std::vector<StoodBox>& out) {
  const PackBlock& b = blocks[static_cast<std::size_t>(block)];
  const auto child = [&](int index, int along) {
    const PackBlock& part = blocks[static_cast<std::size_t>(index)];
    Spot from = at;
    from[static_cast<std::size_t>(b.axis)] += along;
    // From the other side the same distances count from the right edge of the hull.
    if (mirrored) from[1] = at[1] + b.size[1] - (from[1] - at[1]) - part.size[1];
    add_boxes(problem, blocks, index, from, mirrored, out);
  };
  if (b.first >= 0) {
    child(b.first, 0);
    child(b.second, blocks[static_cast<std::size_t>(b.first)].size[static_cast<std::size_t>(b.axis)]);
    return;
  }
  const PackStance& stance = problem.boxes[static_cast<std::size_t>(b.box)].stances[static_cast<std::size_t>(b.stance)];
  for (int x = 0; x < b.times[0]; ++x)
    for (int y = 0; y < b.times[1]; ++y)
      for (int z = 0; z < b.times[2]; ++z)
        out.push_back({b.box,
                       stance.word,
                       {at[0] + x * stance.size[0], at[1] + y * stance.size[1], at[2] + z * stance.size[2]},
                       stance.size});
}

}  // namespace dunnage
