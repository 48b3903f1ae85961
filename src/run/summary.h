// SPDX-License-Identifier: MIT
// A plan on the terminal, in the fewest lines that a person needs.
#pragma once

#include <string>

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/planned.h"

namespace dunnage {

/// Units and mass, the cover, then everything short, over or not checked, a line each, and what is within.
std::string summary(const Catalogue& catalogue, const Plan& plan, const Findings& findings, UnitSystem units);

/// Why a unit goes, or why it stays, as sentences with the places that were typed.
std::string reasons(const Catalogue& catalogue, const Plan& plan, int unit, UnitSystem units);

/// Added, gone, more, fewer, a line each, and by how much mass, both masses as the summary has them; or that nothing
/// changed.
std::string changes(const Change& change, const Plan& before, const Plan& now, UnitSystem units);

}  // namespace dunnage
