// SPDX-License-Identifier: MIT
// The one table of ranges: what a typed value may be. Values outside are mistakes of typing, not of physics.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/unit.h"

namespace dunnage {

struct Range {
  std::string_view name;  ///< what is measured, as in messages: "mass of a case"
  Measure measure;
  double low, high;         ///< inclusive, in `symbol`
  std::string_view symbol;  ///< the unit in which the bounds read well
};

namespace range {
extern const Range piece_mass, case_mass, mass_on_top, vehicle_mass, case_side, piece_length, run_length, height,
    plan_side, area, wind, temperature, water, minutes, power, current, voltage, frequency, level, sound, ground_offset,
    to_axle, to_hitch, distance, pressure, cable_area, weight_hold, paper_length, fader_pitch, type_size;
/// All of them, in the order `help units` prints.
const std::vector<const Range*>& all();
}  // namespace range

/// True when `si` lies within the range.
bool within(const Range& range, double si);
/// "0 kg to 2000 kg".
std::string words(const Range& range);

}  // namespace dunnage
