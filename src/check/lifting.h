// SPDX-License-Identifier: MIT
// How each unit is moved and lifted, and by how many. Also asked for a case alone, for its label.
#pragma once

#include <optional>

#include "formula/team_lift.h"
#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// The house's own figures, else the published filter's best zone (25 kg crew, 16 kg volunteers).
TeamLimits team_limits(const HouseLift& lift);

/// MOVE and LIFT of one unit. People: the fewest whose limit covers the mass, never more than its grips
/// allow (one may always try); 0 beyond that, with the house's aid in its words.
Handling handling_of(const Case& box, const UnitMass& mass, const HouseLift& lift);

/// The lift into the vehicle by one person: NIOSH index of what really happens. From grip height to deck
/// plus grip height, hands by the depth of the shorter side, no turn, seldom, up to an hour.
struct LoadingLift {
  Mass limit;                   ///< RWL, the lower of origin and destination
  std::optional<double> index;  ///< empty: not liftable by this method
  Mass filter;                  ///< the least of the filter's zones that the hands pass, for one person
};
/// Empty where grip height, size, deck or mass is not given.
std::optional<LoadingLift> loading_lift(const Case& box, const UnitMass& mass, const HouseLift& lift);

/// One finding for each unit that goes, and the handling of every unit of the kit.
void check_lifting(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings);

}  // namespace dunnage
