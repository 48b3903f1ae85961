// SPDX-License-Identifier: MIT
// The inputs once more, as the stage sees them: by box and socket, and what each performer needs.
#pragma once

#include "document/context.h"

namespace dunnage {

/// One section. Blocks: rows, performers-head, performers, runs-head, runs, end. Skipped for few inputs with a box
/// where there are no cable runs either.
Made patch_sheet(const Context& context);

}  // namespace dunnage
