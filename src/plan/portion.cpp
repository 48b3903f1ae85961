// SPDX-License-Identifier: MIT
#include "plan/portion.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "plan/good_cover.h"
#include "plan/solver.h"

namespace dunnage {

namespace {

/// Nodes for a model of so many terms: one as houses have it is solved to the end, and one of any size takes seconds.
constexpr double work = 2.6e13, most_nodes = 200'000, least_nodes = 5;
/// What a first look and a tie are worth of it.
constexpr double look_share = 0.02, tie_share = 0.05;
/// Ties of models with more terms are left as they come.
constexpr std::size_t tie_terms = 4000;
/// From so many terms on a good cover is searched for at full length.
constexpr double full_terms = 7000;

/// Of columns that may be anything but 0.
std::size_t terms_of(const IntegerModel& model) {
  std::ptrdiff_t sum = 0;
  for (const auto& row : model.rows)
    sum += std::count_if(row.terms.begin(), row.terms.end(), [&](const auto& term) {
      return model.columns[static_cast<std::size_t>(term.first)].upper > 0;
    });
  return static_cast<std::size_t>(sum);
}

}  // namespace

Portion::Portion(const IntegerModel& whole, std::vector<int> columns, double effort)
    : columns_(std::move(columns)), at_(whole.columns.size(), -1), effort_(effort) {
  for (std::size_t i = 0; i < columns_.size(); ++i) at_[static_cast<std::size_t>(columns_[i])] = static_cast<int>(i);
  for (const int c : columns_) model_.columns.push_back(whole.columns[static_cast<std::size_t>(c)]);
  for (const auto& row : whole.rows) {
    if (row.terms.empty() || at_[static_cast<std::size_t>(row.terms.front().first)] < 0) continue;
    model_.rows.push_back(row);
    for (auto& term : model_.rows.back().terms) term.first = at_[static_cast<std::size_t>(term.first)];
  }
}

void Portion::bound(int column, double upper) {
  model_.columns[static_cast<std::size_t>(at_[static_cast<std::size_t>(column)])].upper = upper;
}

bool Portion::worth_ties() const { return terms_of(model_) <= tie_terms; }

void Portion::set_costs(const Costs& cost) {
  for (std::size_t i = 0; i < columns_.size(); ++i)
    model_.columns[i].cost = cost[static_cast<std::size_t>(columns_[i])];
}

IntegerSolution Portion::answer(const Costs& cost, double share) {
  set_costs(cost);
  const double terms = static_cast<double>(std::max<std::size_t>(1, terms_of(model_)));
  const double most = share * effort_ * std::clamp(work / terms / terms / terms, least_nodes, most_nodes);
  IntegerSolution found =
      solve(model_, std::max(1L, static_cast<long>(most)), last_.feasible ? &last_.values : nullptr);
  nodes_ += found.nodes;
  return found;
}

IntegerSolution Portion::look(const Costs& cost) {
  if (columns_.size() <= small_columns || !only_covers(model_)) return answer(cost, look_share);
  set_costs(cost);
  const double terms = static_cast<double>(terms_of(model_));
  IntegerSolution out;
  if (auto found = good_cover(model_, effort_ * std::min(1.0, terms * terms / full_terms / full_terms))) {
    out.feasible = covers_ = true;
    out.values = std::move(*found);
  } else {
    out.proved = true;
  }
  return out;
}

double Portion::value_of(const Costs& cost) const {
  double sum = 0;
  for (std::size_t i = 0; i < columns_.size(); ++i)
    sum += cost[static_cast<std::size_t>(columns_[i])] * static_cast<double>(last_.values[i]);
  return sum;
}

long Portion::value_of_column(int column) const {
  return last_.values[static_cast<std::size_t>(at_[static_cast<std::size_t>(column)])];
}

const IntegerSolution& Portion::step(const Costs& cost) {
  const bool nothing =
      std::all_of(columns_.begin(), columns_.end(), [&](int c) { return cost[static_cast<std::size_t>(c)] == 0; });
  if (nothing && last_.feasible) {
    last_.proved = true;
    last_.objective = last_.bound = 0;
    return last_;
  }
  IntegerSolution found = answer(cost, 1);
  if (last_.feasible && (!found.feasible || value_of(cost) < found.objective)) {
    found.values = last_.values;
    found.objective = value_of(cost);
    // Rather no proof than one which a known solution contradicts.
    found.proved = false;
    found.bound = std::min(found.bound, found.objective);
    found.feasible = true;
  }
  last_ = std::move(found);
  // Costs are whole.
  if (last_.feasible && std::ceil(last_.bound - 1e-6) >= last_.objective - 1e-6) last_.proved = true;
  return last_;
}

void Portion::settle_tie(const Costs& cost) {
  if (std::all_of(columns_.begin(), columns_.end(), [&](int c) { return cost[static_cast<std::size_t>(c)] == 0; }))
    return;
  const IntegerSolution found = answer(cost, tie_share);
  if (found.feasible && found.objective <= value_of(cost)) last_.values = found.values;
}

void Portion::start_from(const std::vector<long>& values) {
  last_ = {};
  last_.feasible = true;
  for (const int c : columns_) last_.values.push_back(values[static_cast<std::size_t>(c)]);
}

void Portion::hold(const Costs& cost) {
  IntegerModel::Row row{-IntegerModel::no_limit, 0.5, {}};  // room for the solver's tolerance, not for a worse answer
  for (std::size_t i = 0; i < columns_.size(); ++i)
    if (const double each = cost[static_cast<std::size_t>(columns_[i])]; each != 0) {
      row.terms.emplace_back(static_cast<int>(i), each);
      row.high += each * static_cast<double>(last_.values[i]);
    }
  if (!row.terms.empty()) model_.rows.push_back(std::move(row));
}

std::vector<Portion> portions_of(const IntegerModel& model, double effort) {
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
  std::vector<bool> stands(parent.size(), false);
  for (const auto& row : model.rows)
    for (const auto& term : row.terms) stands[static_cast<std::size_t>(term.first)] = true;
  std::map<int, std::vector<int>> groups;
  for (int c = 0; c < static_cast<int>(parent.size()); ++c)
    if (stands[static_cast<std::size_t>(c)]) groups[root(c)].push_back(c);
  std::vector<Portion> out;
  for (auto& group : groups) out.emplace_back(model, std::move(group.second), effort);
  return out;
}

}  // namespace dunnage
