// SPDX-License-Identifier: MIT
// A question in whole numbers, and its answer.
#pragma once

#include <utility>
#include <vector>

namespace dunnage {

inline constexpr double tolerance = 1e-6;  ///< of a row: what the solver, too, lets pass

/// Minimise the cost of whole-numbered columns, each from 0 to `upper`, under rows low <= sum <= high.
struct IntegerModel {
  struct Column {
    double cost = 0;
    double upper = 0;
  };
  struct Row {
    double low, high;
    std::vector<std::pair<int, double>> terms;
  };
  std::vector<Column> columns;
  std::vector<Row> rows;

  static constexpr double no_limit = 1e30;
  int add(double cost, double upper) {
    columns.push_back({cost, upper});
    return static_cast<int>(columns.size()) - 1;
  }
};

struct IntegerSolution {
  bool feasible = false;  ///< values hold a solution
  bool proved = false;    ///< it is the best; or, without one, that there is none
  double objective = 0;
  double bound = 0;  ///< no solution can cost less
  long nodes = 0;
  std::vector<long> values;  ///< by column
};

}  // namespace dunnage
