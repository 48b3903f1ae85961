// SPDX-License-Identifier: MIT
#include "load/rows.h"

#include <algorithm>
#include <numeric>
#include <tuple>

#include "load/cargo_rules.h"

namespace dunnage {
namespace {

constexpr std::size_t most_depths = 5;  // of a row that are tried; more changed nothing on random shows

double rank(const CargoKind& kind, RowOrder order) {
  if (kind.stances.empty()) return 0;
  const Spot& s = kind.stances.front().size;
  const double base = static_cast<double>(s[0]) * s[1];
  if (order == RowOrder::strong) return (kind.bears > 0 || kind.highest == 0 ? 1e15 : 0) + kind.mass * 1e9 + base;
  if (order == RowOrder::heavy) return kind.mass * 1e9 + base;
  if (order == RowOrder::wide) return base * 1e4 + s[2];
  return base * s[2];
}

/// A stretch of the cargo space along x in which pieces may stand.
struct Stretch {
  int from = 0, to = 0;
  bool tops_only = false;           ///< not on the floor
  std::vector<StoodBox> near = {};  ///< what reaches into it
  std::vector<Spot> corners = {};   ///< where a piece may be pushed to, the lowest first, then the deepest
  std::vector<StoodBox> placed = {};
};

bool lower(const Spot& a, const Spot& b) { return std::tie(a[2], a[0], a[1]) < std::tie(b[2], b[0], b[1]); }

void add_corner(std::vector<Spot>& corners, const Spot& c) {
  const auto at = std::lower_bound(corners.begin(), corners.end(), c, lower);
  if (at == corners.end() || *at != c) corners.insert(at, c);
}

/// Drops the corners that a box covers.
void bury(const StoodBox& b, std::vector<Spot>& corners) {
  std::erase_if(corners, [&](const Spot& c) {
    return c[0] >= b.at[0] && c[0] < end(b, 0) && c[1] >= b.at[1] && c[1] < end(b, 1) && c[2] >= b.at[2] &&
           c[2] < end(b, 2);
  });
}

void add_corners(const StoodBox& b, std::vector<Spot>& corners) {
  add_corner(corners, {b.at[0], end(b, 1), b.at[2]});
  add_corner(corners, {end(b, 0), b.at[1], b.at[2]});
  add_corner(corners, {b.at[0], b.at[1], end(b, 2)});
}

class RowBuilder {
 public:
  RowBuilder(const Cargo& cargo, std::vector<int> order) : cargo_(cargo), rules_(cargo), order_(std::move(order)) {
    for (const CargoKind& kind : cargo.kinds) plan_.left.push_back(static_cast<int>(kind.units.size()));
  }

  RowPlan build() {
    for (int stop = cargo_.stops; stop >= 0; --stop) {
      add_strips(stop);
      // What the rows of the stops after this one left open, beside them and on them.
      fill_up(kinds_of(stop, false), front_, false);
      add_rows(stop, false);
      fill_up(kinds_of(stop, true), cargo_.room[0], true);
      add_rows(stop, true);
      fill_up(kinds_of(stop, false), cargo_.room[0], false);
      fill_up(kinds_of(stop, true), cargo_.room[0], false);
    }
    return std::move(plan_);
  }

 private:
  const CargoKind& kind(int k) const { return cargo_.kinds[static_cast<std::size_t>(k)]; }

  std::vector<int> kinds_of(int stop, bool soft) const {
    std::vector<int> out;
    for (const int k : order_)
      if (kind(k).stop == stop && kind(k).soft == soft && plan_.left[static_cast<std::size_t>(k)] > 0) out.push_back(k);
    return out;
  }

  /// Long thin pieces along the walls, in turn left and right, beside each other from there inwards.
  void add_strips(int stop) {
    for (const int k : order_) {
      if (!kind(k).strip || kind(k).stop != stop) continue;
      int& left = plan_.left[static_cast<std::size_t>(k)];
      while (left > 0 && add_strip(k)) --left;
    }
  }

  bool add_strip(int k) {
    const PackStance* along = nullptr;
    for (const PackStance& s : kind(k).stances)
      if (along == nullptr || s.size[0] > along->size[0]) along = &s;
    if (along == nullptr || along->size[0] > cargo_.room[0] || 2 * strip_width_ + along->size[1] > cargo_.room[1] / 2)
      return false;
    StoodBox best;
    bool found = false;
    std::vector<int> ys = {0, cargo_.room[1] - along->size[1]};
    for (const StoodBox& b : plan_.boxes) ys.insert(ys.end(), {end(b, 1), b.at[1] - along->size[1]});
    for (const PackObstacle& o : cargo_.obstacles) ys.insert(ys.end(), {o.to[1], o.from[1] - along->size[1]});
    const auto inwards = [&](const StoodBox& b) { return std::min(b.at[1], cargo_.room[1] - end(b, 1)); };
    for (const int y : ys) {
      const StoodBox b{k, along->word, {front_, y, 0}, along->size};
      if ((found && inwards(b) >= inwards(best)) || !free_at(plan_.boxes, b) || !rules_.allows(plan_.boxes, b))
        continue;
      best = b;
      found = true;
    }
    if (!found) return false;
    strip_width_ += found ? along->size[1] / 2 : 0;
    plan_.boxes.push_back(best);
    return true;
  }

  /// What goes anywhere from the bulkhead up to `to`.
  void fill_up(const std::vector<int>& kinds, int to, bool tops_only) {
    if (kinds.empty() || to == 0) return;
    Stretch stretch{0, to, tops_only};
    fill(stretch, plan_.left, kinds);
    plan_.boxes.insert(plan_.boxes.end(), stretch.placed.begin(), stretch.placed.end());
  }

