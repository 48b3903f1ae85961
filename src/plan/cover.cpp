// SPDX-License-Identifier: MIT
#include "plan/cover.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "plan/cover_model.h"
#include "plan/dominated.h"

namespace dunnage {

namespace {

constexpr long nodes_for_mass = 200'000;
constexpr long nodes_for_ties = 300;
constexpr long nodes_for_start = 20;
constexpr double none = IntegerModel::no_limit;

using Costs = std::vector<double>;

Costs costs(const Build& b, double (*of)(const Build&, std::size_t candidate)) {
  Costs out(b.model.columns.size(), 0.0);
  for (std::size_t i = 0; i < b.candidates.size(); ++i)
    out[static_cast<std::size_t>(b.candidates[i].column)] = of(b, i);
  return out;
}
Costs missing_costs(const Build& b) {
  Costs out(b.model.columns.size(), 0.0);
  for (const int column : b.missing_columns) out[static_cast<std::size_t>(column)] = 1;
  return out;
}
/// Joined length beyond what is asked, in whole centimetres.
Costs waste_costs(const Build& b) {
  Costs out(b.model.columns.size(), 0.0);
  for (std::size_t g = 0; g < b.cover.groups.size(); ++g)
    for (std::size_t o = 0; o < b.cover.groups[g].options.size(); ++o)
      out[static_cast<std::size_t>(b.option_columns[g][o])] =
          steps_up(b.cover.groups[g].options[o].waste / unit::centimetre);
  return out;
}

/// The part of a model that shares no row with the rest, minimised one thing after another. Costs are those of the
/// whole model: what is least in each portion is least in all.
class Portion {
 public:
  Portion(const IntegerModel& whole, std::vector<int> columns)
      : columns_(std::move(columns)), at_(whole.columns.size(), -1) {
    for (std::size_t i = 0; i < columns_.size(); ++i) at_[static_cast<std::size_t>(columns_[i])] = static_cast<int>(i);
    for (const int c : columns_) model_.columns.push_back(whole.columns[static_cast<std::size_t>(c)]);
    for (const auto& row : whole.rows) {
      if (row.terms.empty() || at_[static_cast<std::size_t>(row.terms.front().first)] < 0) continue;
      model_.rows.push_back(row);
      for (auto& term : model_.rows.back().terms) term.first = at_[static_cast<std::size_t>(term.first)];
    }
  }
  bool has(int column) const { return at_[static_cast<std::size_t>(column)] >= 0; }
  void bound(int column, double upper) {
    model_.columns[static_cast<std::size_t>(at_[static_cast<std::size_t>(column)])].upper = upper;
  }
  const std::vector<int>& columns() const { return columns_; }
  const IntegerSolution& last() const { return last_; }
  long nodes() const { return nodes_; }

  /// A quick solution that is not kept.
  IntegerSolution look(const Costs& cost, long node_limit) {
    for (std::size_t i = 0; i < columns_.size(); ++i)
      model_.columns[i].cost = cost[static_cast<std::size_t>(columns_[i])];
    IntegerSolution found = solve(model_, node_limit, last_.feasible ? &last_.values : nullptr);
    nodes_ += found.nodes;
    return found;
  }
  /// The best of this cost within all that is held. Where the limit comes first, what stood before still stands.
  const IntegerSolution& step(const Costs& cost, long node_limit) {
    const bool nothing =
        std::all_of(columns_.begin(), columns_.end(), [&](int c) { return cost[static_cast<std::size_t>(c)] == 0; });
    if (nothing && last_.feasible) return last_;
    IntegerSolution found = look(cost, node_limit);
    if (found.feasible || !last_.feasible)
      last_ = std::move(found);
    else
      last_.proved = false;
    return last_;
  }
  /// From now on a whole cost stays no larger than it is now.
  void hold(const Costs& cost) {
    IntegerModel::Row row{-none, 0.5, {}};  // room for the solver's tolerance, not for a worse answer
    for (std::size_t i = 0; i < columns_.size(); ++i)
      if (const double each = cost[static_cast<std::size_t>(columns_[i])]; each != 0) {
        row.terms.emplace_back(static_cast<int>(i), each);
        row.high += each * static_cast<double>(last_.values[i]);
      }
    if (!row.terms.empty()) model_.rows.push_back(std::move(row));
  }

