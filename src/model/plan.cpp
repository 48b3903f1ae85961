// SPDX-License-Identifier: MIT
#include "model/plan.h"

namespace dunnage {

std::vector<int> Plan::pulled() const {
  std::vector<int> out;
  for (const PlanRow& row : rows)
    if (row.goes) out.push_back(row.unit);
  return out;
}

}  // namespace dunnage
