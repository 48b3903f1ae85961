// SPDX-License-Identifier: MIT
// What a kit's rules ask of a show: does a `goes` hold, and how many does a `per` send.
#pragma once

#include <optional>

#include "base/sentence.h"
#include "model/catalogue.h"
#include "model/show.h"

namespace dunnage {

/// Why the first table of a `goes` that holds does ("the show is outdoors and the crew is 7 (from 4)"); nothing
/// where none holds. `always` gives "it goes to every show".
std::optional<Sentence> holds(const Catalogue& catalogue, const Show& show, const Goes& goes);

/// The first condition of each table that fails: "the show is indoors, and the audience is 120, under 150".
Sentence why_none_holds(const Catalogue& catalogue, const Show& show, const Goes& goes);

/// Units that one `per` entry sends: `send` for each `every` begun, on the entry's own total.
int sent(const Catalogue& catalogue, const Show& show, const Per& per);

/// What it counted: "2 for each tower, and 2 stand", "1 for every 6 of the crew of 7".
Sentence words(const Catalogue& catalogue, const Show& show, const Per& per);

/// Length of a run: as typed, else the sum of what it crosses; nothing where neither is given.
std::optional<Length> length_of(const Run& run);

}  // namespace dunnage
