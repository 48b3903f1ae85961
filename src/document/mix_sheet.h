// SPDX-License-Identifier: MIT
// Outputs: who hears what, and from where.
#pragma once

#include "document/context.h"

namespace dunnage {

/// Blocks: rows, end. Skipped for few mixes, which then stand on the input list.
Made mix_sheet(const Context& context);

bool few_mixes(const Show& show);
block::Table mix_table(const Context& context);

}  // namespace dunnage
