// SPDX-License-Identifier: MIT
// Strips for the tape ledge of a console: cells at the pitch of its faders, to be cut out.
#pragma once

#include "layout/galley.h"
#include "layout/setting.h"

namespace dunnage {

/// A line to hold a ruler to, then a strip a bank of `across` cells, each `pitch` wide and `height` high,
/// with marks to cut at. Names in the block's `head`, numbers and the rest in its `type`. A bank wider than
/// the page is a problem: nothing here may be made smaller.
void set_fader_strips(Setting& setting, const BlockSpec& spec, const picture::FaderStrips& strips, Paper width,
                      Galley& galley);

}  // namespace dunnage
