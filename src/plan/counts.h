// SPDX-License-Identifier: MIT
// What a kit's rules ask of a show: does a `goes` hold, and how many does a `per` send.
#pragma once

#include <optional>
#include <string>

#include "model/catalogue.h"
#include "model/show.h"

namespace dunnage {

/// Words for the first table of a `goes` that holds ("setting is outdoor and crew is at least 4"); nothing
/// where none holds. `always` gives "it always goes".
std::optional<std::string> holds(const Catalogue& catalogue, const Show& show, const Goes& goes);

/// All tables of a `goes` in words: "setting is indoor, or crew is at least 4".
std::string words(const Goes& goes);

/// Units that one `per` entry sends: `send` for each `every` begun, on the entry's own total.
int sent(const Catalogue& catalogue, const Show& show, const Per& per);

/// "2 for each tower", "1 for every 6 crew".
std::string words(const Per& per);

/// Length of a run: as typed, else the sum of what it crosses; nothing where neither is given.
std::optional<Length> length_of(const Run& run);

}  // namespace dunnage
