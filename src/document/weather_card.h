// SPDX-License-Identifier: MIT
// One page for whoever watches the sky: when to act, what first, with how many, and who says so.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section. Blocks: who, levels, unchecked, structures, in-all, meter-head, meter, signs, storm-head,
/// storm, air, log, sources. Skipped indoors.
Made weather_card(const Context& context);

}  // namespace dunnage
