// SPDX-License-Identifier: MIT
#include "load/cargo_rules.h"

#include <algorithm>
#include <tuple>

#include "base/slack.h"
#include "formula/vehicle_load.h"

namespace dunnage {
namespace {

/// How far one reaches, mm, over what stays aboard, and within a door under its top. Common practice, no source.
constexpr int arm = 600;

bool cross(const StoodBox& a, const StoodBox& b, std::size_t axis) {
  return a.at[axis] < b.at[axis] + b.size[axis] && b.at[axis] < a.at[axis] + a.size[axis];
}

StoodBox solid_of(const PackObstacle& o) {
  return {-1, 0, o.from, {o.to[0] - o.from[0], o.to[1] - o.from[1], o.to[2] - o.from[2]}};
}

/// Lies wholly within the opening.
bool within(const SideDoor& door, const StoodBox& b) {
  return b.at[0] >= door.from && end(b, 0) <= door.to && end(b, 2) <= door.height;
}

/// `other` reaches farther towards the wall of the door, before the box.
bool towards(const SideDoor& door, const StoodBox& b, const StoodBox& other) {
  return cross(b, other, 0) && (door.left ? other.at[1] < b.at[1] : end(other, 1) > end(b, 1));
}

bool clear_of_blocks(const Cargo& cargo, const SideDoor& door, const StoodBox& b) {
  return std::none_of(cargo.obstacles.begin(), cargo.obstacles.end(), [&](const PackObstacle& o) {
    const StoodBox solid = solid_of(o);
    return towards(door, b, solid) && cross(b, solid, 2);
  });
}

/// What stands higher than the rear door is lifted to its place inside: behind it as much is free as it is deep.
bool past_lintel(const Cargo& cargo, const StoodBox& b) {
  return cargo.lintel > 0 && end(b, 2) > cargo.lintel && end(b, 0) + std::min(b.size[0], arm) > cargo.room[0];
}

}  // namespace

bool CargoRules::bears(const StoodBox& below, const StoodBox& above) const {
  const CargoKind& low = kind(below);
  const CargoKind& high = kind(above);
  return low.bears > 0 && high.mass_known && low.mass_known && !exceeds(high.mass, low.mass);
}

/// For hands, for the door, or on wheels that nothing blocks up there, so tall that it tips before it slides.
bool CargoRules::too_high(const StoodBox& b) const {
  if (b.at[2] > kind(b).highest || past_lintel(cargo_, b)) return true;
  return b.at[2] > 0 && kind(b).wheels && std::min(b.size[0], b.size[1]) < b.size[2] * working_load.rearward;
}

/// Of two boxes, the one that stays longer stands neither on the other nor between it and the door, nor must anyone
/// reach far over it. What is rolled is rolled along the floor, so nothing at any height may hang over its way.
bool CargoRules::comes_off(const StoodBox& a, const StoodBox& b) const {
  if (kind(a).stop == kind(b).stop) return true;
  const StoodBox& first = kind(a).stop < kind(b).stop ? a : b;
  const StoodBox& later = kind(a).stop < kind(b).stop ? b : a;
  if (!cross(first, later, 1)) return true;
  if (first.at[2] > 0 && end(later, 0) - end(first, 0) > arm) return false;
  if (cross(first, later, 0)) return later.at[2] < first.at[2];
  if (later.at[0] < first.at[0]) return true;
  return !cross(first, later, 2) && !(kind(first).wheels && first.at[2] == 0);
}

bool CargoRules::side_way_out(const SideDoor& door, const StoodBox& first,
                              const std::vector<const StoodBox*>& all) const {
  if (!within(door, first) || !clear_of_blocks(cargo_, door, first)) return false;
  const bool rolled = kind(first).wheels && first.at[2] == 0;
  return std::none_of(all.begin(), all.end(), [&](const StoodBox* later) {
    if (later == &first || kind(*later).stop <= kind(first).stop) return false;
    if (later->at[2] >= end(first, 2) && shared_base(*later, first) > 0) return true;
    return towards(door, first, *later) && (rolled || cross(first, *later, 2));
  });
}

/// By one door at least, past all that stays longer.
bool CargoRules::way_out(const StoodBox& first, const std::vector<const StoodBox*>& all) const {
  const bool rear =
      rear_takes(cargo_, {first.size, first.word}) && std::all_of(all.begin(), all.end(), [&](const StoodBox* later) {
        return kind(*later).stop <= kind(first).stop || comes_off(first, *later);
      });
  return rear || std::any_of(cargo_.sides.begin(), cargo_.sides.end(),
                             [&](const SideDoor& door) { return side_way_out(door, first, all); });
}

/// The last `fresh` ones join those that stand: asked again are they and whatever comes off before one of them.
bool CargoRules::all_come_off(const std::vector<const StoodBox*>& all, std::size_t fresh) const {
  int last = -1;
  for (std::size_t i = all.size() - fresh; i < all.size(); ++i) last = std::max(last, kind(*all[i]).stop);
  for (std::size_t i = 0; i < all.size(); ++i)
    if ((i >= all.size() - fresh || kind(*all[i]).stop < last) && !way_out(*all[i], all)) return false;
  return true;
}

bool CargoRules::carried_within(const std::vector<const StoodBox*>& all) const {
  std::vector<const StoodBox*> down = all;
  std::stable_sort(down.begin(), down.end(), [](const StoodBox* a, const StoodBox* b) { return a->at[2] > b->at[2]; });
  struct OnTop {
    double mass = 0;
    int levels = 0;
  };
  std::vector<OnTop> carried(down.size());
  for (std::size_t i = 0; i < down.size(); ++i) {
    if (down[i]->at[2] == 0) break;
    std::int64_t borne = 0;
    for (std::size_t j = i + 1; j < down.size(); ++j)
      if (end(*down[j], 2) == down[i]->at[2]) borne += shared_base(*down[j], *down[i]);
    if (borne == 0) continue;
    const double passed = (kind(*down[i]).mass + carried[i].mass) / static_cast<double>(borne);
    for (std::size_t j = i + 1; j < down.size(); ++j) {
      if (end(*down[j], 2) != down[i]->at[2]) continue;
      const std::int64_t shared = shared_base(*down[j], *down[i]);
      if (shared == 0) continue;
      OnTop& on = carried[j];
      on.mass += passed * static_cast<double>(shared);
      on.levels = std::max(on.levels, carried[i].levels + 1);
      const CargoKind& below = kind(*down[j]);
      if (on.levels > below.levels || (on.mass > 0 && exceeds(on.mass, below.bears))) return false;
    }
  }
  return true;
}

bool CargoRules::allows(const std::vector<StoodBox>& standing, const std::vector<StoodBox>& fresh) const {
  std::vector<const StoodBox*> all;
  for (const StoodBox& b : standing) all.push_back(&b);
  for (const StoodBox& b : fresh) all.push_back(&b);
  bool stacked = false;
  for (const StoodBox& b : fresh) {
    if (too_high(b)) return false;
    for (const StoodBox* other : all) {
      if (other == &b) continue;
      if (cargo_.sides.empty() && !comes_off(b, *other)) return false;
      if (end(*other, 2) == b.at[2] && shared_base(*other, b) > 0) {
        stacked = true;
        if (!bears(*other, b)) return false;
      }
    }
  }
  if (!cargo_.sides.empty() && !all_come_off(all, fresh.size())) return false;
  return !stacked || carried_within(all);
}

bool CargoRules::allows(const std::vector<StoodBox>& standing, const StoodBox& fresh) const {
  if (too_high(fresh)) return false;
  bool stacked = false;
  for (const StoodBox& other : standing) {
    if (cargo_.sides.empty() && !comes_off(fresh, other)) return false;
    if (end(other, 2) != fresh.at[2] || shared_base(other, fresh) == 0) continue;
    stacked = true;
    if (!bears(other, fresh)) return false;
  }
  if (!stacked && cargo_.sides.empty()) return true;
  std::vector<const StoodBox*> all;
  for (const StoodBox& b : standing) all.push_back(&b);
  all.push_back(&fresh);
  return (cargo_.sides.empty() || all_come_off(all, 1)) && (!stacked || carried_within(all));
}

bool CargoRules::comes_off(const std::vector<StoodBox>& standing, const StoodBox& fresh) const {
  if (cargo_.sides.empty())
    return std::all_of(standing.begin(), standing.end(), [&](const StoodBox& b) { return comes_off(b, fresh); });
  std::vector<const StoodBox*> all;
  for (const StoodBox& b : standing) all.push_back(&b);
  all.push_back(&fresh);
  return all_come_off(all, 1);
}

bool stands(const Cargo& cargo, const std::vector<StoodBox>& boxes) {
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    const StoodBox& a = boxes[i];
    if (past_lintel(cargo, a)) return false;
    std::int64_t borne = a.at[2] == 0 ? std::int64_t{a.size[0]} * a.size[1] : 0;
    for (std::size_t k = 0; k < 3; ++k)
      if (a.at[k] < 0 || end(a, k) > cargo.room[k]) return false;
    for (const PackObstacle& o : cargo.obstacles)
      if (in_one_place(a, solid_of(o))) return false;
    for (std::size_t j = 0; j < boxes.size(); ++j) {
      if (i == j) continue;
      if (j > i && in_one_place(a, boxes[j])) return false;
      if (end(boxes[j], 2) == a.at[2]) borne += shared_base(a, boxes[j]);
    }
    if (borne < std::int64_t{a.size[0]} * a.size[1]) return false;
  }
  return true;
}

