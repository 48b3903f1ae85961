// SPDX-License-Identifier: MIT
// Room to write: lines with a label, and signatures.
#pragma once

#include "layout/galley.h"
#include "layout/setting.h"

namespace dunnage {

/// Labels each followed by a rule, `across` a line; a line is `line_height` high, 9 mm where that is not
/// given.
void set_fill(Setting& setting, const BlockSpec& spec, const block::Fill& fill, Paper width, Galley& galley);
/// The statement, then rules with their labels below, `across` a line or all on one; never parted.
void set_signature(Setting& setting, const BlockSpec& spec, const block::Signature& signature, Paper width,
                   Galley& galley);

}  // namespace dunnage
