// SPDX-License-Identifier: MIT
// Pictures that say how a case is handled: handling marks after ISO 780:2015 (no frame, solid, drawn so that
// a stencil works) and our own pictograms of moving and lifting. Drawn anew as outlines; a word goes with
// each, since most people misread most pictograms.
#pragma once

#include "symbol/outline.h"

namespace dunnage {

enum class Sign {
  this_way_up,
  fragile,
  keep_dry,
  keep_cool,
  no_hand_truck,
  no_stack,
  heavy,  // ISO 780 and the weight
  warning,
  carry,
  ramp,
  aid  // moving; `aid`: more than people may lift
};

Figure figure(Sign sign);
/// That many people lifting, 1 to 4; wider with more of them.
Figure lift_by(int people);
/// That many people rolling it, 1 or 2.
Figure roll_by(int people);

}  // namespace dunnage
