// SPDX-License-Identifier: MIT
#include "load/trim.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "formula/vehicle_load.h"
#include "load/cargo_rules.h"

namespace dunnage {
namespace {

constexpr double uneven_share = 0.1;  // of the load, more on one side than on the other: common practice, no source
constexpr int most_rounds = 4;
constexpr int shifts = 16;  // steps in which spare length is tried ahead of the load

const CargoKind& kind(const Cargo& cargo, const StoodBox& b) { return cargo.kinds[static_cast<std::size_t>(b.box)]; }

std::vector<PlacedMass> placed(const Cargo& cargo, const std::vector<StoodBox>& boxes, int stop, Length ahead) {
  std::vector<PlacedMass> out;
  for (const StoodBox& b : boxes)
    if (kind(cargo, b).stop >= stop)
      out.push_back({kind(cargo, b).mass * unit::kilogram, ahead + (b.at[0] + b.size[0] / 2.0) * unit::millimetre});
  return out;
}

double above(Mass is, const Maybe<Mass>& limit) { return limit ? std::max(0.0, (is - limit->value).si()) : 0.0; }

double van_over(const Vehicle& v, const std::vector<PlacedMass>& load, double tongue) {
  const Length hitch = v.hitch_behind ? v.hitch_behind->value : Length{};
  const Mass people = v.people_and_fuel ? v.people_and_fuel->value : Mass{};
  const AxleFigures f =
      axle_loads(v.empty_front->value, v.empty_rear->value, v.wheelbase->value, load, tongue * unit::kilogram, hitch);
  return above(f.front + people, v.limit_front) + above(f.rear + people, v.limit_rear) +
         std::max(0.0, (f.total * least_steered - f.front).si());
}

bool has_axles(const Vehicle& v) { return v.empty_front && v.empty_rear && v.wheelbase && v.front_to_cargo; }
bool has_tongue(const Vehicle& v) {
  return v.coupling_to_axle && v.coupling_to_cargo && v.empty_tongue && v.empty_axle;
}

TongueFigures tongue_figures(const Vehicle& v, const std::vector<PlacedMass>& load) {
  return tongue_load(v.empty_axle->value + v.empty_tongue->value, v.empty_tongue->value, v.coupling_to_axle->value,
                     load);
}

double trailer_over(const Vehicle& v, const Vehicle* puller, const std::vector<PlacedMass>& load) {
  const TongueFigures f = tongue_figures(v, load);
  double over = above(f.axle, v.limit_axle) + above(f.tongue, v.limit_tongue) + std::max(0.0, -f.tongue.si());
  if (puller) over += above(f.tongue, puller->limit_tongue);
  if (v.tongue_from) over += std::max(0.0, (v.tongue_from->value - f.share) * f.gross.si());
  if (v.tongue_to) over += std::max(0.0, (f.share - v.tongue_to->value) * f.gross.si());
  return over;
}

/// Where each row begins, which is turned over from left to right, and where each strip lies.
class RowLayout {
 public:
  RowLayout(const Cargo& cargo, const std::vector<StoodBox>& boxes) : boxes_(boxes), row_(rows_of(cargo, boxes)) {
    for (std::size_t i = 0; i < boxes.size(); ++i)
      if (row_[i] < 0) row_[i] = strip_row;
    const int rows = row_.empty() ? 0 : *std::max_element(row_.begin(), row_.end()) + 1;
    from_.assign(static_cast<std::size_t>(std::max(rows, 0)), cargo.room[0]);
    length_.assign(from_.size(), 0);
    for (std::size_t i = 0; i < boxes.size(); ++i)
      if (row_[i] >= 0) from_[of(i)] = std::min(from_[of(i)], boxes[i].at[0]);
    for (std::size_t i = 0; i < boxes.size(); ++i)
      if (row_[i] >= 0) length_[of(i)] = std::max(length_[of(i)], boxes[i].at[0] + boxes[i].size[0] - from_[of(i)]);
    room_ = cargo.room;
    start_ = from_;
    order_.resize(from_.size());
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    mirrored_.assign(from_.size(), false);
    shifted_.assign(boxes.size(), 0);
    hands_ = cargo.hands;
  }

