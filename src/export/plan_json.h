// SPDX-License-Identifier: MIT
// Plan, findings and answers as JSON, for programs. Figures are exact and in SI units, named in their keys.
#pragma once

#include <string>

#include "model/answer.h"
#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"

namespace dunnage {

/// `check --json`: schema 1. `units` is the system in which the sheets print; each case carries its printed mass
/// too, and totals.printed is the sum of those.
std::string plan_json(const Catalogue& catalogue, const Plan& plan, const Findings& findings, UnitSystem units);

/// `reckon --json`.
std::string answer_json(const Answer& answer);

}  // namespace dunnage
