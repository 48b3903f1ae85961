// SPDX-License-Identifier: MIT
// The blocks of a section in the layout's order, one below the other or two side by side.
#pragma once

#include "layout/galley.h"
#include "layout/setting.h"

namespace dunnage {

/// All blocks of `section` that flow, set at `width` and added to `galley`. A block that stands beside another makes
/// one strip with it, which is never parted; where one of the two is not there, the other has the whole width.
void set_section(Setting& setting, const Layout& layout, const Section& section, Paper width, Galley& galley);

}  // namespace dunnage
