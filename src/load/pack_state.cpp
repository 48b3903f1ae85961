// SPDX-License-Identifier: MIT
#include "load/pack_state.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace dunnage {
namespace {

constexpr double fewer_boxes = 0.2;  // the published score's power for the number of boxes in a block

bool overlap(const FreeSpace& a, const FreeSpace& b) {
  return a.lo[0] < b.hi[0] && b.lo[0] < a.hi[0] && a.lo[1] < b.hi[1] && b.lo[1] < a.hi[1] && a.lo[2] < b.hi[2] &&
         b.lo[2] < a.hi[2];
}

bool holds(const FreeSpace& outer, const FreeSpace& inner) {
  return outer.lo[0] <= inner.lo[0] && outer.hi[0] >= inner.hi[0] && outer.lo[1] <= inner.lo[1] &&
         outer.hi[1] >= inner.hi[1] && outer.lo[2] <= inner.lo[2] && outer.hi[2] >= inner.hi[2];
}

bool held(const std::vector<FreeSpace>& spaces, const FreeSpace& fresh) {
  return std::any_of(spaces.begin(), spaces.end(), [&](const FreeSpace& other) { return holds(other, fresh); });
}

/// Adds a space unless another holds it, and drops those that it holds.
bool add_space(const PackGround& ground, PackState& state, const FreeSpace& fresh) {
  if (held(state.spaces, fresh)) return false;
  const bool use = of_use(ground, state, fresh);
  if (!use && (fresh.lo[2] == 0 || held(state.narrow, fresh))) return false;
  std::vector<FreeSpace>& spaces = use ? state.spaces : state.narrow;
  std::erase_if(spaces, [&](const FreeSpace& other) { return holds(fresh, other); });
  spaces.push_back(fresh);
  return true;
}

/// What two level spaces that touch along an axis make together; false where they make nothing new.
bool join_along(int axis, const FreeSpace& a, const FreeSpace& b, FreeSpace& both) {
  const int other = 1 - axis;
  if (a.lo[2] != b.lo[2] || a.lo[axis] > b.hi[axis] || b.lo[axis] > a.hi[axis]) return false;
  both.lo[other] = std::max(a.lo[other], b.lo[other]);
  both.hi[other] = std::min(a.hi[other], b.hi[other]);
  if (both.lo[other] >= both.hi[other]) return false;
  both.lo[axis] = std::min(a.lo[axis], b.lo[axis]);
  both.hi[axis] = std::max(a.hi[axis], b.hi[axis]);
  both.lo[2] = a.lo[2];
  both.hi[2] = std::min(a.hi[2], b.hi[2]);
  return !(both == a) && !(both == b);
}

/// Spaces on one level that touch are joined: together they carry what neither does alone.
void join_level(const PackGround& ground, PackState& state, const FreeSpace& first) {
  std::vector<FreeSpace> todo = {first};
  while (!todo.empty()) {
    const FreeSpace a = todo.back();
    todo.pop_back();
    FreeSpace both;
    for (const bool narrow : {false, true})
      for (std::size_t i = 0; i < (narrow ? state.narrow : state.spaces).size(); ++i) {
        const FreeSpace b = (narrow ? state.narrow : state.spaces)[i];
        for (int axis = 0; axis < 2; ++axis)
          if (join_along(axis, a, b, both) && add_space(ground, state, both)) todo.push_back(both);
      }
  }
}

/// What a solid leaves of the spaces that it meets goes to `pieces`.
void cut_list(std::vector<FreeSpace>& spaces, const FreeSpace& solid, std::vector<FreeSpace>& pieces) {
  std::size_t kept = 0;
  for (std::size_t i = 0; i < spaces.size(); ++i) {
    const FreeSpace s = spaces[i];
    if (!overlap(s, solid)) {
      spaces[kept++] = s;
      continue;
    }
    for (int axis = 0; axis < 2; ++axis) {
      if (s.lo[axis] < solid.lo[axis]) {
        pieces.push_back(s);
        pieces.back().hi[axis] = solid.lo[axis];
      }
      if (s.hi[axis] > solid.hi[axis]) {
        pieces.push_back(s);
        pieces.back().lo[axis] = solid.hi[axis];
      }
    }
    if (s.lo[2] < solid.lo[2]) {
      pieces.push_back(s);
      pieces.back().hi[2] = solid.lo[2];
    }
  }
  spaces.resize(kept);
}

void cut(const PackGround& ground, PackState& state, const FreeSpace& solid) {
  std::vector<FreeSpace>& pieces = state.pieces;
  pieces.clear();
  cut_list(state.spaces, solid, pieces);
  cut_list(state.narrow, solid, pieces);
  for (const FreeSpace& piece : pieces) add_space(ground, state, piece);
}

/// The space over a solid, up to a ceiling.
void add_top(const PackGround& ground, PackState& state, const FreeSpace& solid, int ceiling) {
  FreeSpace top = solid;
  top.lo[2] = solid.hi[2];
  top.hi[2] = ceiling;
  if (top.lo[2] >= top.hi[2]) return;
  // Even where no box fits on it alone, it may with its neighbours.
  add_space(ground, state, top);
  join_level(ground, state, top);
}

void add_up(const PackGround& ground, PackState& state, std::size_t axis) {
  state.reach[axis].clear(ground.room[axis]);
  for (std::size_t b = 0; b < state.left.size(); ++b)
    for (const PackGround::Side& side : ground.sides[axis][b])
      state.reach[axis].add(side.size, std::min(state.left[b], side.most));
}

}  // namespace

