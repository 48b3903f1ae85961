// SPDX-License-Identifier: MIT
// The walk that someone signs before doors: in the order one walks it, with the computed limits beside the lines.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section. Blocks: facts, stop, decide-first, stops (a group a stop of the walk), lifts-head, lifts,
/// cautions, decide, remarks, end, sources. Lists are cut, and say so, so that the walk stays on two pages; the cover
/// has all.
Made safety_walk(const Context& context);

}  // namespace dunnage
