// SPDX-License-Identifier: MIT
// The bounds are wide on purpose: they catch a slipped decimal or a wrong unit, and say nothing about
// what is wise. Common practice, no source.
#include "base/range.h"

#include <cassert>
#include <string>

namespace dunnage {
namespace range {

const Range piece_mass{"mass of one piece", Measure::mass, 0.001, 1000, "kg"};
const Range case_mass{"mass of a case", Measure::mass, 0.01, 2000, "kg"};
const Range mass_on_top{"mass that may stand on top", Measure::mass, 0, 2000, "kg"};
const Range vehicle_mass{"mass of a vehicle", Measure::mass, 0, 44000, "kg"};
const Range case_side{"side of a case", Measure::length, 1, 1000, "cm"};
const Range piece_length{"length of a piece", Measure::length, 0.01, 500, "m"};
const Range run_length{"length of a run", Measure::length, 0.1, 2000, "m"};
const Range height{"height", Measure::length, 0, 30, "m"};
const Range plan_side{"side of a structure", Measure::length, 0.1, 100, "m"};
const Range area{"area", Measure::area, 0.001, 1000, "m2"};
const Range wind{"wind speed", Measure::speed, 0, 75, "m/s"};
const Range temperature{"temperature", Measure::temperature, -50, 60, "C"};
const Range water{"volume", Measure::volume, 0.01, 5000, "l"};
const Range minutes{"time taken", Measure::duration, 0, 72, "h"};
const Range power{"power", Measure::power, 0, 1000, "kW"};
const Range current{"current", Measure::current, 0.1, 1000, "A"};
const Range voltage{"voltage", Measure::voltage, 1, 1000, "V"};
const Range frequency{"frequency", Measure::frequency, 1, 7000000000.0, "Hz"};
const Range level{"line level", Measure::line, -80, 40, "dBu"};
const Range sound{"sound level", Measure::sound, 20, 150, "dBA"};
const Range ground_offset{"distance from the middle", Measure::length, -50, 50, "m"};
const Range to_axle{"distance to an axle", Measure::length, 0.5, 20, "m"};
const Range to_hitch{"rear axle to hitch", Measure::length, 0, 10, "m"};
const Range distance{"distance", Measure::length, 0, 10, "km"};
const Range pressure{"pressure", Measure::pressure, 0, 10, "kPa"};
const Range cable_area{"cross-section of a cable", Measure::area, 0.05, 500, "mm2"};
const Range weight_hold{"mass that may hang or be carried", Measure::mass, 0.1, 5000, "kg"};
const Range paper_length{"length on paper", Measure::paper, 0, 1500, "mm"};
const Range fader_pitch{"from one fader to the next", Measure::paper, 5, 60, "mm"};
const Range type_size{"size of type", Measure::paper, 4, 600, "pt"};

const std::vector<const Range*>& all() {
  static const std::vector<const Range*> list = {
      &piece_mass, &case_mass,   &mass_on_top,   &weight_hold,  &vehicle_mass, &case_side, &piece_length, &run_length,
      &height,     &plan_side,   &ground_offset, &to_axle,      &to_hitch,     &distance,  &area,         &cable_area,
      &wind,       &temperature, &water,         &minutes,      &power,        &current,   &voltage,      &frequency,
      &level,      &sound,       &pressure,      &paper_length, &fader_pitch,  &type_size};
  return list;
}

}  // namespace range

namespace {

const UnitName& unit_of(const Range& range) {
  for (const UnitName& unit : unit_names())
    if (unit.measure == range.measure && unit.symbol == range.symbol) return unit;
  assert(false && "a range names a unit of its measure");
  return unit_names().front();
}

}  // namespace

bool within(const Range& range, double si) {
  const UnitName& unit = unit_of(range);
  const double value = (si - unit.offset) / unit.factor;
  const double give = 1e-9 * (range.high - range.low);  // 10 m in feet and back is still 10 m
  return value >= range.low - give && value <= range.high + give;
}

std::string words(const Range& range) {
  const std::string symbol(range.symbol);
  return plain(range.low, 8) + " " + symbol + " to " + plain(range.high, 8) + " " + symbol;
}

}  // namespace dunnage
