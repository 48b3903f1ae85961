// SPDX-License-Identifier: MIT
// Meaning across tables: codes that name nothing, facts that a rule asks for and the show does not state, one
// unit in two places. What one table alone can tell was told when it was read.
#pragma once

#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "model/catalogue.h"
#include "model/show.h"
#include "read/references.h"

namespace dunnage {

/// Tells every mistake between the tables of a kit and, unless null, of a show.
void cross_check(const Catalogue& catalogue, const Show* show, Diagnostics& diagnostics,
                 const Surroundings& around = {});

}  // namespace dunnage
