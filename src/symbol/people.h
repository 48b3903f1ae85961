// SPDX-License-Identifier: MIT
// The pictures with people in them that stand in the list of signs; lift_by and roll_by are in marks.h.
#pragma once

#include "symbol/outline.h"

namespace dunnage {

Figure carry_figure();
Figure ramp_figure();
Figure aid_figure();

}  // namespace dunnage