  void add_rows(int stop, bool soft) {
    while (true) {
      const std::vector<int> kinds = kinds_of(stop, soft);
      Stretch best;
      std::vector<int> best_left;
      double best_score = 0;
      for (const int depth : depths(kinds)) {
        Stretch trial{front_, front_ + depth};
        std::vector<int> left = plan_.left;
        const double score = fill(trial, left, kinds) / (depth + cargo_.hands);
        if (score <= best_score) continue;
        best_score = score;
        best = std::move(trial);
        best_left = std::move(left);
      }
      if (best_score == 0) return;
      plan_.boxes.insert(plan_.boxes.end(), best.placed.begin(), best.placed.end());
      plan_.left = std::move(best_left);
      front_ = std::min(best.to + cargo_.hands, cargo_.room[0]);
    }
  }

  std::vector<int> depths(const std::vector<int>& kinds) const {
    std::vector<int> out;
    for (const int k : kinds)
      for (const PackStance& s : kind(k).stances)
        if (front_ + s.size[0] <= cargo_.room[0] && out.size() < most_depths &&
            std::find(out.begin(), out.end(), s.size[0]) == out.end())
          out.push_back(s.size[0]);
    return out;
  }

  /// Puts what it can of these kinds into a stretch, in their order; the volume that went in, m3.
  double fill(Stretch& stretch, std::vector<int>& left, const std::vector<int>& kinds) {
    look_round(stretch);
    double volume = 0;
    for (const int k : kinds) {
      int& count = left[static_cast<std::size_t>(k)];
      StoodBox next;
      while (count > 0 && find_place(k, stretch, next)) {
        --count;
        stretch.near.push_back(next);
        stretch.placed.push_back(next);
        bury(next, stretch.corners);
        add_corners(next, stretch.corners);
        volume += 1e-9 * next.size[0] * next.size[1] * next.size[2];
      }
    }
    return volume;
  }

  void look_round(Stretch& s) const {
    s.corners = {{s.from, 0, 0}};
    for (const PackObstacle& o : cargo_.obstacles) {
      if (o.to[0] <= s.from || o.from[0] >= s.to) continue;
      add_corner(s.corners, {s.from, o.to[1], 0});
      if (o.to[0] < s.to) add_corner(s.corners, {o.to[0], 0, 0});
    }
    for (const StoodBox& b : plan_.boxes) {
      if (end(b, 0) <= s.from || b.at[0] >= s.to) continue;
      s.near.push_back(b);
      add_corner(s.corners, {s.from, end(b, 1), 0});
      add_corners(b, s.corners);
    }
    for (const StoodBox& b : s.near) bury(b, s.corners);
  }

  bool find_place(int k, const Stretch& stretch, StoodBox& out) {
    // What bears nothing ends a column: better at the top of one than on the floor.
    const bool ends_column = kind(k).bears == 0 && kind(k).highest > 0;
    if ((ends_column || stretch.tops_only) && find_among(k, stretch, 1, out)) return true;
    return !stretch.tops_only && find_among(k, stretch, 0, out);
  }

  /// The lowest and deepest corner from a height on in which it stands as the rules want; lengthwise where both ways
  /// do.
  bool find_among(int k, const Stretch& stretch, int lowest, StoodBox& out) {
    for (const Spot& c : stretch.corners) {
      if (c[2] > kind(k).highest) return false;
      if (c[2] < lowest || c[0] < stretch.from) continue;
      bool found = false;
      for (const PackStance& s : kind(k).stances) {
        if (c[0] + s.size[0] > stretch.to || (found && s.size[0] <= out.size[0])) continue;
        const StoodBox b{k, s.word, c, s.size};
        if (!free_at(stretch.near, b) || !rules_.allows(stretch.near, b) || !rules_.comes_off(plan_.boxes, b)) continue;
        out = b;
        found = true;
      }
      if (found) return true;
    }
    return false;
  }

  /// Inside, apart from all, and borne on its whole base.
  bool free_at(const std::vector<StoodBox>& boxes, const StoodBox& b) {
    plan_.work += 5 * static_cast<long>(boxes.size());
    for (std::size_t k = 0; k < 3; ++k)
      if (b.at[k] < 0 || end(b, k) > cargo_.room[k]) return false;
    std::int64_t borne = b.at[2] == 0 ? std::int64_t{b.size[0]} * b.size[1] : 0;
    for (const StoodBox& other : boxes) {
      if (in_one_place(b, other)) return false;
      if (end(other, 2) == b.at[2]) borne += shared_base(other, b);
    }
    if (borne < std::int64_t{b.size[0]} * b.size[1]) return false;
    for (const PackObstacle& o : cargo_.obstacles)
      if (b.at[0] < o.to[0] && o.from[0] < end(b, 0) && b.at[1] < o.to[1] && o.from[1] < end(b, 1) &&
          b.at[2] < o.to[2] && o.from[2] < end(b, 2))
        return false;
    return true;
  }

  const Cargo& cargo_;
  CargoRules rules_;
  std::vector<int> order_;
  RowPlan plan_;
  int front_ = 0, strip_width_ = 0;
};

}  // namespace

std::vector<int> row_order(const Cargo& cargo, RowOrder order) {
  std::vector<int> out(cargo.kinds.size());
  std::iota(out.begin(), out.end(), 0);
  const auto of = [&](int k) { return rank(cargo.kinds[static_cast<std::size_t>(k)], order); };
  std::stable_sort(out.begin(), out.end(), [&](int a, int b) { return of(a) > of(b); });
  return out;
}

RowPlan build_rows(const Cargo& cargo, std::vector<int> order) { return RowBuilder(cargo, std::move(order)).build(); }

}  // namespace dunnage