namespace {

/// Who is aboard while pieces come and go.
class Deck {
 public:
  Deck(const Cargo& cargo, const std::vector<StoodBox>& boxes, bool full)
      : cargo_(cargo), boxes_(boxes), aboard_(boxes.size(), full) {}

  void set(std::size_t i, bool aboard) { aboard_[i] = aboard; }
  bool aboard(std::size_t i) const { return aboard_[i]; }

  /// Nothing stands on it, nothing between it and a door.
  bool leaves(std::size_t i) const {
    const StoodBox& b = boxes_[i];
    for (std::size_t j = 0; j < boxes_.size(); ++j)
      if (j != i && aboard_[j] && boxes_[j].at[2] == end(b, 2) && shared_base(boxes_[j], b) > 0) return false;
    if ((cargo_.sides.empty() || rear_takes(cargo_, {b.size, b.word})) && leaves_by_rear(i)) return true;
    return std::any_of(cargo_.sides.begin(), cargo_.sides.end(),
                       [&](const SideDoor& d) { return leaves_by_side(i, d); });
  }

 private:
  int stop(std::size_t i) const { return cargo_.kinds[static_cast<std::size_t>(boxes_[i].box)].stop; }

  bool leaves_by_side(std::size_t i, const SideDoor& door) const {
    const StoodBox& b = boxes_[i];
    if (!within(door, b) || !clear_of_blocks(cargo_, door, b)) return false;
    for (std::size_t j = 0; j < boxes_.size(); ++j)
      if (j != i && aboard_[j] && towards(door, b, boxes_[j]) && cross(b, boxes_[j], 2)) return false;
    return true;
  }

