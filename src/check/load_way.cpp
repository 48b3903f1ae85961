// SPDX-License-Identifier: MIT
#include "check/load_way.h"

#include <algorithm>

#include "check/load_place.h"

namespace dunnage {
namespace {

/// How far hands reach over what stays aboard, or hold up a piece that is half through a door. Common practice, no
/// source.
constexpr double arm = 0.6;

/// Who is aboard, and what bears whom.
class WhoStands {
 public:
  /// `stops`: of each piece, the number of its stop.
  WhoStands(const Stowage& hold, const std::vector<int>& stops)
      : hold_(hold), stops_(stops), in_(hold.pieces.size(), false), on_(hold.pieces.size()) {
    for (std::size_t i = 0; i < hold.pieces.size(); ++i) on_[i] = rests_on(hold, i);
  }
  void set(std::size_t piece, bool in) { in_[piece] = in; }
  bool has(std::size_t piece) const { return in_[piece]; }

  /// Something aboard stands on it; -1 for nothing.
  int on_top(std::size_t piece) const {
    for (std::size_t i = 0; i < on_.size(); ++i)
      if (in_[i])
        for (const Rest& rest : on_[i])
          if (static_cast<std::size_t>(rest.below) == piece) return static_cast<int>(i);
    return -1;
  }
  /// It bears it, and is not in yet; -1 for nothing.
  int lacks_below(std::size_t piece) const {
    for (const Rest& rest : on_[piece])
      if (!in_[static_cast<std::size_t>(rest.below)]) return rest.below;
    return -1;
  }

  /// A straight way to a door, at the height where it stands: things on wheels stand on the floor or were lifted there,
  /// so this holds for rolling too. `in_way`: what stands in it, towards the rear first; -1 for a block or no door.
  bool free_way(std::size_t piece, int& in_way) const {
    in_way = -1;
    const std::vector<DoorOpening>& doors = hold_.vehicle->doors;
    bool rear = doors.empty();
    int beside = -1;
    for (const DoorOpening& door : doors) {
      if (wall_of(door) == Wall::rear && (passes(hold_.pieces[piece], door) || passes_none(piece))) rear = true;
      if (side_way(piece, door, beside)) return true;
    }
    if (rear) {
      Solid way = hold_.pieces[piece].solid;
      way.to[0] = hold_.vehicle->cargo->value.length.si();
      in_way = first_in(way, piece);
      if (in_way < 0) in_way = far_over(piece);
      if (in_way < 0 && past_blocks(piece, way)) return true;
    }
    if (in_way < 0) in_way = beside;
    return false;
  }

 private:
  /// What stays longer and reaches more than an arm nearer to the rear door, where the piece is lifted over it; or -1.
  int far_over(std::size_t piece) const {
    const Standing& s = hold_.pieces[piece];
    for (std::size_t i = 0; i < hold_.pieces.size(); ++i) {
      const Solid& other = hold_.pieces[i].solid;
      if (!in_[i] || stops_[i] <= stops_[piece] || on_floor(s)) continue;
      const bool abreast = s.solid.from[1] < other.to[1] - touching && other.from[1] < s.solid.to[1] - touching;
      if (abreast && other.to[0] - s.solid.to[0] > arm + touching) return static_cast<int>(i);
    }
    return -1;
  }

  int first_in(const Solid& way, std::size_t piece) const {
    for (std::size_t i = 0; i < hold_.pieces.size(); ++i)
      if (i != piece && in_[i] && overlap(way, hold_.pieces[i].solid)) return static_cast<int>(i);
    return -1;
  }

  /// That is a fault by itself, and said once.
  bool passes_none(std::size_t piece) const {
    const std::vector<DoorOpening>& doors = hold_.vehicle->doors;
    return std::none_of(doors.begin(), doors.end(),
                        [&](const DoorOpening& d) { return passes(hold_.pieces[piece], d); });
  }

  /// Straight sideways, wholly within the opening. `in_way` is set where a piece stands in it.
  bool side_way(std::size_t piece, const DoorOpening& door, int& in_way) const {
    const Wall wall = wall_of(door);
    if (!door.at || (wall != Wall::left && wall != Wall::right)) return false;
    Solid way = hold_.pieces[piece].solid;
    const double from = door.at->value.si(), to = from + door.width.si();
    if (way.from[0] < from - touching || way.to[0] > to + touching || way.to[2] > door.height.si() + touching)
      return false;
    (wall == Wall::left ? way.from[1] : way.to[1]) = wall == Wall::left ? 0 : hold_.vehicle->cargo->value.width.si();
    const int other = first_in(way, piece);
    if (other >= 0) in_way = other;
    return other < 0 &&
           std::none_of(hold_.blocks.begin(), hold_.blocks.end(), [&](const Solid& b) { return overlap(way, b); });
  }

  /// A wheel arch in the way is gone around, where the aisle beside it takes the narrow side of the piece.
  bool past_blocks(std::size_t piece, const Solid& way) const {
    const Solid& s = hold_.pieces[piece].solid;
    const double narrow = std::min(s.to[0] - s.from[0], s.to[1] - s.from[1]);
    for (const Solid& block : hold_.blocks)
      if (overlap(way, block) && widest_gap(piece, block, way) < narrow - touching) return false;
    return true;
  }

