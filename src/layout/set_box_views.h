// SPDX-License-Identifier: MIT
// Boxes in a space from above, from the side, or a row of them from the door: to scale, each called by its number.
#pragma once

#include "layout/galley.h"
#include "layout/setting.h"
#include "model/picture.h"
#include "model/sheet.h"

namespace dunnage {

/// `across` views side by side, each at most `height` high with its words beneath; all to one scale.
void set_box_views(Setting& setting, const BlockSpec& spec, const picture::BoxViews& views, Paper width,
                   Galley& galley);

}  // namespace dunnage
