// SPDX-License-Identifier: MIT
// What a check says: measured against a limit, with its source; and what was not checked, loudly.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/names.h"
#include "base/quantity.h"
#include "base/sentence.h"
#include "base/source.h"

namespace dunnage {

/// No sheet says "pass" or "safe".
enum class Outcome { within, over, not_checked, does_not_apply };
inline constexpr Named<Outcome> outcome_names[] = {{Outcome::within, "within limit"},
                                                   {Outcome::over, "over limit"},
                                                   {Outcome::not_checked, "not checked"},
                                                   {Outcome::does_not_apply, "does not apply"}};
constexpr const char* name(Outcome outcome) { return name_in(outcome_names, outcome); }

/// The rules, and what `list rules` calls each.
enum class RuleName {
  lifting,
  canopy_ballast,
  canopy_sliding,
  tower_tip,
  tower_sliding,
  tower_load,
  circuit,
  supply,
  heat,
  water,
  cold,
  rain,
  lightning,
  stop_person,
  noise,
  ways,
  extinguishers,
  vehicle,
  loading,
  inspection
};
inline constexpr Named<RuleName> rule_names[] = {{RuleName::lifting, "lifting"},
                                                 {RuleName::canopy_ballast, "canopy-ballast"},
                                                 {RuleName::canopy_sliding, "canopy-sliding"},
                                                 {RuleName::tower_tip, "tower-tip"},
                                                 {RuleName::tower_sliding, "tower-sliding"},
                                                 {RuleName::tower_load, "tower-load"},
                                                 {RuleName::circuit, "circuit"},
                                                 {RuleName::supply, "supply"},
                                                 {RuleName::heat, "heat"},
                                                 {RuleName::water, "water"},
                                                 {RuleName::cold, "cold"},
                                                 {RuleName::rain, "rain"},
                                                 {RuleName::lightning, "lightning"},
                                                 {RuleName::stop_person, "stop-person"},
                                                 {RuleName::noise, "noise"},
                                                 {RuleName::ways, "ways"},
                                                 {RuleName::extinguishers, "extinguishers"},
                                                 {RuleName::vehicle, "vehicle"},
                                                 {RuleName::loading, "loading"},
                                                 {RuleName::inspection, "inspection"}};
constexpr const char* name(RuleName rule) { return name_in(rule_names, rule); }

/// What a finding is about, as a place in a list of the catalogue, the kit or the show: things of one name, and a
/// circuit that is called like a tower, stay apart.
struct Subject {
  enum class Kind {
    show,     ///< all of it, or its crew: no index
    unit,     ///< Catalogue::units
    box,      ///< Kit::cases
    item,     ///< Kit::items
    vehicle,  ///< Kit::vehicles
    use,      ///< Show::uses
    circuit,  ///< Show::circuits
    supply,   ///< Show::supplies
    way,      ///< Show::ways
    heard     ///< Show::heard, the first line about somebody
  } kind = Kind::show;
  int index = -1;