  std::size_t rows() const { return from_.size(); }
  std::vector<std::size_t> strips() const {
    std::vector<std::size_t> out;
    for (std::size_t i = 0; i < row_.size(); ++i)
      if (row_[i] < 0) out.push_back(i);
    return out;
  }

  /// Behind the last row.
  int spare() const { return order_.empty() ? 0 : room_[0] - start_[order_.back()] - length_[order_.back()]; }

  /// One behind the other from the bulkhead, with room for hands where the length allows it.
  void close_up() {
    int sum = 0;
    for (const int length : length_) sum += length;
    const int gaps = static_cast<int>(rows()) - 1;
    const int gap = gaps > 0 ? std::clamp((room_[0] - sum) / gaps, 0, hands_) : 0;
    int x = 0;
    for (const std::size_t r : order_) {
      start_[r] = x;
      x += length_[r] + gap;
    }
  }
  void mirror(std::size_t r) { mirrored_[r] = !mirrored_[r]; }
  void swap(std::size_t i, std::size_t j) {
    std::swap(order_[i], order_[j]);
    close_up();
  }
  /// Moves the rows from the `at`th on towards the rear.
  void open(std::size_t at, int by) {
    for (std::size_t i = at; i < order_.size(); ++i) start_[order_[i]] += by;
  }
  int gap_before(std::size_t at) const {
    if (at == 0) return order_.empty() ? 0 : start_[order_[0]];
    return std::max(0, start_[order_[at]] - start_[order_[at - 1]] - length_[order_[at - 1]] - hands_);
  }
  void move_strip(std::size_t box, int share, int of) {
    shifted_[box] = (room_[0] - boxes_[box].size[0]) * share / of - boxes_[box].at[0];
  }

  std::vector<StoodBox> set() const {
    std::vector<StoodBox> out = boxes_;
    for (std::size_t i = 0; i < out.size(); ++i) {
      out[i].at[0] += row_[i] < 0 ? shifted_[i] : start_[of(i)] - from_[of(i)];
      if (row_[i] >= 0 && mirrored_[of(i)]) out[i].at[1] = room_[1] - out[i].at[1] - out[i].size[1];
    }
    return out;
  }

 private:
  static constexpr int strip_row = -1;
  std::size_t of(std::size_t i) const { return static_cast<std::size_t>(row_[i]); }

  std::vector<StoodBox> boxes_;
  std::vector<int> row_, from_, length_, start_, shifted_;
  std::vector<std::size_t> order_;
  std::vector<bool> mirrored_;
  Spot room_{};
  int hands_ = 0;
};

class Trimmer {
 public:
  Trimmer(const Cargo& cargo, const std::vector<StoodBox>& boxes, double tongue)
      : cargo_(cargo), tongue_(tongue), layout_(cargo, boxes), best_(boxes), trim_(trim_of(cargo, boxes, tongue)) {}

  std::vector<StoodBox> run() {
    RowLayout closed = layout_;
    closed.close_up();
    if (std::vector<StoodBox> boxes = closed.set(); legal(boxes)) take(closed, std::move(boxes));
    for (int round = 0; round < most_rounds && (trim_.over > least || trim_.uneven > least); ++round) {
      const bool turned = mirror(), swapped = swap(), opened = open(), moved = move_strips();
      if (!turned && !swapped && !opened && !moved) break;
    }
    return best_;
  }

 private:
  static constexpr double least = 1e-6;

  bool legal(const std::vector<StoodBox>& boxes) const {
    return stands(cargo_, boxes) && CargoRules(cargo_).allows({}, boxes) &&
           ways_free(cargo_, loading_order(cargo_, boxes));
  }

  void take(const RowLayout& layout, std::vector<StoodBox> boxes) {
    layout_ = layout;
    trim_ = trim_of(cargo_, boxes, tongue_);
    best_ = std::move(boxes);
  }

