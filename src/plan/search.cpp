// SPDX-License-Identifier: MIT
// Depth first: the bounds of a column are narrowed by each row it stands in until nothing changes, then a column is
// held at its least cost, then kept away from it. A branch that cannot beat the best solution so far is left.
#include "plan/search.h"

#include <algorithm>
#include <cmath>

namespace dunnage {

namespace {

constexpr int most_rounds = 30;
constexpr double beyond = IntegerModel::no_limit / 2;

struct Range {
  double low, high;
};
using Ranges = std::vector<Range>;

/// What a row adds up to, at least and at most.
Range reach(const IntegerModel::Row& row, const Ranges& ranges) {
  Range sum{0, 0};
  for (const auto& [column, value] : row.terms) {
    const Range& r = ranges[static_cast<std::size_t>(column)];
    sum.low += value * (value > 0 ? r.low : r.high);
    sum.high += value * (value > 0 ? r.high : r.low);
  }
  return sum;
}

class Search {
 public:
  Search(const IntegerModel& model, long most_nodes, const std::vector<long>* start)
      : model_(model), nodes_left_(most_nodes) {
    if (!start) return;
    best_.feasible = true;
    best_.values = *start;
    best_.objective = 0;
    for (std::size_t c = 0; c < start->size(); ++c)
      best_.objective += model.columns[c].cost * static_cast<double>((*start)[c]);
  }

  std::optional<IntegerSolution> run() {
    Ranges ranges;
    for (const auto& column : model_.columns) ranges.push_back({0, column.upper});
    const long all = nodes_left_;
    if (!descend(std::move(ranges))) return std::nullopt;
    best_.nodes = all - nodes_left_;
    best_.proved = true;
    best_.bound = best_.objective;
    return std::move(best_);
  }

 private:
  /// Narrows one row's columns. False when the row cannot be kept.
  bool narrow(const IntegerModel::Row& row, Ranges& ranges, bool& changed) const {
    const Range sum = reach(row, ranges);
    if (sum.low > row.high + tolerance || sum.high < row.low - tolerance) return false;
    for (const auto& [column, value] : row.terms) {
      if (value == 0) continue;
      Range& r = ranges[static_cast<std::size_t>(column)];
      const double least = sum.low - value * (value > 0 ? r.low : r.high);  // of all others
      const double most = sum.high - value * (value > 0 ? r.high : r.low);
      double low = row.low > -beyond ? (row.low - most) / value : -beyond;
      double high = row.high < beyond ? (row.high - least) / value : beyond;
      if (value < 0) {
        low = row.high < beyond ? (row.high - least) / value : -beyond;
        high = row.low > -beyond ? (row.low - most) / value : beyond;
      }
      const Range narrowed{std::max(r.low, std::ceil(low - tolerance)), std::min(r.high, std::floor(high + tolerance))};
      if (narrowed.low > narrowed.high) return false;
      if (narrowed.low == r.low && narrowed.high == r.high) continue;
      r = narrowed;
      changed = true;
      return narrow(row, ranges, changed);  // its sums are no longer these
    }
    return true;
  }

  /// Ranges may creep for long towards a contradiction; dividing finds it sooner then.
  bool settle(Ranges& ranges) const {
    bool changed = true;
    for (int round = 0; changed && round < most_rounds; ++round) {
      changed = false;
      for (const auto& row : model_.rows)
        if (!narrow(row, ranges, changed)) return false;
    }
    return true;
  }

  bool keeps_all(const Ranges& ranges) const {
    return std::all_of(model_.rows.begin(), model_.rows.end(), [&](const auto& row) {
      const Range sum = reach(row, ranges);
      return sum.low <= row.high + tolerance && sum.high >= row.low - tolerance;
    });
  }

  double least_cost(const Ranges& ranges) const {
    double sum = 0;
    for (std::size_t c = 0; c < ranges.size(); ++c) {
      const double cost = model_.columns[c].cost;
      sum += cost * (cost >= 0 ? ranges[c].low : ranges[c].high);
    }
    return sum;
  }

  /// The column to divide: of those still open the dearest, or the first where all are free.
  std::size_t open_column(const Ranges& ranges) const {
    std::size_t found = ranges.size();
    for (std::size_t c = 0; c < ranges.size(); ++c)
      if (ranges[c].low < ranges[c].high &&
          (found == ranges.size() || model_.columns[c].cost > model_.columns[found].cost))
        found = c;
    return found;
  }

  void keep(const Ranges& ranges, double cost) {
    best_.feasible = true;
    best_.objective = cost;
    best_.values.clear();
    for (const Range& r : ranges) best_.values.push_back(std::lround(r.low));
  }

  /// False when the nodes are used up.
  bool descend(Ranges ranges) {
    if (nodes_left_-- <= 0) return false;
    if (!settle(ranges)) return true;
    const double cost = least_cost(ranges);
    if (best_.feasible && cost >= best_.objective - tolerance) return true;
    const std::size_t column = open_column(ranges);
    if (column == ranges.size()) {
      if (keeps_all(ranges)) keep(ranges, cost);
      return true;
    }
    Ranges held = ranges;
    const bool low_first = model_.columns[column].cost >= 0;
    if (low_first)
      held[column].high = ranges[column].low++;
    else
      held[column].low = ranges[column].high--;
    return descend(std::move(held)) && descend(std::move(ranges));
  }

  const IntegerModel& model_;
  long nodes_left_;
  IntegerSolution best_;
};

}  // namespace

std::optional<IntegerSolution> search(const IntegerModel& model, long most_nodes, const std::vector<long>* start) {
  return Search(model, most_nodes, start).run();
}

}  // namespace dunnage
