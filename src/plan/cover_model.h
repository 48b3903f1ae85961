// SPDX-License-Identifier: MIT
// The integer model of a cover: what its columns and rows mean.
#pragma once

#include <compare>
#include <map>
#include <optional>
#include <set>
#include <utility>
#include <vector>

#include "plan/demand_group.h"
#include "plan/draft.h"
#include "plan/solver.h"

namespace dunnage {

/// Units of one case that weigh the same are one column.
struct Candidate {
  int case_index = 0;
  std::vector<int> units;
  long grams = 0;  ///< 0 where the mass is not known
  bool weight_known = true;
  double burden = 0;  ///< grams; an unknown mass is more than all known ones together
  int column = -1;
};

/// What one unit of a case has of an item: pieces, and metres or litres of what is used up.
struct Holder {
  int case_index, count;
  double measure;
};

/// A chain that may be put together, once.
struct ChainUse {
  std::size_t group, chain;
  int used;                 ///< column: 1 where it is
  std::vector<int> pieces;  ///< columns: how many, by kind
};

/// So much of a column.
using Term = std::pair<int, double>;

/// The model, and where everything stands in it.
struct Build {
  const Draft& draft;
  Cover cover;
  IntegerModel model;
  std::vector<Candidate> candidates;
  std::map<int, std::vector<std::size_t>> by_case;  ///< case -> candidates
  std::map<int, std::vector<Holder>> holders;       ///< item -> cases that hold it
  std::map<int, int> any_column;                    ///< case with needs once -> 1 where any unit of it is added
  std::vector<std::vector<Term>> called;            ///< by group: what candidates add to what is asked
  std::vector<std::vector<int>> option_columns;     ///< by group; `direct` where the demand counts the source itself
  std::vector<ChainUse> chain_uses;
  std::vector<int> missing_columns;  ///< slack of every kind
  std::set<int> cases_seen;
  std::vector<int> case_queue;

  static constexpr int direct = -1;
};

/// Where pieces come from: an item by the piece, an item by the measure, or whole units of a case.
struct Source {
  enum class Kind { pieces, measure, units } kind;
  int index;
  auto operator<=>(const Source&) const = default;
};
/// The source of a way that takes one thing from one source; nothing for other ways.
std::optional<Source> single_source(const DemandGroup& group, const Option& option);
/// What units that go anyway supply, and what each candidate would.
double supply_going(const Build& build, const Source& source);
std::vector<Term> supply_added(const Build& build, const Source& source);

/// Everything that could have a part in covering a draft's demands. Costs are left at zero.
Build build_model(const Draft& draft);

/// The case of that index, and its first unit and the one after its last.
inline const Case& case_of(const Build& b, int k) { return b.draft.catalogue.kit.cases[static_cast<std::size_t>(k)]; }
inline std::pair<int, int> units_of(const Build& b, int k) {
  return b.draft.catalogue.units_of[static_cast<std::size_t>(k)];
}

}  // namespace dunnage
