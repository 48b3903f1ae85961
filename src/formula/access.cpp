// SPDX-License-Identifier: MIT
// Ramps and distances.
#include "formula/access.h"

#include <algorithm>

#include "base/slack.h"

namespace dunnage {

using namespace unit;

LevelChange level_change(Length rise) {
  if (rise <= 0.25 * inch) return LevelChange::none_needed;
  return rise <= 0.5 * inch ? LevelChange::bevel : LevelChange::ramp;
}

RampFigures ramp(Length rise) {
  RampFigures r;
  r.runs = std::max(1, static_cast<int>(steps_up(rise / (30.0 * inch))));
  r.slope = rise * 12;
  r.landings = 60.0 * inch * (r.runs + 1);
  r.total = r.slope + r.landings;
  return r;
}

std::optional<Length> steep_ramp_rise(double slope) {
  if (exceeds(slope, 1.0 / 8) || slope <= 0) return std::nullopt;
  if (exceeds(slope, 1.0 / 10)) return 3.0 * inch;
  if (exceeds(slope, 1.0 / 12)) return 6.0 * inch;
  return 30.0 * inch;
}

int extinguishers(Area area) { return std::max(1, static_cast<int>(steps_up(area / (3000.0 * square_foot)))); }

}  // namespace dunnage
