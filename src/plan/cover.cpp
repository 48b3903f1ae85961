// SPDX-License-Identifier: MIT
#include "plan/cover.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "plan/cover_model.h"
#include "plan/dominated.h"
#include "plan/portion.h"

namespace dunnage {

namespace {

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
double centimetres(Length length) { return steps_up(length / unit::centimetre); }
/// Length beyond what is asked, in whole centimetres.
Costs waste_costs(const Build& b) {
  Costs out(b.model.columns.size(), 0.0);
  for (std::size_t g = 0; g < b.cover.groups.size(); ++g)
    for (std::size_t o = 0; o < b.cover.groups[g].options.size(); ++o)
      if (const int column = b.option_columns[g][o]; column != Build::direct)
        out[static_cast<std::size_t>(column)] = centimetres(b.cover.groups[g].options[o].waste);
  for (const ChainUse& use : b.chain_uses) {
    const DemandGroup& group = b.cover.groups[use.group];
    const Chain& chain = group.chains[use.chain];
    if (group.kind.length) out[static_cast<std::size_t>(use.used)] = -centimetres(group.kind.length->value);
    for (std::size_t n = 0; n < chain.kinds.size(); ++n)
      out[static_cast<std::size_t>(use.pieces[n])] = centimetres(chain.kinds[n].length);
  }
  return out;
}

double burden_of(const Build& b, std::size_t i) { return b.candidates[i].burden; }
double grams_of(const Build& b, std::size_t i) { return static_cast<double>(b.candidates[i].grams); }
double unknown_of(const Build& b, std::size_t i) { return b.candidates[i].weight_known ? 0 : 1; }
double one(const Build&, std::size_t) { return 1; }
double rank_of(const Build&, std::size_t i) { return static_cast<double>(i + 1); }

struct CostSet {
  Costs missing, burden, unknown, mass, units, waste, rank;
  bool by_units;
  const Costs& quick() const { return by_units ? units : burden; }
};

CostSet cost_set(const Build& b) {
  return {missing_costs(b), costs(b, burden_of), costs(b, unknown_of), costs(b, grams_of),
          costs(b, one),    waste_costs(b),      costs(b, rank_of),    b.draft.catalogue.kit.house.lightest == "units"};
}

/// Nothing is added, and all that is asked is missing.
std::vector<long> nothing_added(const Build& b) {
  std::vector<bool> missing(b.model.columns.size(), false);
  for (const int column : b.missing_columns) missing[static_cast<std::size_t>(column)] = true;
  std::vector<long> values(b.model.columns.size(), 0);
  for (const auto& row : b.model.rows)
    for (const auto& [column, each] : row.terms)
      if (row.low > 0 && missing[static_cast<std::size_t>(column)])
        values[static_cast<std::size_t>(column)] = std::lround(std::ceil(row.low));
  return values;
}

/// A quick cover with nothing missing; where none is found, as little missing as possible from now on. Returns false
/// where that is not proved.
bool settle_missing(const Build& b, Portion& portion, const CostSet& cost, const std::vector<long>& nothing) {
  auto bound_missing = [&](bool none_missing) {
    for (const int column : b.missing_columns)
      if (portion.has(column))
        portion.bound(column, none_missing ? 0 : b.model.columns[static_cast<std::size_t>(column)].upper);
  };
  bound_missing(true);
  IntegerSolution quick = portion.look(cost.quick());
  if (quick.feasible) {
    portion.take(std::move(quick));
    return true;
  }
  bound_missing(false);
  portion.start_from(nothing);
  const bool proved = portion.step(cost.missing).proved;
  portion.hold(cost.missing);
  return proved;
}

/// A cover already good rules most of a large kit out.
void narrow(Build& b, std::vector<Portion>& portions, const CostSet& cost) {
  std::vector<double> known(b.model.columns.size(), IntegerModel::no_limit);
  for (const Portion& portion : portions)
    for (const int column : portion.columns()) known[static_cast<std::size_t>(column)] = portion.value_of(cost.quick());
  for (const int column : dominated(b, known, cost.quick()))
    for (Portion& portion : portions)
      if (portion.has(column) && portion.value_of_column(column) == 0) portion.bound(column, 0);
}

/// What is known of one portion's cover.
struct Proof {
  bool proved = true;
  double grams = 0, units = 0;  ///< bounds
};

/// Every step of one portion; it stays at the best that was found.
Proof minimise(Portion& portion, const CostSet& cost) {
  Proof proof;
  std::vector<const Costs*> goals = {&cost.unknown, &cost.mass}, ties = {&cost.units};
  if (cost.by_units) std::swap(goals, ties);
  for (const Costs* goal : goals) {
    const IntegerSolution& found = portion.step(*goal);
    proof.proved = proof.proved && found.proved;
    const double bound = std::ceil(found.bound - 1e-6);
    (goal == &cost.units ? proof.units : proof.grams) = bound;
    portion.hold(*goal);
  }
  if (!proof.proved || !portion.worth_ties()) return proof;
  ties.insert(ties.end(), {&cost.waste, &cost.rank});
  for (const Costs* tie : ties) {
    portion.settle_tie(*tie);
    portion.hold(*tie);
  }
  return proof;
}

/// The pieces of one chain as an option.
Option option_of(const Build& b, const ChainUse& use, const std::vector<long>& values) {
  const DemandGroup& group = b.cover.groups[use.group];
  const Chain& chain = group.chains[use.chain];
  Option out;
  int pieces = 0;
  for (std::size_t n = 0; n < chain.kinds.size(); ++n) {
    const int count = static_cast<int>(values[static_cast<std::size_t>(use.pieces[n])]);
    if (count == 0) continue;
    pieces += count;
    out.waste = out.waste + count * chain.kinds[n].length;
    if (chain.kinds[n].item < 0)
      out.units.emplace_back(chain.kinds[n].case_index, count);
    else
      out.pieces.emplace_back(chain.kinds[n].item, count);
  }
  if (group.kind.length) out.waste = out.waste - group.kind.length->value;
  if (chain.joint >= 0 && pieces > 1) out.pieces.emplace_back(chain.joint, pieces - 1);
  return out;
}

double sum_of(const std::vector<Term>& terms, const std::vector<long>& values) {
  double sum = 0;
  for (const auto& [column, each] : terms) sum += each * static_cast<double>(values[static_cast<std::size_t>(column)]);
  return sum;
}

/// How often each way of a group is used. A way that the demand counts by its source takes the rest.
void take_group(Build& b, std::size_t g, const std::vector<long>& values) {
  DemandGroup& group = b.cover.groups[g];
  group.missing = values[static_cast<std::size_t>(b.missing_columns[g])];
  double rest = group.asked + sum_of(b.called[g], values) - static_cast<double>(group.missing);
  for (const int column : b.option_columns[g]) {
    group.used.push_back(column == Build::direct ? 0 : values[static_cast<std::size_t>(column)]);
    rest -= static_cast<double>(group.used.back());
  }
  for (const ChainUse& use : b.chain_uses)
    if (use.group == g && values[static_cast<std::size_t>(use.used)] > 0) {
      group.options.push_back(option_of(b, use, values));
      group.used.push_back(1);
      rest -= 1;
    }
  for (std::size_t o = 0; o < b.option_columns[g].size() && rest > 0; ++o) {
    if (b.option_columns[g][o] != Build::direct) continue;
    const Source source = *single_source(group, group.options[o]);
    const double supply = supply_going(b, source) + sum_of(supply_added(b, source), values);
    group.used[o] = static_cast<long>(std::min(rest, supply));
    rest -= static_cast<double>(group.used[o]);
  }
}

void take_answer(Build& b, const std::vector<long>& values, const std::vector<bool>& asked) {
  CoverReport& report = b.cover.report;
  for (const Candidate& candidate : b.candidates) {
    const auto column = static_cast<std::size_t>(candidate.column);
    const auto n = static_cast<int>(values[column]);
    b.cover.units.insert(b.cover.units.end(), candidate.units.begin(), candidate.units.begin() + n);
    report.units += n;
    report.mass += static_cast<double>(n * candidate.grams) * unit::gram;
    if (candidate.weight_known) continue;
    report.unweighed += n;
    if (asked[column]) report.unweighed_left += static_cast<int>(candidate.units.size()) - n;
  }
  std::sort(b.cover.units.begin(), b.cover.units.end());
  for (std::size_t g = 0; g < b.cover.groups.size(); ++g) take_group(b, g, values);
}

}  // namespace

Cover find_cover(const Draft& draft, double effort) {
  Build b = build_model(draft);
  const CostSet cost = cost_set(b);
  const std::vector<long> nothing = nothing_added(b);
  std::vector<Portion> portions = portions_of(b.model, effort);
  // Where nothing is missing without any addition there is nothing to do.
  std::erase_if(portions, [&](const Portion& portion) {
    return std::all_of(portion.columns().begin(), portion.columns().end(),
                       [&](int c) { return nothing[static_cast<std::size_t>(c)] == 0; });
  });
  CoverReport& report = b.cover.report;
  report.by_units = cost.by_units;
  for (Portion& portion : portions)
    report.short_proved = settle_missing(b, portion, cost, nothing) && report.short_proved;
  report.proved = report.short_proved;
  narrow(b, portions, cost);
  std::vector<long> values(b.model.columns.size(), 0);
  std::vector<bool> asked(b.model.columns.size(), false);
  double grams = 0, units = 0;
  for (Portion& portion : portions) {
    const Proof proof = minimise(portion, cost);
    report.proved = report.proved && proof.proved;
    grams += proof.grams;
    units += proof.units;
    report.nodes += portion.nodes();
    for (std::size_t i = 0; i < portion.columns().size(); ++i) {
      const auto column = static_cast<std::size_t>(portion.columns()[i]);
      values[column] = portion.last().values[i];
      asked[column] = true;
    }
  }
  take_answer(b, values, asked);
  report.units_bound = static_cast<int>(report.proved && cost.by_units ? report.units : units);
  report.bound = report.proved && !cost.by_units ? report.mass : std::min(grams * unit::gram, report.mass);
  return std::move(b.cover);
}

}  // namespace dunnage
