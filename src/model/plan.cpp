// SPDX-License-Identifier: MIT
#include "model/plan.h"

namespace dunnage {

std::vector<int> Plan::pulled() const {
  std::vector<int> out;
  for (const PlanRow& row : rows)
    if (row.goes) out.push_back(row.unit);
  return out;
}

std::string amount_words(const Shortage& shortage, int count, UnitSystem units) {
  if (shortage.unit == "l") return print(count * unit::litre, units, Rounding::up).text();
  if (shortage.unit == "m") return print(count * unit::metre, units, Rounding::up).text();
  return std::to_string(count);
}

}  // namespace dunnage
