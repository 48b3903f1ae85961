// SPDX-License-Identifier: MIT
// A cover's model falls into portions that share nothing: each is minimised by itself, one thing after another.
#pragma once

#include <utility>
#include <vector>

#include "plan/integer_model.h"

namespace dunnage {

/// By column of a whole model.
using Costs = std::vector<double>;

/// The part of a model that shares no row with the rest. Costs are those of the whole model: what is least in each
/// portion is least in all. Work is counted in nodes of the solver, fewer where a model is larger.
class Portion {
 public:
  Portion(const IntegerModel& whole, std::vector<int> columns, double effort);

  bool has(int column) const { return at_[static_cast<std::size_t>(column)] >= 0; }
  void bound(int column, double upper);
  const std::vector<int>& columns() const { return columns_; }
  const IntegerSolution& last() const { return last_; }
  long nodes() const { return nodes_; }
  /// A step is worth its work for the sake of a tie.
  bool worth_ties() const;

  /// A quick solution that is not kept.
  IntegerSolution look(const Costs& cost);
  /// The best of this cost within all that is held, from `last` on. Where the work runs out first, `last` is the best
  /// that was found and is not proved; it stays as it was where nothing better was found.
  const IntegerSolution& step(const Costs& cost);
  /// The same for what only settles a tie: little work.
  void settle_tie(const Costs& cost);
  /// A solution found by look().
  void take(IntegerSolution solution) { last_ = std::move(solution); }
  /// What the solution costs, and the value of one column in it.
  double value_of(const Costs& cost) const;
  long value_of_column(int column) const;
  /// A solution to start from that somebody else found; by column of the whole model.
  void start_from(const std::vector<long>& values);
  /// From now on a whole cost stays no larger than it is now.
  void hold(const Costs& cost);

 private:
  void set_costs(const Costs& cost);
  IntegerSolution answer(const Costs& cost, double share);

  std::vector<int> columns_, at_;
  IntegerModel model_;
  IntegerSolution last_;
  double effort_;
  bool covers_ = false;  ///< every row only asks for enough, and a good cover is known
  long nodes_ = 0;
};

/// Columns that share a row, directly or through others, stay together; in order of their first column. A column
/// without a row is in none.
std::vector<Portion> portions_of(const IntegerModel& model, double effort);

}  // namespace dunnage
