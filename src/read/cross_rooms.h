// SPDX-License-Identifier: MIT
// The parts of cross_check, one room each.
#pragma once

#include <string>
#include <vector>

#include "read/references.h"

namespace dunnage {

/// What the kit says about itself.
void check_kit(const References& refer, const Surroundings& around);
/// Words that nothing defines but their use. `languages`: of printed words; empty: not checked.
void check_free_words(const References& refer, const Show* show, const std::vector<std::string>& languages);
/// Codes and words of the show against the kit and against each other.
void check_show_words(const References& refer, const Show& show);
/// Facts that the kit's rules ask for: each must be stated by the show.
void check_facts(const References& refer, const Show& show);
/// Loads: one a vehicle, in an order that a trailer can follow, inside the cargo space.
void check_loads(const References& refer, const Show& show);
/// Every unit stands in one place at most; every weight on a leg that is there.
void check_standing(const References& refer, const Show& show);

}  // namespace dunnage
