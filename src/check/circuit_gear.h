// SPDX-License-Identifier: MIT
// The circuits of a show against what goes: what draws power and is on none, and cords that stay or do not reach.
#pragma once

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// Source and caution of what is said about circuits.
Finding begin_circuit(Subject subject, Sentence called, const Place& place);

/// Findings of the rule "circuit", only where something is amiss: not checked for what is on no circuit, as its load is
/// in no sum; over for a cord that does not go in the number that is named, or that is shorter than its circuit.
void check_circuit_gear(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
