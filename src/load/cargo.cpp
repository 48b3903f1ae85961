// SPDX-License-Identifier: MIT
#include "load/cargo.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "formula/team_lift.h"

namespace dunnage {
namespace {

/// From here on a piece this thin lies along a wall. Common practice, no source.
constexpr int strip_length = 1200, strip_side = 450;
/// Where hands end that lift a piece onto others, above its base. Common practice, no source.
constexpr int hand_above_base = 100;

void add_stance(std::vector<PackStance>& out, Spot size, Stance stance) {
  for (const PackStance& other : out)
    if (other.size == size) return;
  out.push_back({size, static_cast<int>(stance)});
}

/// How high two people set down a mass, standing beside it: up to the elbow what they lift together at best, above it
/// what the filter gives two of them for the zone, to the shoulder and over it.
int highest_base(const HouseLift& lift, double mass, bool known) {
  if (!known) return 0;
  const TeamLimits limits{lift.people == People::crew ? Lifter::crew : Lifter::anyone, lift.own()};
  const auto two = [&](HandZone zone) {
    const Mass one = filter_limit(limits.lifter, zone, Reach::close);
    return team_limit({one, one}).value_or(one).si();
  };
  const auto best = team_figure(2, limits);
  if (mass <= two(HandZone::above_shoulder)) return 100000;
  if (mass <= two(HandZone::shoulder_to_elbow)) return 1400 - hand_above_base;
  if (best && mass <= best->limit.si()) return 1050 - hand_above_base;
  return 0;
}

std::string small_letters(const std::string& where) {
  std::string words;
  for (const char c : where) words += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return words;
}

/// The opening is rounded so as to be no larger than it is.
std::vector<SideDoor> side_doors(const Vehicle& vehicle) {
  std::vector<SideDoor> out;
  for (const DoorOpening& door : vehicle.doors) {
    const std::string words = small_letters(door.where);
    const bool left = words.find("left") != std::string::npos;
    if (!door.at || at_rear(door) || (!left && words.find("right") == std::string::npos)) continue;
    const int from = static_cast<int>(steps_up(door.at->value / unit::millimetre));
    out.push_back({from, mm_down(door.at->value + door.width), mm_down(door.height), left});
  }
  return out;
}

/// Through some door as it stands. A side door that nobody said the place of serves where there is no other.
bool comes_in(const Cargo& cargo, const PackStance& stance) {
  const std::vector<DoorOpening>& doors = cargo.vehicle->doors;
  if (std::any_of(cargo.sides.begin(), cargo.sides.end(), [&](const SideDoor& d) { return side_takes(d, stance); }))
    return true;
  return rear_takes(cargo, stance) &&
         (doors.empty() ||
          std::any_of(doors.begin(), doors.end(), [&](const DoorOpening& d) { return passes_door(stance, d); }));
}

int stop_of(const Show& show, const Vehicle& vehicle, const std::string& place, int& stops) {
  stops = 0;
  int found = -1;
  for (const Load& load : show.loads)
    if (load.vehicle.value == vehicle.code.value)
      for (const Text& stop : load.stops) {
        if (found < 0 && stop.value == place) found = stops;
        ++stops;
      }
  return found < 0 ? stops : found;
}

CargoKind kind_of(const Catalogue& c, const Show& show, const Plan& plan, Cargo& cargo, int unit) {
  const Case& box = c.case_at(unit);
  const PlanRow& row = plan.rows[static_cast<std::size_t>(unit)];
  CargoKind kind;
  kind.units = {unit};
  kind.mass_known = row.mass_known;
  if (row.mass_known) kind.mass = row.mass.si();
  const bool topless = has_mark(box, Mark::fragile) || has_mark(box, Mark::no_stack) || !box.stack || !row.mass_known;
  if (box.stack_count) kind.levels = box.stack_count->value;
  kind.bears = topless || kind.levels == 0 ? 0 : box.stack->value.si();
  kind.highest = highest_base(c.kit.house.lift, kind.mass, kind.mass_known);
  kind.wheels = box.wheels;
  const bool ballast = box.filled || std::any_of(plan.ballast.begin(), plan.ballast.end(),
                                                 [&](const BallastPiece& b) { return b.unit == unit; });
  kind.soft = box.form == Form::bag && !ballast;
  kind.stop = stop_of(show, *cargo.vehicle, row.place, cargo.stops);
  for (const PackStance& stance : stances_of(box))
    if (comes_in(cargo, stance)) kind.stances.push_back(stance);
  const Size& size = box.size->value;
  const int sides[] = {mm_up(size.length), mm_up(size.width), mm_up(size.height)};
  kind.strip = (box.form == Form::bag || box.form == Form::loose) && std::max(sides[0], sides[1]) >= strip_length &&
               std::min(sides[0], sides[1]) <= strip_side && sides[2] <= strip_side;
  return kind;
}

/// All by which rules tell kinds apart.
std::vector<double> key_of(const CargoKind& k) {
  std::vector<double> key = {k.mass,           k.mass_known ? 1.0 : 0.0, k.bears,
                             double(k.levels), double(k.highest),        double(k.stop)};
  for (const bool flag : {k.wheels, k.strip, k.soft}) key.push_back(flag ? 1 : 0);
  for (const PackStance& s : k.stances)
    key.insert(key.end(), {double(s.size[0]), double(s.size[1]), double(s.size[2]), double(s.word)});
  return key;
}

}  // namespace

int mm_up(Length side) { return static_cast<int>(std::max(1.0, steps_up(side / unit::millimetre))); }
int mm_down(Length side) { return static_cast<int>(steps_down(side / unit::millimetre)); }

bool at_rear(const DoorOpening& door) {
  const std::string words = small_letters(door.where);
  return words.find("rear") != std::string::npos || words.find("back") != std::string::npos;
}

bool rear_takes(const Cargo& cargo, const PackStance& stance) {
  const std::vector<DoorOpening>& doors = cargo.vehicle->doors;
  if (std::none_of(doors.begin(), doors.end(), at_rear)) return cargo.sides.empty();
  return std::any_of(doors.begin(), doors.end(),
                     [&](const DoorOpening& d) { return at_rear(d) && passes_door(stance, d); });
}

bool side_takes(const SideDoor& door, const PackStance& stance) {
  return stance.size[0] <= door.to - door.from && stance.size[2] <= door.height;
}

bool passes_door(const PackStance& stance, const DoorOpening& door) {
  const int width = mm_down(door.width), height = mm_down(door.height);
  const Spot& s = stance.size;
  const auto as = static_cast<Stance>(stance.word);
  if (as == Stance::upright || as == Stance::turned) return std::min(s[0], s[1]) <= width && s[2] <= height;
  Spot sides = s;
  std::sort(sides.begin(), sides.end());
  return sides[0] <= std::min(width, height) && sides[1] <= std::max(width, height);
}

std::vector<PackStance> stances_of(const Case& box) {
  const Size& size = box.size->value;
  const int l = mm_up(size.length), w = mm_up(size.width), h = mm_up(size.height);
  std::vector<PackStance> out;
  add_stance(out, {l, w, h}, Stance::upright);
  add_stance(out, {w, l, h}, Stance::turned);
  if (has_mark(box, Mark::this_way_up)) return out;
  Spot s = {l, w, h};
  std::sort(s.begin(), s.end());
  for (const Lying lying : box.lies) {
    const std::size_t up = lying == Lying::end ? 2 : lying == Lying::side ? 1 : 0;
    const int a = s[up == 0 ? 1 : 0], b = s[up == 2 ? 1 : 2];
    const Stance stance = up == 2 ? Stance::on_end : up == 1 ? Stance::on_side : Stance::flat;
    add_stance(out, {b, a, s[up]}, stance);
    add_stance(out, {a, b, s[up]}, stance);
  }
  return out;
}

Cargo make_cargo(const Catalogue& catalogue, const Show& show, const Plan& plan, const Vehicle& vehicle,
                 const std::vector<int>& units, int hands) {
  Cargo cargo;
  cargo.vehicle = &vehicle;
  if (vehicle.pulled_by) cargo.puller = catalogue.vehicle(vehicle.pulled_by->value);
  cargo.hands = hands;
  cargo.sides = side_doors(vehicle);
  for (const DoorOpening& door : vehicle.doors)
    if (at_rear(door)) cargo.lintel = std::max(cargo.lintel, mm_down(door.height));
  const Size& room = vehicle.cargo->value;
  cargo.room = {mm_down(room.length), mm_down(room.width), mm_down(room.height)};
  for (const CargoBlock& b : vehicle.blocks) {
    const auto low = [](Length l) { return mm_down(l); };
    const auto high = [](Length from, Length size) {
      return static_cast<int>(steps_up((from + size) / unit::millimetre));
    };
    cargo.obstacles.push_back(
        {{low(b.x), low(b.y), low(b.z)}, {high(b.x, b.length), high(b.y, b.width), high(b.z, b.height)}});
  }
  stop_of(show, vehicle, {}, cargo.stops);
  std::map<std::vector<double>, std::size_t> seen;
  for (const int unit : units) {
    CargoKind kind = kind_of(catalogue, show, plan, cargo, unit);
    const auto [at, fresh] = seen.emplace(key_of(kind), cargo.kinds.size());
    if (fresh)
      cargo.kinds.push_back(std::move(kind));
    else
      cargo.kinds[at->second].units.push_back(unit);
  }
  return cargo;
}

}  // namespace dunnage