  /// An arch is passed where a gap beside it takes the piece.
  bool leaves_by_rear(std::size_t i) const {
    const StoodBox& b = boxes_[i];
    for (std::size_t j = 0; j < boxes_.size(); ++j) {
      if (j == i || !aboard_[j] || !cross(b, boxes_[j], 1)) continue;
      if (end(boxes_[j], 0) > end(b, 0) && cross(b, boxes_[j], 2)) return false;
      if (stop(j) > stop(i) && b.at[2] > 0 && end(boxes_[j], 0) - end(b, 0) > arm) return false;
    }
    for (const PackObstacle& o : cargo_.obstacles) {
      const StoodBox solid = solid_of(o);
      if (end(solid, 0) > end(b, 0) && cross(b, solid, 1) && cross(b, solid, 2) &&
          gap_beside(i, solid) < std::min(b.size[0], b.size[1]))
        return false;
    }
    return true;
  }

  int gap_beside(std::size_t i, const StoodBox& arch) const {
    StoodBox aisle = boxes_[i];
    aisle.at[0] = arch.at[0];
    aisle.size[0] = arch.size[0];
    aisle.at[1] = 0;
    aisle.size[1] = cargo_.room[1];
    std::vector<std::pair<int, int>> taken;
    const auto take = [&](const StoodBox& s) {
      if (in_one_place(aisle, s)) taken.emplace_back(s.at[1], end(s, 1));
    };
    for (const PackObstacle& o : cargo_.obstacles) take(solid_of(o));
    for (std::size_t j = 0; j < boxes_.size(); ++j)
      if (j != i && aboard_[j]) take(boxes_[j]);
    std::sort(taken.begin(), taken.end());
    int from = 0, widest = 0;
    for (const auto& [low, high] : taken) {
      widest = std::max(widest, low - from);
      from = std::max(from, high);
    }
    return std::max(widest, cargo_.room[1] - from);
  }