 private:
  std::vector<int> columns_, at_;
  IntegerModel model_;
  IntegerSolution last_;
  long nodes_ = 0;
};

/// Columns that share a row, directly or through others, stay together; in order of their first column.
std::vector<Portion> portions_of(const IntegerModel& model) {
  std::vector<int> parent(model.columns.size());
  for (std::size_t c = 0; c < parent.size(); ++c) parent[c] = static_cast<int>(c);
  auto root = [&](int c) {
    while (parent[static_cast<std::size_t>(c)] != c)
      c = parent[static_cast<std::size_t>(c)] = parent[static_cast<std::size_t>(parent[static_cast<std::size_t>(c)])];
    return c;
  };
  for (const auto& row : model.rows)
    for (const auto& term : row.terms) {
      const int x = root(row.terms.front().first), y = root(term.first);
      parent[static_cast<std::size_t>(std::max(x, y))] = std::min(x, y);
    }
  std::map<int, std::vector<int>> groups;
  for (int c = 0; c < static_cast<int>(parent.size()); ++c) groups[root(c)].push_back(c);
  std::vector<Portion> out;
  for (auto& group : groups) out.emplace_back(model, std::move(group.second));
  return out;
}

double grams_of(const Build& b, std::size_t i) { return static_cast<double>(b.candidates[i].grams); }
double one(const Build&, std::size_t) { return 1; }
double rank_of(const Build&, std::size_t i) { return static_cast<double>(i + 1); }

/// A quick cover with nothing missing; where there is none, with as little missing as possible.
IntegerSolution quick_cover(const Build& b, Portion& portion, const Costs& cost) {
  auto bound_missing = [&](bool none_missing) {
    for (const int column : b.missing_columns)
      if (portion.has(column))
        portion.bound(column, none_missing ? 0 : b.model.columns[static_cast<std::size_t>(column)].upper);
  };
  bound_missing(true);
  IntegerSolution quick = portion.look(cost, nodes_for_start);
  if (quick.feasible || !quick.proved) return quick;
  bound_missing(false);
  portion.step(missing_costs(b), nodes_for_mass);
  portion.hold(missing_costs(b));
  return portion.look(cost, nodes_for_start);
}

/// Looks at each portion quickly first: a cover already good rules most of a large kit out.
void narrow(Build& b, std::vector<Portion>& portions, const Costs& cost) {
  std::vector<double> known(b.model.columns.size(), none);
  for (Portion& portion : portions) {
    const IntegerSolution quick = quick_cover(b, portion, cost);
    if (quick.feasible)
      for (const int column : portion.columns()) known[static_cast<std::size_t>(column)] = quick.objective;
  }
  for (const int column : dominated(b, known, cost))
    for (Portion& portion : portions)
      if (portion.has(column)) portion.bound(column, 0);
}

void take_answer(Build& b, const std::vector<long>& values) {
  for (const Candidate& candidate : b.candidates) {
    const long n = values[static_cast<std::size_t>(candidate.column)];
    for (long u = 0; u < n; ++u) b.cover.units.push_back(candidate.units[static_cast<std::size_t>(u)]);
    b.cover.report.mass += static_cast<double>(n * candidate.grams) * unit::gram;
    if (!candidate.weight_known && n > 0) b.cover.report.proved = false;
  }
  std::sort(b.cover.units.begin(), b.cover.units.end());
  for (std::size_t g = 0; g < b.cover.groups.size(); ++g) {
    DemandGroup& group = b.cover.groups[g];
    for (const int column : b.option_columns[g]) group.used.push_back(values[static_cast<std::size_t>(column)]);
    group.missing = values[static_cast<std::size_t>(b.missing_columns[g])];
  }
}

struct CostSet {
  Costs mass, units, waste, rank;
  bool units_first;
};

/// Every step of one portion; its values go into `values`, what is proved of it into the report. Returns a bound on
/// the main cost.
double cover_portion(Portion& portion, const CostSet& cost, std::vector<long>& values, CoverReport& report) {
  const Costs& first = cost.units_first ? cost.units : cost.mass;
  const IntegerSolution main = portion.step(first, nodes_for_mass);
  report.proved = report.proved && main.proved;
  if (!main.feasible) return 0;
  portion.hold(first);
  for (const Costs* next : {cost.units_first ? &cost.mass : &cost.units, &cost.waste}) {
    portion.step(*next, nodes_for_ties);
    portion.hold(*next);
  }
  portion.step(cost.rank, nodes_for_ties);
  for (std::size_t i = 0; i < portion.columns().size(); ++i)
    values[static_cast<std::size_t>(portion.columns()[i])] = portion.last().values[i];
  return std::ceil(main.bound - 1e-6);
}

}  // namespace

Cover find_cover(const Draft& draft) {
  Build b = build_model(draft);
  const CostSet cost{costs(b, grams_of), costs(b, one), waste_costs(b), costs(b, rank_of),
                     draft.catalogue.kit.house.lightest == "units"};
  std::vector<Portion> portions = portions_of(b.model);
  narrow(b, portions, cost.units_first ? cost.units : cost.mass);
  std::vector<long> values(b.model.columns.size(), 0);
  double bound = 0;
  CoverReport& report = b.cover.report;
  report.proved = true;
  for (Portion& portion : portions) {
    bound += cover_portion(portion, cost, values, report);
    report.nodes += portion.nodes();
  }
  take_answer(b, values);
  report.bound = report.proved || cost.units_first ? report.mass : std::min(bound * unit::gram, report.mass);
  return std::move(b.cover);
}

}  // namespace dunnage
