// SPDX-License-Identifier: MIT
// What a check says: measured against a limit, with its source; and what was not checked, loudly.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/quantity.h"
#include "base/source.h"

namespace dunnage {

enum class Outcome { within, over, not_checked, does_not_apply };
const char* name(Outcome outcome);   ///< "within limit", "over limit", "not checked", "does not apply"

/// A figure of any measure that findings compare.
using Figure = std::variant<std::monostate, Mass, Force, Speed, Pressure, Length, Power, Current, Voltage,
                            Temperature, Duration, double>;

/// Ballast of one leg, or of one tipping line.
struct LegRow {
  std::string leg;
  std::string stands;               ///< "2 x BAG"
  Mass actual, required;            ///< required at the forecast gust, factors in
  bool required_known = false;
  int more = 0;                     ///< how many more of `more_of` would do
  std::string more_of;
};
/// One point of margin against gust: capacity over demand.
struct CurvePoint { Speed gust; double margin; };

struct CanopyDetail {
  int use = 0;
  std::vector<LegRow> legs;
  std::optional<Speed> down_at;     ///< from the ballast assigned, factors in, never above the maker's
  std::optional<Speed> maker;
  std::optional<Speed> forecast;
  double uplift_coefficient = 0;
  std::string assumption;           ///< "full blockage assumed"
  std::string improvement;          ///< "one more BAG a leg: down at 28 mph"
  std::vector<CurvePoint> curve;
};
/// A tower, light stand, banner or screen in the wind.
struct TowerDetail {
  int use = 0;
  Mass ballast, more;               ///< standing there; lacking in the middle of the base at the forecast gust
  std::optional<Speed> down_at;     ///< factors in, never above the maker's, whole units of the meter
  std::optional<Speed> maker, forecast;
  std::vector<CurvePoint> curve;
};
/// How one unit is moved and lifted.
struct Handling {
  enum class Move { roll, carry } move = Move::carry;
  int ramp_people = 0;              ///< for roll: on a ramp
  int people = 0;                   ///< fewest whose team limit covers the mass; 0: use the aid
  std::string aid;                  ///< the house's words, where people is 0
  Mass limit;                       ///< of that many people, or the largest team's
  bool house_limit = false;         ///< a house's own figure
  bool known = false;               ///< false: the mass was not given
  /// NIOSH lifting index of one person lifting it into the vehicle, above 1 a warning; absent where grip
  /// height, size, deck or mass is not given, or where `not_liftable` by that method.
  std::optional<double> loading_index;
  bool not_liftable = false;
};

struct Finding {
  std::string rule;                 ///< "lifting", "canopy-ballast": as `list rules` names them
  std::string subject;              ///< a unit's code, or a use's name
  Outcome outcome = Outcome::not_checked;
  Figure measured, limit;
  std::string says;                 ///< one sentence for the sheet
  std::string source;               ///< short name of the publication
  std::string assumption, caution;
  Place place;                      ///< where the deciding value was typed
  std::variant<std::monostate, CanopyDetail, Handling, TowerDetail> detail;
};

struct Findings {
  std::vector<Finding> list;        ///< in the order of the rules, then of the plan
  std::vector<Handling> handling;   ///< by unit index of the catalogue
};

}  // namespace dunnage
