// SPDX-License-Identifier: MIT
// The first page: what is wrong, what the packet holds, what goes in all, what the site provides.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section. Made last, since it tells what was made and what was skipped. Blocks: facts, over, short, unchecked,
/// remarks, clear, totals, packet-head, packet, skipped-head, skipped, site-head, site, wants-head, wants,
/// no-team-head, no-team, changes-head, changes, out-head, out, estimates, not-applying-head, not-applying,
/// assumed-head, assumed, proof, decide.
Made cover(const Context& context);

}  // namespace dunnage
