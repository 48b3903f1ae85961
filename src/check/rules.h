// SPDX-License-Identifier: MIT
// The explicit list of every rule that is checked. `list rules`, SAFETY.md and the sheets name this one set.
#pragma once

#include <string_view>
#include <vector>

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One rule: what a person must know of it before signing, and the function that runs it.
struct Rule {
  RuleName name;  ///< as findings carry it
  std::string_view covers;
  std::string_view formula;
  std::string_view source;  ///< title and clause
  std::string_view edition;
  std::string_view leaves_out;
  std::string_view decides;  ///< who has the last word
  void (*check)(const Catalogue&, const Show&, const Plan&, Findings&);
};

/// In the order in which they run and print.
const std::vector<Rule>& rules();

/// Every rule on one show: findings in the order of the rules, then of the plan.
Findings check_all(const Catalogue& catalogue, const Show& show, const Plan& plan);

}  // namespace dunnage