  /// Beside a block, at the height of the way, between walls, blocks and what is aboard.
  double widest_gap(std::size_t piece, const Solid& block, const Solid& way) const {
    Solid aisle = way;
    aisle.from[0] = block.from[0];
    aisle.to[0] = block.to[0];
    aisle.from[1] = 0;
    aisle.to[1] = hold_.vehicle->cargo->value.width.si();
    std::vector<std::pair<double, double>> taken;
    const auto take = [&](const Solid& s) {
      if (overlap(aisle, s)) taken.emplace_back(s.from[1], s.to[1]);
    };
    for (const Solid& b : hold_.blocks) take(b);
    for (std::size_t i = 0; i < hold_.pieces.size(); ++i)
      if (i != piece && in_[i]) take(hold_.pieces[i].solid);
    std::sort(taken.begin(), taken.end());
    double free_from = 0, widest = 0;
    for (const auto& [from, to] : taken) {
      widest = std::max(widest, from - free_from);
      free_from = std::max(free_from, to);
    }
    return std::max(widest, aisle.to[1] - free_from);
  }

  const Stowage& hold_;
  const std::vector<int>& stops_;
  std::vector<bool> in_;
  std::vector<std::vector<Rest>> on_;
};

int stop_of(const Stowage& hold, const Plan& plan, const Standing& s) {
  const std::string& place = plan.rows[static_cast<std::size_t>(s.piece->unit)].place;
  return static_cast<int>(std::find(hold.stops.begin(), hold.stops.end(), place) - hold.stops.begin());
}

Sentence stop_words(const Stowage& hold, int stop) {
  return stop < static_cast<int>(hold.stops.size()) ? Sentence(hold.stops[static_cast<std::size_t>(stop)])
                                                    : said("the end");
}

/// What stands in the way, or else the vehicle does.
const std::string& code_at(const Stowage& hold, int other) { return hold.pieces[static_cast<std::size_t>(other)].code; }

/// All for one stop leave, in whatever order they can; what cannot is said and taken off all the same.
void unload(const Stowage& hold, int stop, const std::vector<int>& stops, WhoStands& aboard, FaultList& faults) {
  bool moved = true;
  while (moved) {
    moved = false;
    for (std::size_t i = hold.pieces.size(); i-- > 0;) {
      int in_way = -1;
      if (!aboard.has(i) || stops[i] != stop || aboard.on_top(i) >= 0 || !aboard.free_way(i, in_way)) continue;
      aboard.set(i, false);
      moved = true;
    }
  }
  std::vector<std::size_t> stuck;
  for (std::size_t i = 0; i < hold.pieces.size(); ++i)
    if (aboard.has(i) && stops[i] == stop) stuck.push_back(i);
  for (const std::size_t i : stuck) {
    int in_way = aboard.on_top(i);
    if (in_way < 0) aboard.free_way(i, in_way);
    const std::string& code = hold.pieces[i].code;
    const Sentence at = stop_words(hold, stop);
    faults.add(code, in_way < 0 ? said("{} cannot come off at {}: the vehicle leaves it no way to a door.", code, at)
                                : said("{} cannot come off at {}: {} is in the way.", code, at, code_at(hold, in_way)));
  }
  for (const std::size_t i : stuck) aboard.set(i, false);
}

void load_up(const Stowage& hold, const std::vector<int>& stops, FaultList& faults) {
  WhoStands aboard(hold, stops);
  for (std::size_t i = 0; i < hold.pieces.size(); ++i) {
    const std::string& code = hold.pieces[i].code;
    int other = aboard.lacks_below(i);
    if (other >= 0)
      faults.add(code, said("{} is loaded before {}, which bears it.", code, code_at(hold, other)));
    else if (!aboard.free_way(i, other))
      faults.add(code, other < 0 ? said("{} cannot come in: the vehicle leaves it no way from a door.", code)
                                 : said("{} cannot come in: {} is in the way.", code, code_at(hold, other)));
    aboard.set(i, true);
  }
}

/// What stands higher than every rear door came in below its top: there must be room behind it to lift it.
void judge_lintel(const Stowage& hold, FaultList& faults) {
  double top = 0;
  for (const DoorOpening& door : hold.vehicle->doors)
    if (wall_of(door) == Wall::rear) top = std::max(top, door.height.si());
  if (top == 0) return;
  for (const Standing& s : hold.pieces) {
    const double behind = hold.vehicle->cargo->value.length.si() - s.solid.to[0];
    if (s.solid.to[2] > top + touching && behind < std::min(s.solid.to[0] - s.solid.from[0], arm) - touching)
      faults.add(s.code,
                 said("{} stands above the top of the rear door, without room behind it to lift it there.", s.code));
  }
}

}  // namespace

void judge_ways(const Stowage& hold, const Plan& plan, FaultList& faults) {
  if (!hold.vehicle->cargo) return;  // judge_places has said that nothing is inside
  std::vector<int> stops;
  for (const Standing& s : hold.pieces) stops.push_back(stop_of(hold, plan, s));
  WhoStands aboard(hold, stops);
  for (std::size_t i = 0; i < hold.pieces.size(); ++i) {
    const Standing& s = hold.pieces[i];
    if (!hold.stops.empty() && std::min(s.piece->stop, static_cast<int>(hold.stops.size())) != stops[i])
      faults.add(s.code, said("{} is drawn for another stop than {}.", s.code, stop_words(hold, stops[i])));
    aboard.set(i, true);
  }
  for (int stop = 0; stop <= static_cast<int>(hold.stops.size()); ++stop) unload(hold, stop, stops, aboard, faults);
  load_up(hold, stops, faults);
  judge_lintel(hold, faults);
}

}  // namespace dunnage
