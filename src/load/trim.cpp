// SPDX-License-Identifier: MIT
#include "load/trim.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "formula/vehicle_load.h"
#include "load/cargo_rules.h"

namespace dunnage {
namespace {

constexpr double least_steered = 0.2;  // share on the steered axle: DGUV rule 70, commentary on clause 37
constexpr double uneven_share = 0.1;   // of the load, more on one side than on the other: common practice, no source
constexpr int most_rounds = 4;
constexpr int shifts = 16;             // steps in which spare length is tried ahead of the load

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
  const AxleFigures f = axle_loads(v.empty_front->value, v.empty_rear->value, v.wheelbase->value, load,
                                   tongue * unit::kilogram, hitch);
  return above(f.front + people, v.limit_front) + above(f.rear + people, v.limit_rear) +
         std::max(0.0, (f.total * least_steered - f.front).si());
}

bool has_axles(const Vehicle& v) { return v.empty_front && v.empty_rear && v.wheelbase && v.front_to_cargo; }
bool has_tongue(const Vehicle& v) {
  return v.coupling_to_axle && v.coupling_to_cargo && v.empty_tongue && v.empty_axle;
}

TongueFigures tongue_figures(const Vehicle& v, const std::vector<PlacedMass>& load) {
  return tongue_load(v.empty_axle->value + v.empty_tongue->value, v.empty_tongue->value, v.coupling_to_axle->value, load);
}

double trailer_over(const Vehicle& v, const std::vector<PlacedMass>& load) {
  const TongueFigures f = tongue_figures(v, load);
  double over = above(f.axle, v.limit_axle) + above(f.tongue, v.limit_tongue);
  if (v.tongue_from) over += std::max(0.0, (v.tongue_from->value - f.share) * f.gross.si());
  if (v.tongue_to) over += std::max(0.0, (f.share - v.tongue_to->value) * f.gross.si());
  return over;
}

/// Sets rows down one behind the other from `start`, `gap` apart, each as it was within itself.
class RowLayout {
 public:
  RowLayout(const Cargo& cargo, const std::vector<StoodBox>& boxes) : boxes_(boxes), row_(rows_of(cargo, boxes)) {
    const int rows = row_.empty() ? 0 : *std::max_element(row_.begin(), row_.end()) + 1;
    from_.assign(static_cast<std::size_t>(std::max(rows, 0)), cargo.room[0]);
    to_.assign(from_.size(), 0);
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      if (row_[i] < 0) continue;
      const auto r = static_cast<std::size_t>(row_[i]);
      from_[r] = std::min(from_[r], boxes[i].at[0]);
      to_[r] = std::max(to_[r], boxes[i].at[0] + boxes[i].size[0]);
    }
    for (std::size_t r = 0; r < from_.size(); ++r) length_ += to_[r] - from_[r];
    spare_ = cargo.room[0] - length_;
    width_ = cargo.room[1];
    order.resize(from_.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    mirrored.assign(from_.size(), false);
    if (from_.size() > 1) gap = std::clamp(spare_ / static_cast<int>(from_.size() - 1), 0, cargo.hands);
    spare_ -= gap * static_cast<int>(from_.empty() ? 0 : from_.size() - 1);
  }

  int spare() const { return spare_; }
  std::size_t rows() const { return from_.size(); }

  std::vector<StoodBox> set() const {
    std::vector<int> start(from_.size());
    int x = ahead;
    for (const std::size_t r : order) {
      start[r] = x;
      x += to_[r] - from_[r] + gap;
    }
    std::vector<StoodBox> out = boxes_;
    for (std::size_t i = 0; i < out.size(); ++i) {
      if (row_[i] < 0) continue;
      const auto r = static_cast<std::size_t>(row_[i]);
      out[i].at[0] += start[r] - from_[r];
      if (mirrored[r]) out[i].at[1] = width_ - out[i].at[1] - out[i].size[1];
    }
    return out;
  }

  std::vector<std::size_t> order;
  std::vector<bool> mirrored;
  int ahead = 0, gap = 0;

