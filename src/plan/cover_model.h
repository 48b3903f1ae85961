// SPDX-License-Identifier: MIT
// The integer model of a cover: what its columns and rows mean.
#pragma once

#include <map>
#include <set>
#include <vector>

#include "plan/demand_group.h"
#include "plan/draft.h"
#include "plan/solver.h"

namespace dunnage {

/// Units of one case that weigh the same are one column.
struct Candidate {
  int case_index = 0;
  std::vector<int> units;
  long grams = 0;
  bool weight_known = true;
  int column = -1;
};

/// What one unit of a case has of an item: pieces, and metres or litres of what is used up.
struct Holder {
  int case_index, count;
  double measure;
};

/// The model, and where everything stands in it.
struct Build {
  const Draft& draft;
  Cover cover;
  IntegerModel model;
  std::vector<Candidate> candidates;
  std::map<int, std::vector<std::size_t>> by_case;  ///< case -> candidates
  std::map<int, std::vector<Holder>> holders;       ///< item -> cases that hold it
  std::vector<std::vector<int>> option_columns;     ///< by group
  std::vector<int> missing_columns;                 ///< slack of every kind
  std::set<int> cases_seen;
  std::vector<int> case_queue;
};

/// Everything that could have a part in covering a draft's demands. Costs are left at zero.
Build build_model(const Draft& draft);

}  // namespace dunnage