  const Cargo& cargo_;
  const std::vector<StoodBox>& boxes_;
  std::vector<bool> aboard_;
};

/// All come off, stop by stop; `order`: as they did.
bool come_off(const Cargo& cargo, const std::vector<StoodBox>& boxes, std::vector<std::size_t>* order) {
  const auto stop = [&](std::size_t i) { return cargo.kinds[static_cast<std::size_t>(boxes[i].box)].stop; };
  Deck out(cargo, boxes, true);
  for (int at = 0; at <= cargo.stops; ++at) {
    std::size_t left = 0;
    for (bool moved = true; moved;) {
      moved = false;
      left = 0;
      for (std::size_t i = boxes.size(); i-- > 0;) {
        if (!out.aboard(i) || stop(i) != at) continue;
        if (out.leaves(i)) {
          out.set(i, false);
          if (order != nullptr) order->push_back(i);
          moved = true;
        } else {
          ++left;
        }
      }
    }
    if (left > 0) return false;
  }
  return true;
}

bool come_in(const Cargo& cargo, const std::vector<StoodBox>& boxes) {
  Deck in(cargo, boxes, false);
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    if (!in.leaves(i)) return false;
    in.set(i, true);
  }
  return true;
}

std::vector<StoodBox> order_by_rows(std::vector<StoodBox> boxes) {
  std::stable_sort(boxes.begin(), boxes.end(), [](const StoodBox& a, const StoodBox& b) {
    return std::tie(a.at[0], a.at[2], a.at[1]) < std::tie(b.at[0], b.at[2], b.at[1]);
  });
  const auto before = [](const StoodBox& a, const StoodBox& b) {
    if (end(a, 2) == b.at[2] && shared_base(a, b) > 0) return true;
    return end(a, 0) <= b.at[0] && cross(a, b, 1) && cross(a, b, 2);
  };
  std::vector<int> waits(boxes.size(), 0);
  for (std::size_t i = 0; i < boxes.size(); ++i)
    for (const StoodBox& b : boxes) waits[i] += before(b, boxes[i]) ? 1 : 0;
  std::vector<StoodBox> out;
  std::vector<bool> in(boxes.size(), false);
  while (out.size() < boxes.size()) {
    std::size_t next = boxes.size();  // the first that waits for none; of a circle, the first
    for (std::size_t i = 0; i < boxes.size() && (next == boxes.size() || waits[next] > 0); ++i)
      if (!in[i] && (next == boxes.size() || waits[i] == 0)) next = i;
    in[next] = true;
    out.push_back(boxes[next]);
    for (std::size_t i = 0; i < boxes.size(); ++i)
      if (!in[i] && before(boxes[next], boxes[i])) --waits[i];
  }
  return out;
}

}  // namespace

bool ways_free(const Cargo& cargo, const std::vector<StoodBox>& boxes) {
  return come_off(cargo, boxes, nullptr) && come_in(cargo, boxes);
}

std::vector<StoodBox> loading_order(const Cargo& cargo, std::vector<StoodBox> boxes) {
  std::vector<StoodBox> by_rows = order_by_rows(std::move(boxes));
  std::vector<std::size_t> off;
  if (cargo.sides.empty() || come_in(cargo, by_rows) || !come_off(cargo, by_rows, &off)) return by_rows;
  std::vector<StoodBox> out;
  for (std::size_t i = off.size(); i-- > 0;) out.push_back(by_rows[off[i]]);
  return out;
}

}  // namespace dunnage
