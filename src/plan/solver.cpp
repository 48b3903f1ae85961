// SPDX-License-Identifier: MIT
#include "plan/solver.h"

#include <coin/Cbc_C_Interface.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <new>
#include <string>

#include "base/error.h"
#include "plan/search.h"

namespace dunnage {

namespace {

struct Sparse {
  std::vector<CoinBigIndex> start;
  std::vector<int> row;
  std::vector<double> value;
};

/// The rows of a model turned into columns, as the solver wants them.
Sparse by_column(const IntegerModel& model) {
  Sparse out;
  out.start.assign(model.columns.size() + 1, 0);
  for (const auto& row : model.rows)
    for (const auto& term : row.terms) ++out.start[static_cast<std::size_t>(term.first) + 1];
  for (std::size_t c = 1; c < out.start.size(); ++c) out.start[c] += out.start[c - 1];
  out.row.resize(static_cast<std::size_t>(out.start.back()));
  out.value.resize(out.row.size());
  std::vector<CoinBigIndex> next(out.start.begin(), out.start.end() - 1);
  for (std::size_t r = 0; r < model.rows.size(); ++r)
    for (const auto& [column, value] : model.rows[r].terms) {
      const auto at = static_cast<std::size_t>(next[static_cast<std::size_t>(column)]++);
      out.row[at] = static_cast<int>(r);
      out.value[at] = value;
    }
  return out;
}

void load(Cbc_Model* cbc, const IntegerModel& model) {
  const Sparse matrix = by_column(model);
  const std::size_t n = model.columns.size();
  std::vector<double> low(n, 0.0), high(n), cost(n), row_low, row_high;
  for (std::size_t c = 0; c < n; ++c) {
    high[c] = model.columns[c].upper;
    cost[c] = model.columns[c].cost;
  }
  for (const auto& row : model.rows) {
    row_low.push_back(row.low);
    row_high.push_back(row.high);
  }
  Cbc_loadProblem(cbc, static_cast<int>(n), static_cast<int>(model.rows.size()), matrix.start.data(), matrix.row.data(),
                  matrix.value.data(), low.data(), high.data(), cost.data(), row_low.data(), row_high.data());
  for (std::size_t c = 0; c < n; ++c) Cbc_setInteger(cbc, static_cast<int>(c));
  Cbc_setObjSense(cbc, 1);
}

/// How long small models are searched here first.
constexpr long small_nodes = 1000;
/// CBC breaks off in the middle where it gets no memory, so that this much is asked for before it.
constexpr std::size_t solver_room = std::size_t{128} << 20;

void set_up(Cbc_Model* cbc, long node_limit, bool well_begun) {
  Cbc_setParameter(cbc, "logLevel", "0");
  Cbc_setParameter(cbc, "maxNodes", std::to_string(node_limit).c_str());
  Cbc_setParameter(cbc, "ratioGap", "0");
  Cbc_setParameter(cbc, "allowableGap", "0");
  // Cuts with nearly all columns in them: on covers they take most of the time and raise the bound by a tenth of one
  // per cent.
  Cbc_setParameter(cbc, "gomoryCuts", "off");
  Cbc_setParameter(cbc, "twoMirCuts", "off");
  if (well_begun) Cbc_setParameter(cbc, "heuristicsOnOff", "off");
}

}  // namespace

IntegerSolution solve(const IntegerModel& model, long node_limit, const std::vector<long>* start, Start quality) {
  IntegerSolution out;
  if (model.columns.empty()) {
    out.feasible = out.proved = true;
    return out;
  }
  if (model.columns.size() <= small_columns)
    if (auto found = search(model, small_nodes, start)) return *std::move(found);
  ::operator delete(::operator new(solver_room));
  const std::unique_ptr<Cbc_Model, void (*)(Cbc_Model*)> cbc(Cbc_newModel(), Cbc_deleteModel);
  if (!cbc) throw WorldError("the integer solver could not be started");
  load(cbc.get(), model);
  set_up(cbc.get(), node_limit, start != nullptr && quality == Start::good);
  if (start) {
    std::vector<int> columns(start->size());
    std::vector<double> values(start->begin(), start->end());
    for (std::size_t c = 0; c < columns.size(); ++c) columns[c] = static_cast<int>(c);
    Cbc_setMIPStartI(cbc.get(), static_cast<int>(columns.size()), columns.data(), values.data());
  }
  Cbc_solve(cbc.get());
  out.nodes = Cbc_getNodeCount(cbc.get());
  out.proved = Cbc_isProvenOptimal(cbc.get()) || Cbc_isProvenInfeasible(cbc.get());
  const double* values = Cbc_isProvenInfeasible(cbc.get()) ? nullptr : Cbc_bestSolution(cbc.get());
  out.feasible = values != nullptr;
  if (!values) return out;
  for (std::size_t c = 0; c < model.columns.size(); ++c) {
    out.values.push_back(std::lround(values[c]));
    out.objective += model.columns[c].cost * static_cast<double>(out.values.back());
  }
  out.bound = out.proved ? out.objective : std::min(out.objective, Cbc_getBestPossibleObjValue(cbc.get()));
  return out;
}

}  // namespace dunnage
