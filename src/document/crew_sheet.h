// SPDX-License-Identifier: MIT
// One page for everyone: what to do when it goes wrong, who to call, when things happen.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section. Blocks: danger, times-head, times, contacts-head, contacts, water-head, water, site. Skipped where the
/// show gives neither times, contacts nor a site.
Made crew_sheet(const Context& context);

}  // namespace dunnage
