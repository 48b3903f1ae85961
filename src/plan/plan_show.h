// SPDX-License-Identifier: MIT
// Catalogue + Show -> Plan: which cases go, and every reason.
#pragma once

#include "model/catalogue.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// The plan of a show. Both have been checked by the reader: every code is known, every fact that a rule uses
/// is stated. Order: overrides, rules, structures and their ballast, needs to a fixed point, the cover of what
/// the show asks for, spares of what is in use; again until spares change nothing more. `effort`: how many times the
/// usual work the cover may take.
Plan plan_show(const Catalogue& catalogue, const Show& show, double effort = 1);

}  // namespace dunnage
