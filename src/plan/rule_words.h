// SPDX-License-Identifier: MIT
// A kit's rules and a show's facts as the sentences that a person would answer with.
#pragma once

#include "base/sentence.h"
#include "model/catalogue.h"
#include "model/facts.h"
#include "model/show.h"

namespace dunnage {

/// Why a condition holds: "the audience is 180 (from 150)", "a canopy stands".
Sentence words_for(const Catalogue& catalogue, const Show& show, const Condition& condition);
/// Why it does not: "the audience is 120, under 150", "no canopy stands".
Sentence words_against(const Catalogue& catalogue, const Show& show, const Condition& condition);
/// What a `per` counted: "1 for every 16 inputs, and there are 20".
Sentence words_for(const Catalogue& catalogue, const Show& show, const Per& per, double total);

}  // namespace dunnage
