// SPDX-License-Identifier: MIT
// The best cover by a stranger: a model of its own, one column for each unit and each single thing asked for, solved
// by GLPK. It knows the kit and what is asked, and nothing of how the plan finds its answer.
#pragma once

#include "model/catalogue.h"
#include "model/plan.h"

namespace dunnage {

struct OracleAnswer {
  bool solved = false;
  long missing = 0;    ///< pieces and metres that nothing owned serves
  long unweighed = 0;  ///< units added whose mass is not known: after what is missing, as few as can be
  double kg = 0;       ///< of the units added whose mass is known: after those, as little as can be
};

/// `demands` as the show makes them. Cases that go `always` go, and need nothing; spares and overrides there are none.
OracleAnswer best_cover(const Catalogue& catalogue, const std::vector<Demand>& demands);

}  // namespace dunnage