  bool better(const RowLayout& trial) {
    std::vector<StoodBox> boxes = trial.set();
    const Trim trim = trim_of(cargo_, boxes, tongue_);
    if (!(trim < trim_) || !legal(boxes)) return false;
    take(trial, std::move(boxes));
    return true;
  }

  bool mirror() {
    bool any = false;
    for (std::size_t r = 0; r < layout_.rows() && trim_.uneven > least; ++r) {
      RowLayout trial = layout_;
      trial.mirror(r);
      any |= better(trial);
    }
    return any;
  }

  bool swap() {
    bool any = false;
    for (std::size_t i = 0; i < layout_.rows(); ++i)
      for (std::size_t j = i + 1; j < layout_.rows() && trim_.over > least; ++j) {
        RowLayout trial = layout_;
        trial.swap(i, j);
        any |= better(trial);
      }
    return any;
  }

  /// Empty length before a row, more or less of it: it is closed with a bar, so that it comes after what costs nothing.
  bool open() {
    bool any = false;
    for (std::size_t at = 0; at < layout_.rows(); ++at) {
      const RowLayout base = layout_;
      const int most = base.spare(), least_by = -base.gap_before(at);
      for (int step = 0; step <= shifts && trim_.over > least; ++step) {
        RowLayout trial = base;
        trial.open(at, least_by + (most - least_by) * step / shifts);
        any |= better(trial);
      }
    }
    return any;
  }

  bool move_strips() {
    bool any = false;
    for (const std::size_t strip : layout_.strips())
      for (int step = 0; step <= shifts && trim_.over > least; ++step) {
        RowLayout trial = layout_;
        trial.move_strip(strip, step, shifts);
        any |= better(trial);
      }
    return any;
  }

  const Cargo& cargo_;
  double tongue_;
  RowLayout layout_;
  std::vector<StoodBox> best_;
  Trim trim_;
};

}  // namespace

Trim trim_of(const Cargo& cargo, const std::vector<StoodBox>& boxes, double tongue) {
  Trim trim;
  const Vehicle& v = *cargo.vehicle;
  const bool van = v.kind == Vehicle::Kind::van;
  for (int stop = 0; stop <= cargo.stops; ++stop) {
    if (van && has_axles(v)) trim.over += van_over(v, placed(cargo, boxes, stop, v.front_to_cargo->value), tongue);
    if (!van && has_tongue(v))
      trim.over += trailer_over(v, cargo.puller, placed(cargo, boxes, stop, v.coupling_to_cargo->value));
  }
  double all = 0, turn = 0;
  for (const StoodBox& b : boxes) {
    all += kind(cargo, b).mass;
    turn += kind(cargo, b).mass * (2.0 * b.at[1] + b.size[1] - cargo.room[1]) / cargo.room[1];
  }
  trim.uneven = std::max(0.0, std::abs(turn) - uneven_share * all);
  return trim;
}

double tongue_of(const Cargo& cargo, const std::vector<StoodBox>& boxes) {
  const Vehicle& v = *cargo.vehicle;
  if (v.kind != Vehicle::Kind::trailer || !has_tongue(v)) return 0;
  return tongue_figures(v, placed(cargo, boxes, 0, v.coupling_to_cargo->value)).tongue.si();
}

std::vector<int> rows_of(const Cargo& cargo, const std::vector<StoodBox>& boxes) {
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < boxes.size(); ++i)
    if (!kind(cargo, boxes[i]).strip) order.push_back(i);
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return boxes[a].at[0] < boxes[b].at[0]; });
  std::vector<int> row(boxes.size(), -1);
  int now = -1, reach = -1;
  for (const std::size_t i : order) {
    if (now < 0 || boxes[i].at[0] >= reach) ++now;
    row[i] = now;
    reach = std::max(reach, boxes[i].at[0] + boxes[i].size[0]);
  }
  return row;
}

std::vector<StoodBox> trimmed(const Cargo& cargo, const std::vector<StoodBox>& boxes, double tongue) {
  return Trimmer(cargo, boxes, tongue).run();
}

}  // namespace dunnage
