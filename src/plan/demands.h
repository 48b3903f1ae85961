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

/// Inputs whose source is louder than the console takes and that have no pad typed.
std::vector<std::size_t> inputs_to_pad(const Catalogue& catalogue, const Show& show);

/// Lowers demands by what the site has; what matches by word goes first, then what the word serves.
void deal_site(const Catalogue& catalogue, const Show& show, std::vector<Demand>& demands);

}  // namespace dunnage
