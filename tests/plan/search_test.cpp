// SPDX-License-Identifier: MIT
// Small models against trying everything.
#include "plan/search.h"

#include <catch2/catch.hpp>
#include <random>

using namespace dunnage;

namespace {

IntegerModel random_model(std::mt19937& dice) {
  const auto roll = [&](int low, int high) {
    return low + static_cast<int>(dice() % static_cast<unsigned>(high - low + 1));
  };
  IntegerModel model;
  for (int c = roll(1, 5); c > 0; --c) model.add(roll(0, 9), roll(1, 4));
  for (int r = roll(0, 4); r > 0; --r) {
    IntegerModel::Row row{-IntegerModel::no_limit, IntegerModel::no_limit, {}};
    for (int c = 0; c < static_cast<int>(model.columns.size()); ++c)
      if (roll(0, 2) > 0) row.terms.emplace_back(c, roll(-3, 3));
    if (roll(0, 2) > 0) row.low = roll(-2, 6);
    if (roll(0, 2) == 0) row.high = std::max(row.low, static_cast<double>(roll(0, 6)));
    model.rows.push_back(row);
  }
  return model;
}

bool keeps(const IntegerModel& model, const std::vector<long>& values) {
  for (const auto& row : model.rows) {
    double sum = 0;
    for (const auto& [column, value] : row.terms)
      sum += value * static_cast<double>(values[static_cast<std::size_t>(column)]);
    if (sum < row.low || sum > row.high) return false;
  }
  return true;
}

double cost_of(const IntegerModel& model, const std::vector<long>& values) {
  double sum = 0;
  for (std::size_t c = 0; c < values.size(); ++c) sum += model.columns[c].cost * static_cast<double>(values[c]);
  return sum;
}

/// The least cost; negative when there is no solution.
double by_trying(const IntegerModel& model) {
  std::vector<long> values(model.columns.size(), 0);
  double best = -1;
  while (true) {
    if (keeps(model, values) && (best < 0 || cost_of(model, values) < best)) best = cost_of(model, values);
    std::size_t c = 0;
    while (c < values.size() && static_cast<double>(++values[c]) > model.columns[c].upper) values[c++] = 0;
    if (c == values.size()) return best;
  }
}

}  // namespace

TEST_CASE("a small model is solved to its best, or told to have no solution") {
  std::mt19937 dice(7);
  int with = 0;
  for (int i = 0; i < 3000; ++i) {
    const IntegerModel model = random_model(dice);
    const double best = by_trying(model);
    const auto found = search(model, 100'000, nullptr);
    REQUIRE(found);
    REQUIRE(found->proved);
    REQUIRE(found->feasible == (best >= 0));
    if (!found->feasible) continue;
    ++with;
    REQUIRE(keeps(model, found->values));
    REQUIRE(cost_of(model, found->values) == best);
    REQUIRE(found->objective == best);
  }
  REQUIRE(with > 500);
}

TEST_CASE("a start that nothing beats is kept, and too few nodes give no answer") {
  IntegerModel model;
  model.add(1, 3);
  model.add(1, 3);
  model.rows.push_back({2, IntegerModel::no_limit, {{0, 1}, {1, 1}}});
  const std::vector<long> start{2, 0};
  REQUIRE(search(model, 100, &start)->values == start);
  REQUIRE_FALSE(search(model, 1, nullptr));
}
