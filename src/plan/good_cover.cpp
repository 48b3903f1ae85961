// SPDX-License-Identifier: MIT
// Some of what covers is taken away, what is short then is covered again by what gives most for its cost, and what is
// no longer needed is left out: over and over, a little worse now and then on the way to better.
#include "plan/good_cover.h"

#include <algorithm>
#include <cstdint>
#include <numeric>

namespace dunnage {

namespace {

/// Terms looked at for an effort of 1: about half a second.
constexpr double most_work = 1.5e8;
/// How much dearer than the best a cover may be to go on from: at first, at the end.
constexpr double first_slack = 0.02, last_slack = 0.001;

class Improver {
 public:
  Improver(const IntegerModel& model, double effort)
      : model_(model),
        columns_(model.columns.size()),
        units_(model.columns.size(), 0),
        have_(model.rows.size(), 0),
        weight_(model.rows.size(), 1),
        work_left_(effort * most_work) {
    for (std::size_t r = 0; r < model.rows.size(); ++r)
      for (const auto& [column, each] : model.rows[r].terms)
        columns_[static_cast<std::size_t>(column)].emplace_back(r, each);
  }

  std::optional<std::vector<long>> run() {
    for (std::size_t r = 0; r < have_.size(); ++r) {
      double all = 0;
      for (const auto& [column, each] : model_.rows[r].terms)
        all += each * model_.columns[static_cast<std::size_t>(column)].upper;
      if (all < model_.rows[r].low - tolerance) return std::nullopt;
      if (model_.rows[r].low > 0) short_.push_back(r);
    }
    cover();
    leave_out();
    std::vector<long> best = units_;
    double best_cost = cost_, all_work = work_left_;
    while (work_left_ > 0) {
      const std::vector<long> before = units_;
      const double cost_before = cost_;
      take_away();
      cover();
      leave_out();
      const double slack = last_slack + (first_slack - last_slack) * std::max(0.0, work_left_) / all_work;
      if (cost_ < best_cost - tolerance) {
        best_cost = cost_;
        best = units_;
      } else if (cost_ > best_cost * (1 + slack) && cost_ > cost_before) {
        go_back(before);
      }
    }
    return best;
  }

 private:
  double low(std::size_t row) const { return model_.rows[row].low; }
  double cost(std::size_t column) const { return model_.columns[column].cost; }

  void add(std::size_t column, long units) {
    units_[column] += units;
    cost_ += cost(column) * static_cast<double>(units);
    for (const auto& [row, each] : columns_[column]) have_[row] += each * static_cast<double>(units);
    work_left_ -= static_cast<double>(columns_[column].size());
  }

  void go_back(const std::vector<long>& before) {
    for (std::size_t c = 0; c < units_.size(); ++c)
      if (units_[c] != before[c]) add(c, before[c] - units_[c]);
  }

  /// What a unit more gives to rows that are short, for its cost. Rows that were hard to cover count more.
  double worth(std::size_t column) {
    double gain = 0;
    for (const auto& [row, each] : columns_[column])
      if (const double lacks = low(row) - have_[row]; lacks > tolerance)
        gain += weight_[row] * std::min(each, lacks) / low(row);
    work_left_ -= static_cast<double>(columns_[column].size());
    // What has just been taken away is worth a little less: else it would all come back.
    const double stirred = (dropped_[column] == round_ ? 0.7 : 0.9) + 0.2 * static_cast<double>(next() % 1024) / 1024;
    return gain * stirred / (cost(column) + 1e-3);
  }

  void cover() {
    while (true) {
      std::erase_if(short_, [&](std::size_t r) { return have_[r] >= low(r) - tolerance; });
      if (short_.empty()) return;
      std::size_t best = columns_.size();
      double most = -1;
      ++stamp_;
      for (const std::size_t r : short_)
        for (const auto& term : model_.rows[r].terms) {
          const auto c = static_cast<std::size_t>(term.first);
          if (seen_[c] == stamp_) continue;
          seen_[c] = stamp_;
          if (static_cast<double>(units_[c]) >= model_.columns[c].upper) continue;
          const double value = worth(c);
          if (value > most || (value == most && c < best)) {
            most = value;
            best = c;
          }
        }
      add(best, 1);
    }
  }

  /// Dearest first.
  void leave_out() {
    std::vector<std::size_t> taken;
    for (std::size_t c = 0; c < units_.size(); ++c)
      if (units_[c] > 0 && cost(c) > 0) taken.push_back(c);
    std::stable_sort(taken.begin(), taken.end(), [&](std::size_t a, std::size_t b) { return cost(a) > cost(b); });
    for (const std::size_t c : taken)
      while (units_[c] > 0 && std::all_of(columns_[c].begin(), columns_[c].end(), [&](const auto& term) {
               return have_[term.first] - term.second >= low(term.first) - tolerance;
             }))
        add(c, -1);
    work_left_ -= static_cast<double>(units_.size());
  }

  /// A share of what covers, here and there, and all that serves one row. The numbers are those of a fixed series: no
  /// chance is in them.
  void take_away() {
    ++round_;
    const std::size_t one_in = 5 + next() % 20;
    const std::size_t row = next() % have_.size();
    for (const auto& term : model_.rows[row].terms) drop(static_cast<std::size_t>(term.first));
    for (std::size_t c = 0; c < units_.size(); ++c)
      if (units_[c] > 0 && next() % one_in == 0) drop(c);
    std::sort(short_.begin(), short_.end());
    short_.erase(std::unique(short_.begin(), short_.end()), short_.end());
  }

  void drop(std::size_t column) {
    if (units_[column] == 0) return;
    for (const auto& gone : columns_[column]) short_.push_back(gone.first);
    add(column, -1);
    dropped_[column] = round_;
  }

  std::size_t next() {
    series_ = series_ * 6364136223846793005u + 1442695040888963407u;
    return static_cast<std::size_t>(series_ >> 33);
  }

  const IntegerModel& model_;
  std::vector<std::vector<std::pair<std::size_t, double>>> columns_;  ///< rows and how much, by column
  std::vector<long> units_;
  std::vector<double> have_, weight_;
  std::vector<std::size_t> short_;
  std::vector<long> seen_ = std::vector<long>(columns_.size(), 0);
  std::vector<long> dropped_ = std::vector<long>(columns_.size(), 0);  ///< in which round it was last taken away
  long stamp_ = 0, round_ = 0;
  double cost_ = 0, work_left_;
  std::uint64_t series_ = 1;
};

}  // namespace

bool only_covers(const IntegerModel& model) {
  return std::all_of(model.rows.begin(), model.rows.end(), [](const IntegerModel::Row& row) {
    return row.high >= IntegerModel::no_limit &&
           std::all_of(row.terms.begin(), row.terms.end(), [](const auto& term) { return term.second >= 0; });
  });
}

std::optional<std::vector<long>> good_cover(const IntegerModel& model, double effort) {
  return Improver(model, effort).run();
}

}  // namespace dunnage
