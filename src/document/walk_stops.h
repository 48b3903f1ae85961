// SPDX-License-Identifier: MIT
// The stops of the safety walk and their lines: the fixed ones that the show's facts call for, and those that the
// checks give.
#pragma once

#include <vector>

#include "document/context.h"

namespace dunnage {

/// Columns item, state, ok, not. A stop without a line is left out. A fact that the show does not state keeps its
/// lines: what is unknown is walked.
/// True for a finding about neither a structure in use nor a lift: the walk has a line that says it in full.
bool has_line_of_its_own(const Finding& finding);
block::Table walk_table(const Context& context);

/// The five worst lifts, one a case: code, name, mass, says, index, state. The index is dropped where no lift has one.
/// Without a group where nothing goes.
block::Table lift_table(const Context& context);

/// Findings that the walk prints beside its lines.
std::vector<const Finding*> findings_on_walk(const Context& context);

}  // namespace dunnage
