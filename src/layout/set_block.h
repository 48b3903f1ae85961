// SPDX-License-Identifier: MIT
// One block of a document, set at a width into a galley: the list of all kinds there are.
#pragma once

#include <string>

#include "layout/galley.h"
#include "layout/setting.h"

namespace dunnage {

/// Adds `block` to `galley`. `above` is the heading right before it, for "... (continued)".
void set_block(Setting& setting, const BlockSpec& spec, const Block& block, Paper width, const std::string& above,
               Galley& galley);

}  // namespace dunnage