  bool operator==(const Subject&) const = default;
};
/// The subject that is this element of its list.
template <class List>
Subject subject_in(const List& list, const typename List::value_type& element, Subject::Kind kind) {
  return {kind, static_cast<int>(&element - list.data())};
}

/// A figure of any measure that findings compare.
using Figure = std::variant<std::monostate, Mass, Force, Speed, Pressure, Length, Power, Current, Voltage, Temperature,
                            Duration, Volume, double>;

/// Ballast of one leg, or of one tipping line.
struct LegRow {
  std::string leg;
  Sentence stands;        ///< "2 x BAG"; empty: nothing
  Mass actual, required;  ///< required at the forecast gust, factors in
  bool required_known = false;
  int more = 0;  ///< how many more of `more_of` would do
  std::string more_of;
  Mass staked{};  ///< part of `actual` that tested stakes hold
};
/// One point of margin against gust: capacity over demand.
struct CurvePoint {
  Speed gust;
  double margin;
};

/// What the person who watches the wind needs of one structure. Levels are gusts, already rounded down to
/// whole units of `meter`; ready and start are 60 and 80 per cent of down (see check/action_levels.h).
struct WindCard {
  std::string meter;  ///< "mph", "km/h", "m/s" or "knots"
  std::optional<Speed> ready, start, down;
  std::optional<Speed> walls_off;  ///< down, with the walls off; only where a wall is up and it helps
  Sentence governs;                ///< what sets down: "ballast", "sliding", "tipping", "maker's limit"
  bool maker_known = false;        ///< false: nobody has said what the frame itself stands
  bool sliding_known = false;      ///< false: sliding is not in these levels
  std::optional<Duration> strike;  ///< to bring it down
  std::optional<int> people;       ///< to bring it down
};

struct CanopyDetail {
  int use = 0;
  std::vector<LegRow> legs;
  std::optional<Speed> down_at;  ///< from the ballast assigned, factors in, never above the maker's
  std::optional<Speed> maker;
  std::optional<Speed> forecast;
  double uplift_coefficient = 0;
  Sentence improvement;  ///< "one more BAG a leg: down at 28 mph"
  std::vector<CurvePoint> curve;
  WindCard card{};
  std::optional<Mass> pressed{};  ///< on the worst leg at the forecast gust, factors in: what the ground must bear
};
/// A tower, light stand, banner or screen in the wind.
struct TowerDetail {
  int use = 0;
  Mass ballast, more;            ///< standing there; lacking in the middle of the base at the forecast gust
  std::optional<Speed> down_at;  ///< factors in, never above the maker's, whole units of the meter
  std::optional<Speed> maker, forecast;
  std::vector<CurvePoint> curve;
  WindCard card{};
  std::optional<Mass> required{};  ///< in the middle of the base at the forecast gust, factors in
  Sentence improvement{};          ///< "one more PLATE in the middle: down at 31 mph"
};
/// One circuit as it is loaded. What is not known is absent and named in `missing`.
struct CircuitRow {
  int circuit = 0;  ///< index in the show
  std::string name, leg;
  Sentence cable;
  std::vector<std::string> feeds;  ///< "2 x SPK, 500 W"
  Outcome outcome = Outcome::not_checked;
  Power load;                      ///< of what is known
  std::optional<Current> current;  ///< that it draws
  std::optional<Current> need;     ///< with 1.25 for what runs three hours or more
  std::optional<Current> protection, ampacity;
  std::optional<Length> length;                  ///< one way, to the farthest outlet
  std::optional<Voltage> drop;                   ///< over all segments
  std::optional<double> drop_share, drop_limit;  ///< of the supply's voltage
  std::string drop_method;                       ///< "NEC Ch. 9 Table 8" or "IEC 60364-5-52 Annex G"
  std::vector<Sentence> missing;                 ///< "protection", "what AMP draws"
};
struct CircuitDetail {
  CircuitRow row;
};
struct LegPower {
  std::string leg;
  Power load;
  Power apparent;
  Current current;
};  ///< apparent: VA, over the power factor
/// One power source with all its circuits.
struct SupplyDetail {
  std::string kind;  ///< "mains", "generator" or as typed
  std::optional<Voltage> voltage;
  int phases = 1;                   ///< 1 or 3
  std::optional<Power> rated;       ///< as typed
  std::optional<Power> left;        ///< of it, after height and heat; mains: as rated
  Power load, apparent, starting;   ///< running in all; the same in VA; what the largest starting load adds
  std::vector<LegPower> legs;       ///< as typed in the circuits; empty where none names a leg
  std::optional<double> imbalance;  ///< (largest - smallest) / largest leg
  std::vector<CircuitRow> circuits;
  std::vector<Sentence> tests;  ///< what to press and measure before doors, one line each
};
/// One vehicle on its way, by moments of what is drawn in it. What is not known is absent.
struct LoadStage {
  std::string after;               ///< place where it has just unloaded; empty: at departure
  std::optional<Mass> most_cargo;  ///< by payload and gross, people and tongue taken off
  Mass cargo, left, right;         ///< left, right: of the middle; a piece across it counts on both by its shares
  std::optional<Mass> aboard;      ///< what counts against the payload: cargo; of a van people, fuel and tongue too
  std::optional<Length> centre;    ///< of the cargo, behind the bulkhead; absent of an empty one
  std::optional<Mass> total, front, rear, axle, tongue, train;
  std::optional<double> tongue_share;
  std::vector<Sentence> over, warns;  ///< sentences: above a plate; worth a word
};
/// Where a load bar stands and what it holds: behind the load at departure (no stop), then after each stop; or ahead of
/// a row that stands clear of what is before it.
struct LoadBar {
  std::string stop;
  Length at;
  Mass holds;
  bool ahead = false;
};
/// A load as planned.
struct LoadingDetail {
  std::vector<LoadStage> stages;  ///< departure, then each stop
  std::vector<std::pair<Length, Mass>>
      allowed;           ///< centre of the cargo, and how much of it the plates bear at every stage
  int tie_downs = 0;     ///< asked by its length and mass
  bool blocked = false;  ///< against the bulkhead
  Length length;         ///< of the load
  Mass straps_hold;      ///< working load limits together, at least
  std::vector<LoadBar> bars;
  std::vector<std::string> tips;  ///< units that tip sideways before they slide, alone
};
/// One vehicle or trailer as it leaves.
struct VehicleDetail {
  LoadStage stage;
  int pieces = 0, unknown = 0;  ///< unknown: pieces without a mass
};
/// Heat, cold and rain of the day, for the crew sheet and the weather card.
struct WeatherDetail {
  std::optional<Temperature> feels;   ///< heat index in the shade, or wind chill
  std::optional<Temperature> in_sun;  ///< heat index with full sun
  Sentence band;                      ///< "caution"
  std::vector<Sentence> measures;     ///< what to do, one line each
};
/// When to clear the site for lightning.
struct LightningDetail {
  std::optional<Length> clear_from;  ///< begin to clear at this distance
  Length shelter_by;                 ///< all in shelter before lightning is this near
  Duration count, wait;              ///< flash to thunder; after the last
  std::optional<Duration> time_to_clear;
  std::optional<Speed> storm;
  std::string shelter;  ///< as typed
};
/// How one unit is moved and lifted.
struct Handling {
  enum class Move { roll, carry } move = Move::carry;
  int ramp_people = 0;       ///< for roll: on a ramp
  int people = 0;            ///< fewest whose team limit covers the mass; 0: use the aid
  Sentence aid;              ///< the house's words, where people is 0
  Mass limit;                ///< of that many people, or the largest team's
  bool house_limit = false;  ///< a house's own figure
  /// The published figure for as many people: where the house's own is above it, or there is none to compare.
  std::optional<Mass> screen{};
  bool above_screen = false;         ///< the house's figure is above `screen`, or `screen` is absent
  std::optional<Mass> zone_limit{};  ///< the filter for one person lifting it into the vehicle
  bool known = false;                ///< false: the mass was not given
  /// NIOSH lifting index of one person lifting it into the vehicle, above 1 a warning; absent where grip
  /// height, size, deck or mass is not given, or where `not_liftable` by that method.
  std::optional<double> loading_index;
  bool not_liftable = false;
};

struct Finding {
  RuleName rule{};
  Subject subject{};
  Sentence called{};  ///< the subject as it is printed: a code or a name, or "crew"; empty where `says` tells it
  Outcome outcome = Outcome::not_checked;
  Figure measured, limit;
  Sentence says{};                  ///< one sentence for the sheet
  std::vector<Sentence> sources{};  ///< short names of publications
  std::vector<Sentence> assumptions{};
  Sentence caution{};
  Place place{};  ///< where the deciding value was typed
  std::variant<std::monostate, CanopyDetail, Handling, TowerDetail, CircuitDetail, SupplyDetail, VehicleDetail,
               LoadingDetail, WeatherDetail, LightningDetail>
      detail{};
};

struct Findings {
  std::vector<Finding> list;       ///< in the order of the rules, then of the plan
  std::vector<Handling> handling;  ///< by unit index of the catalogue
};

}  // namespace dunnage
