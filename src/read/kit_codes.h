// SPDX-License-Identifier: MIT
// Items, cases and units share one namespace: the code on a label names one thing.
#pragma once

#include "base/diagnostic.h"
#include "model/kit.h"

namespace dunnage {

/// Tells every code that is given twice, at the second place with the first beside it, and takes the second
/// out of the kit. Things without a code, which were told when read, go too.
void keep_codes_once(Kit& kit, Diagnostics& diagnostics);

}  // namespace dunnage
