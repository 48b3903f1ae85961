// SPDX-License-Identifier: MIT
#include "check/spare_weights.h"

#include <algorithm>

#include "check/meter.h"

namespace dunnage {
namespace {

void add_weight(std::vector<SpareWeight>& weights, const Catalogue& c, const Plan& plan, int case_index) {
  const Case& box = c.kit.cases[static_cast<std::size_t>(case_index)];
  for (const SpareWeight& w : weights)
    if (w.code == box.code.value) return;
  SpareWeight weight{box.code.value, {}, 0};
  const auto [first, last] = c.units_of[static_cast<std::size_t>(case_index)];
  for (int unit = first; unit < last; ++unit) {
    const UnitMass mass = c.mass_of(unit);
    if (c.units[static_cast<std::size_t>(unit)].out_of_service || !(mass.known || box.filled)) continue;
    // The lightest of several alike speaks for all.
    weight.mass = weight.mass > Mass{} ? std::min(weight.mass, mass.as_ballast) : mass.as_ballast;
    const bool used =
        std::any_of(plan.ballast.begin(), plan.ballast.end(), [&](const BallastPiece& p) { return p.unit == unit; });
    if (!used) ++weight.free;
  }
  if (weight.mass > Mass{}) weights.push_back(weight);
}

}  // namespace

Sentence free_words(int free) { return free == 0 ? said("none") : Sentence(free); }

const SpareWeight* lightest_that_helps(const std::vector<SpareWeight>& weights, Speed now, std::string_view meter,
                                       const std::function<Speed(Mass)>& holding) {
  const SpareWeight* best = nullptr;
  for (const SpareWeight& w : weights)
    if (whole_units_down(holding(w.mass), meter) > now && (!best || w.mass < best->mass)) best = &w;
  return best;
}

std::vector<SpareWeight> spare_weights(const Catalogue& c, const Plan& plan, int use) {
  std::vector<SpareWeight> weights;
  for (const BallastPiece& p : plan.ballast)
    if (p.use == use) add_weight(weights, c, plan, c.units[static_cast<std::size_t>(p.unit)].case_index);
  if (weights.empty())
    for (int i : c.cases_serving("ballast")) add_weight(weights, c, plan, i);
  return weights;
}

}  // namespace dunnage
