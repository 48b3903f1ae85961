// SPDX-License-Identifier: MIT
// A big tag for one show: where this case goes. The mass stays on the label.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section (a card) a unit that has a place or a vehicle, by place. Blocks: place, vehicle, code, name, show.
Made place_tag(const Context& context);

}  // namespace dunnage
