// SPDX-License-Identifier: MIT
// What a print would refuse though kit and show are in order: found by a check, without laying anything out.
#pragma once

#include "run/commands.h"
#include "run/load_show.h"

namespace dunnage {

/// Reads the house's own words, layouts and stocks, and looks for letters that no face has. Mistakes are told on
/// `desk.err`; false where there is one.
bool check_style(Loaded& loaded, Desk& desk);

}  // namespace dunnage
