// SPDX-License-Identifier: MIT
// The half of `dunnage import` that changes what stands: readings of a scale into the kit's own text.
#pragma once

#include "run/commands.h"

namespace dunnage {

int import_weights(const ImportOptions& options, Desk& desk);

}  // namespace dunnage
