// SPDX-License-Identifier: MIT
// What the house owns, as typed: items that live in cases, cases, structures, vehicles, and the house itself.
#pragma once

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/quantity.h"
#include "base/source.h"
#include "base/unit.h"

namespace dunnage {

using Text = Sourced<std::string>;
template <class T>
using Maybe = std::optional<Sourced<T>>;
template <class T>
std::optional<T> value_of(const Maybe<T>& typed) {
  return typed ? std::optional<T>(typed->value) : std::nullopt;
}

/// A day in the proleptic Gregorian calendar. Dates are input; nothing asks a clock.
struct Date {
  int year = 0, month = 0, day = 0;
  auto operator<=>(const Date&) const = default;
  std::string iso() const;  ///< "2027-06-19"
  long days() const;        ///< since 1970-01-01
};

enum class PaperSize { a4, letter };
enum class People { crew, volunteers };

/// Who lifts, from where to where. Absent limits: the published filter (formula/lifting.h).
struct HouseLift {
  People people = People::volunteers;
  Maybe<Length> deck;                 ///< height of the vehicle's floor
  std::string aid = "lifting aid";    ///< printed beyond the limit
  Maybe<Mass> one, two, three, four;  ///< the house's own limits for that many people together
  Place place;
  std::array<std::optional<Mass>, 4> own() const {
    return {value_of(one), value_of(two), value_of(three), value_of(four)};
  }
};

/// What one stake held when it was pulled, and in what ground. Counts nowhere else.
struct TestedStake {
  Mass holds;
  std::string ground, tested;  ///< tested: where and when, printed as typed
  Place place;
};

/// What a loaded foot took to slide, as a share of the weight on it, and on what ground.
struct TestedFriction {
  double share = 0;
  std::string ground, tested;  ///< tested: where, when and how wet, printed as typed
  Place place;
};

struct House {
  Text name, phone;
  UnitSystem units = UnitSystem::metric;
  PaperSize paper = PaperSize::a4;
  Text label_stock;
  std::vector<Text> languages = {{"en", {}}};
  std::string meter;         ///< "mph", "km/h", "m/s" or "knots"
  std::vector<Text> packet;  ///< documents that `print` makes; empty: all
  HouseLift lift;
  std::optional<TestedStake> stake;
  std::vector<TestedFriction> friction;
  std::string lightest = "mass";  ///< "mass" or "units": what the cover makes least first
  std::vector<Text> words;        ///< the house's own words for [show] with = [...]
  Place place;
};

/// The size of one conductor of a cable: by gauge or by cross-section.
struct Conductor {
  std::string awg;  ///< "12", "2/0"; empty where the section is given
  Area section;
};

struct Item {
  Text code, name;
  std::map<std::string, Text> names;  ///< by language
  Maybe<Mass> mass;                   ///< of one; of a full one for what is used up
  std::vector<Text> serves;
  Maybe<Length> length;       ///< a cable, a mat
  Maybe<std::string> joins;   ///< "itself" or a joiner's code
  Maybe<Length> each;         ///< how much a full one holds (tape)
  Maybe<Volume> each_volume;  ///< likewise, for water
  bool used_up = false;
  Maybe<Power> draws;
  Maybe<Line> input_level;     ///< largest input level of a console or box; output level of a source
  Maybe<Mass> rating;          ///< what it may carry
  bool phantom = false;        ///< needs phantom power
  Maybe<Conductor> conductor;  ///< of a power cable
  Maybe<Current> carries;      ///< its maker's ampacity
  Maybe<Frequency> from_frequency, to_frequency;
  Place place;
};

/// What a case holds of one item.
struct Content {
  Text item;
  int count = 0;
  Maybe<Length> left;  ///< over all of them, for what is used up; absent: full
  Maybe<Volume> left_volume;
  Place place;
};

enum class Mark { this_way_up, fragile, keep_dry, keep_cool, no_hand_truck, no_stack, heavy };

/// One key of a `goes` table: the show's fact of that name lies in the list or between the bounds.
struct Condition {
  std::string fact;  ///< "crew", without _from or _to
  enum class Kind { any_of, from, to } kind = Kind::any_of;
  std::vector<std::variant<bool, double, std::string>> values;  ///< numbers and quantities in SI
  Place place;
};
struct ConditionTable {
  std::vector<Condition> all;
  Place place;
};
struct Goes {
  enum class Kind { unstated, always, asked, when } kind = Kind::unstated;
  std::vector<ConditionTable> any;
  Place place;
};

/// How many go: `send` for each `every` of something, rounded up on its own total.
struct Per {
  std::string of;    ///< "crew", "audience", "input", "mix", "run", "crossing", "hour", "day",
                     ///< "structure", "item": see plan/counts
  Text structure;    ///< for of = "structure": a structure's code or a kind
  double every = 1;  ///< a number, or metres for of = "run" and "crossing"
  bool every_is_length = false;
  Maybe<std::string> floor, crossed_by;  ///< narrow of = "run" and "crossing"
  int send = 1;
  Place place;
};

struct Need {
  Text code;
  int each = 0;
  int once = 0;
  Place place;
};

enum class Form { trunk, tub, bag, box, loose };
enum class Hold { good, fair, poor };

/// How a case may travel besides as its size is typed, height up: on its smallest side, on another, or with its
/// shortest side up.
enum class Lying { end, side, flat };

struct Size {
  Length length, width, height;
};

/// Whatever is carried as one. All is per unit.
inline constexpr int most_faders = 64;   ///< of one bank
inline constexpr int most_stacked = 20;  ///< more stand on nothing that goes through a door

struct Case {
  Text code, name;
  std::map<std::string, Text> names;
  Form form = Form::box;
  std::string looks;
  int count = 1;
  std::string home, place_word;  ///< shelf; where at the show (a place's code)
  std::string vehicle;
  Maybe<Size> size;
  Maybe<Mass> empty, weighed;
  int grips = 0;
  Hold hold = Hold::fair;
  bool hold_typed = false;
  Maybe<Length> grip_height;
  bool wheels = false;
  std::vector<Mark> marks;
  Maybe<Mass> stack;        ///< most that may stand on top
  Maybe<int> stack_count;   ///< how many may stand on it one above the other
  std::vector<Lying> lies;  ///< empty: it travels as its size is typed
  std::vector<Content> holds;
  std::vector<Text> serves;
  Maybe<Mass> travels, filled;  ///< in the vehicle; as ballast
  Maybe<Mass> rating;
  Maybe<Length> rated_height;
  Maybe<Power> draws;
  Maybe<Line> input_level;
  Maybe<Length> length;        ///< a case that serves as a length itself (a ramp)
  Maybe<Conductor> conductor;  ///< of a power cable
  Maybe<Current> carries;      ///< its maker's ampacity
  Maybe<Area> wind_area;
  Maybe<Paper> fader_pitch;  ///< of a console: from one fader to the next
  Maybe<int> fader_bank;     ///< of a console: faders of one bank
  std::optional<Sourced<Date>> inspect_by;
  std::string revision;  ///< of the label: a date or letter typed
  Goes goes;
  std::vector<Per> per;
  std::vector<Need> needs;
  Maybe<std::string> spare_for;
  int spare_each = 0;  ///< 0: one spare a kind
  bool contents_on_label = true;
  Place place;
  Place home_place, place_word_place, vehicle_place;
};

inline bool has_mark(const Case& box, Mark mark) {
  return std::find(box.marks.begin(), box.marks.end(), mark) != box.marks.end();
}

/// Where one unit of a case differs.
struct UnitChange {
  Text code;
  Maybe<std::string> out_of_service;
  Maybe<Mass> weighed;
  Maybe<std::string> home;
  Place place;
};

enum class StructureKind { canopy, tower, light_tree, banner, screen };
enum class Roof { flat, single_slope, two_slope, four_slope };
enum class Base { feet, wheels, plate };

struct Part {
  Text code;
  int count = 1;
  Place place;
};

struct Structure {
  Text code, name;
  StructureKind kind = StructureKind::canopy;
  std::vector<Part> made_of;  ///< cases that go for each one standing
  // canopies
  std::vector<Text> legs;
  Roof roof = Roof::flat;
  Maybe<Length> plan_length, plan_width;
  Maybe<Length> eaves, peak;
  Maybe<std::string> wall;                  ///< what each wall that is hung asks for
  Maybe<double> own_uplift, own_downforce;  ///< maker's own coefficients, where stated
  // towers, light trees, banners
  Maybe<Length> mast_height;
  Maybe<int> feet;            ///< equally spaced feet or legs
  Maybe<Length> foot_radius;  ///< from the middle
  Maybe<Length> base_length, base_width;
  Maybe<Area> head_area;
  Maybe<Length> head_height;
  Maybe<Mass> rated_load;
  Maybe<Length> rated_height;
  // all
  Maybe<Mass> standing;     ///< the structure's own mass
  Maybe<Speed> maker_gust;  ///< the maker's limit
  Maybe<Duration> strike_minutes;
  Maybe<int> strike_people;
  Place place;
};

/// An opening, a solid obstacle or a sloping step in a cargo space.
/// at: from the bulkhead to the nearer edge of a side door; where it is not typed nothing is unloaded through it.
struct DoorOpening {
  std::string where;
  Length width, height;
  Place place;
  Maybe<Length> at{};
};
struct CargoBlock {
  std::string what;
  Length x, y, z, length, width, height;
  Place place;
};

struct Vehicle {
  Text code, name;
  enum class Kind { van, trailer } kind = Kind::van;
  Maybe<Size> cargo;
  std::vector<DoorOpening> doors;
  std::vector<CargoBlock> blocks;  ///< wheel arches, steps, rails
  Maybe<Mass> empty_front, empty_rear, empty_axle, empty_tongue;
  Maybe<Mass> limit_front, limit_rear, limit_axle, limit_tongue, gross, train, payload;
  Maybe<Length> wheelbase, front_to_cargo, hitch_behind, coupling_to_axle, coupling_to_cargo;
  Maybe<double> tongue_from, tongue_to;  ///< share of the loaded trailer
  Maybe<Mass> people_and_fuel;
  Maybe<std::string> pulled_by;  ///< the vehicle that tows this trailer
  Place place;
};

struct Kit {
  std::string folder;
  House house;
  std::vector<Item> items;
  std::vector<Case> cases;
  std::vector<UnitChange> changes;
  std::vector<Structure> structures;
  std::vector<Vehicle> vehicles;
};

}  // namespace dunnage