 private:
  std::vector<StoodBox> boxes_;
  std::vector<int> row_, from_, to_;
  int length_ = 0, spare_ = 0, width_ = 0;
};

class Trimmer {
 public:
  Trimmer(const Cargo& cargo, const std::vector<StoodBox>& boxes, double tongue)
      : cargo_(cargo), tongue_(tongue), layout_(cargo, boxes), best_(boxes), trim_(trim_of(cargo, boxes, tongue)) {}

  std::vector<StoodBox> run() {
    spread();
    for (int round = 0; round < most_rounds && wrong(); ++round)
      if (!mirror() && !swap() && !shift()) break;
    return best_;
  }

 private:
  bool wrong() const { return trim_.over > 1e-6 || trim_.uneven > 1e-6; }

  bool legal(const std::vector<StoodBox>& boxes) const {
    return stands(cargo_, boxes) && CargoRules(cargo_).allows({}, boxes) && ways_free(cargo_, loading_order(boxes));
  }

  void spread() {
    std::vector<StoodBox> boxes = layout_.set();
    if (!legal(boxes)) {
      // Rows hold something between them, such as an arch: they stay where they are.
      fixed_ = true;
      return;
    }
    best_ = std::move(boxes);
    trim_ = trim_of(cargo_, best_, tongue_);
  }

  bool better(const RowLayout& trial) {
    std::vector<StoodBox> boxes = trial.set();
    const Trim trim = trim_of(cargo_, boxes, tongue_);
    if (!(trim < trim_) || !legal(boxes)) return false;
    layout_ = trial;
    best_ = std::move(boxes);
    trim_ = trim;
    return true;
  }

  bool mirror() {
    bool any = false;
    for (std::size_t r = 0; r < layout_.rows() && !fixed_ && trim_.uneven > 1e-6; ++r) {
      RowLayout trial = layout_;
      trial.mirrored[r] = !trial.mirrored[r];
      any |= better(trial);
    }
    return any;
  }

  bool swap() {
    bool any = false;
    for (std::size_t i = 0; i < layout_.rows() && !fixed_; ++i)
      for (std::size_t j = i + 1; j < layout_.rows() && trim_.over > 1e-6; ++j) {
        RowLayout trial = layout_;
        std::swap(trial.order[i], trial.order[j]);
        any |= better(trial);
      }
    return any;
  }

  bool shift() {
    bool any = false;
    for (int step = 0; step <= shifts && !fixed_ && trim_.over > 1e-6; ++step) {
      RowLayout trial = layout_;
      trial.ahead = trial.spare() * step / shifts;
      any |= better(trial);
    }
    return any;
  }

  const Cargo& cargo_;
  double tongue_;
  RowLayout layout_;
  std::vector<StoodBox> best_;
  Trim trim_;
  bool fixed_ = false;
};

}  // namespace

Trim trim_of(const Cargo& cargo, const std::vector<StoodBox>& boxes, double tongue) {
  Trim trim;
  const Vehicle& v = *cargo.vehicle;
  const bool van = v.kind == Vehicle::Kind::van;
  for (int stop = 0; stop <= cargo.stops; ++stop) {
    if (van && has_axles(v)) trim.over += van_over(v, placed(cargo, boxes, stop, v.front_to_cargo->value), tongue);
    if (!van && has_tongue(v)) trim.over += trailer_over(v, placed(cargo, boxes, stop, v.coupling_to_cargo->value));
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
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return boxes[a].at[0] < boxes[b].at[0]; });
  std::vector<int> row(boxes.size(), -1);
  int now = -1, reach = -1;
  for (const std::size_t i : order) {
    if (now < 0 || boxes[i].at[0] >= reach) ++now;
    row[i] = now;
    reach = std::max(reach, boxes[i].at[0] + boxes[i].size[0]);
  }
  return row;
}

std::vector<StoodBox> trimmed(const Cargo& cargo, std::vector<StoodBox> boxes, double tongue) {
  return Trimmer(cargo, boxes, tongue).run();
}

}  // namespace dunnage