bool of_use(const PackGround& ground, const PackState& state, const FreeSpace& s) {
  const SizeKey key = space_key(s.hi[0] - s.lo[0], s.hi[1] - s.lo[1], s.hi[2] - s.lo[2]);
  for (std::size_t b = 0; b < state.left.size(); ++b) {
    if (state.left[b] == 0) continue;
    for (const SizeKey box : ground.box_keys[b])
      if (key_fits(box, key)) return true;
  }
  return false;
}

PackGround make_ground(const PackProblem& problem) {
  PackGround g;
  g.problem = &problem;
  g.room = problem.room;
  g.blocks = make_blocks(problem);
  for (const PackBlock& block : g.blocks) {
    g.worth.push_back(static_cast<double>(block.volume) * std::pow(block.boxes, -fewer_boxes));
    g.needs_of.push_back({static_cast<int>(g.needs.size()), static_cast<int>(g.needs.size() + block.needs.size())});
    g.needs.insert(g.needs.end(), block.needs.begin(), block.needs.end());
  }
  std::vector<std::size_t> order(g.blocks.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return g.worth[a] > g.worth[b]; });
  for (const std::size_t i : order)
    g.list.push_back(size_key(g.blocks[i].size[0], g.blocks[i].size[1], g.blocks[i].size[2], static_cast<int>(i)));
  for (const PackBox& box : problem.boxes) {
    g.box_keys.emplace_back();
    for (const PackStance& s : box.stances)
      if (*std::max_element(s.size.begin(), s.size.end()) <= longest_side)
        g.box_keys.back().push_back(size_key(s.size[0], s.size[1], s.size[2], 0));
    for (std::size_t axis = 0; axis < 3; ++axis) {
      std::vector<int> sizes;
      for (const PackStance& s : box.stances) sizes.push_back(s.size[axis]);
      std::sort(sizes.begin(), sizes.end());
      sizes.erase(std::unique(sizes.begin(), sizes.end()), sizes.end());
      auto& sides = g.sides[axis].emplace_back();
      for (const int size : sizes) sides.push_back({size, problem.room[axis] / size});
      g.cap[axis].push_back(sides.empty() ? 0 : sides.front().most);
    }
  }
  return g;
}

PackState first_state(const PackGround& g) {
  PackState state;
  for (const PackBox& box : g.problem->boxes) state.left.push_back(box.stances.empty() ? 0 : box.count);
  state.spaces.push_back({{0, 0, 0}, {g.room[0], g.room[1], g.room[2]}});
  for (const PackObstacle& o : g.problem->obstacles)
    cut(g, state, {{o.from[0], o.from[1], o.from[2]}, {o.to[0], o.to[1], o.to[2]}});
  for (const StoodBox& b : g.problem->standing) {
    const FreeSpace solid = {{b.at[0], b.at[1], b.at[2]},
                             {b.at[0] + b.size[0], b.at[1] + b.size[1], b.at[2] + b.size[2]}};
    cut(g, state, solid);
    add_top(g, state, solid, g.room[2]);
    state.stood.push_back({-1, solid, false});
    if (g.problem->rules) state.boxes.push_back(b);
  }
  state.list = g.list;
  for (std::size_t axis = 0; axis < 3; ++axis) add_up(g, state, axis);
  return state;
}

bool enough_left(const PackGround& ground, const PackState& state, int block) {
  const PackGround::Needs range = ground.needs_of.data()[block];
  const BlockNeed* needs = ground.needs.data();
  const int* left = state.left.data();
  for (int n = range.from; n < range.to; ++n)
    if (needs[n].count > left[needs[n].box]) return false;
  return true;
}

void drop_space(PackState& state, const FreeSpace& space) {
  std::erase(state.spaces, space);
  if (space.lo[2] > 0 && !held(state.narrow, space)) state.narrow.push_back(space);
}

void thin_list(const PackGround& ground, PackState& state) {
  std::erase_if(state.list, [&](SizeKey key) { return !enough_left(ground, state, static_cast<int>(key & 0xFFFF)); });
}

void place_block(const PackGround& ground, PackState& state, int index, const FreeSpace& space, bool mirrored) {
  const PackBlock& block = ground.blocks[static_cast<std::size_t>(index)];
  FreeSpace solid;
  for (int k = 0; k < 3; ++k) {
    solid.lo[k] = space.lo[k];
    if (k == 1 && mirrored) solid.lo[k] = space.hi[k] - block.size[1];
    solid.hi[k] = solid.lo[k] + block.size[static_cast<std::size_t>(k)];
  }
  bool dirty[3] = {false, false, false};
  for (const BlockNeed& need : block.needs) {
    const auto b = static_cast<std::size_t>(need.box);
    state.left[b] -= need.count;
    for (std::size_t axis = 0; axis < 3; ++axis) dirty[axis] |= state.left[b] < ground.cap[axis][b];
  }
  for (std::size_t axis = 0; axis < 3; ++axis)
    if (dirty[axis]) add_up(ground, state, axis);
  state.volume += block.volume;
  state.stood.push_back({index, solid, mirrored});
  if (ground.problem->rules)
    add_boxes(*ground.problem, ground.blocks, index, {solid.lo[0], solid.lo[1], solid.lo[2]}, mirrored, state.boxes);
  cut(ground, state, solid);
  FreeSpace level = solid;
  level.hi[0] = solid.lo[0] + block.flat_length;
  if (mirrored)
    level.lo[1] = solid.hi[1] - block.flat_width;
  else
    level.hi[1] = solid.lo[1] + block.flat_width;
  add_top(ground, state, level, space.hi[2]);
}

}  // namespace dunnage
