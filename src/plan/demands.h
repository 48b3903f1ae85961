// SPDX-License-Identifier: MIT
// What the show asks for, line by line, before anyone looks at what is owned.
#pragma once

#include <vector>

#include "model/catalogue.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// Wants, the console, inputs, mixes and runs of a show as demands, in the order typed, lowered by what
/// the site has.
std::vector<Demand> demands_of(const Catalogue& catalogue, const Show& show);

/// What each input needs beyond what is typed: a pad by its level, phantom power by the pickup that the `demands`
/// were served with.
std::vector<InputNeeds> input_needs(const Catalogue& catalogue, const Show& show, const std::vector<Demand>& demands);

/// Lowers demands by what the site has; what matches by word goes first, then what the word serves.
void deal_site(const Catalogue& catalogue, const Show& show, std::vector<Demand>& demands);

}  // namespace dunnage
