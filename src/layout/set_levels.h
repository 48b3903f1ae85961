// SPDX-License-Identifier: MIT
// Levels of alarm, the worst on top: each a shape, a hatch, a word, a number and what to do.
#pragma once

#include "layout/galley.h"
#include "layout/setting.h"

namespace dunnage {

/// A strip a level, at least `height` high: word and number in the block's `head`, actions in its `type`.
void set_levels(Setting& setting, const BlockSpec& spec, const picture::Levels& levels, Paper width, Galley& galley);

}  // namespace dunnage
