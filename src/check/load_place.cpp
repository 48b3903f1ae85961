// SPDX-License-Identifier: MIT
#include "check/load_place.h"

#include <algorithm>
#include <cmath>

namespace dunnage {
namespace {

constexpr double side_rounding = 1.5e-3;  ///< a side drawn in whole millimetres, rounded up

bool near(double drawn, Length side) { return drawn > side.si() - touching && drawn < side.si() + side_rounding; }

/// Do the sides drawn belong to the stance that is written beside them?
bool stands_as_said(const Standing& s) {
  const Size& size = s.box->size->value;
  const double length = s.solid.to[0] - s.solid.from[0], width = s.solid.to[1] - s.solid.from[1],
               height = s.solid.to[2] - s.solid.from[2];
  switch (s.piece->stance) {
    case Stance::upright:
      return near(length, size.length) && near(width, size.width) && near(height, size.height);
    case Stance::turned:
      return near(length, size.width) && near(width, size.length) && near(height, size.height);
    case Stance::on_end:
    case Stance::on_side:
    case Stance::flat:
      break;
  }
  std::array<Length, 3> sides{size.length, size.width, size.height};
  std::sort(sides.begin(), sides.end());
  const std::size_t up = s.piece->stance == Stance::on_end ? 2 : s.piece->stance == Stance::on_side ? 1 : 0;
  const Length a = sides[up == 0 ? 1 : 0], b = sides[up == 2 ? 1 : 2];
  return near(height, sides[up]) && ((near(length, a) && near(width, b)) || (near(length, b) && near(width, a)));
}

bool as_typed(const Standing& s) { return s.piece->stance == Stance::upright || s.piece->stance == Stance::turned; }

/// Does the kit say that it may travel so?
bool may_lie(const Standing& s) {
  const Lying so = s.piece->stance == Stance::on_end    ? Lying::end
                   : s.piece->stance == Stance::on_side ? Lying::side
                                                        : Lying::flat;
  return std::find(s.box->lies.begin(), s.box->lies.end(), so) != s.box->lies.end();
}

}  // namespace

bool passes(const Standing& s, const DoorOpening& door) {
  const double width = door.width.si() + touching, height = door.height.si() + touching;
  std::array<double, 3> sides{};
  for (std::size_t i = 0; i < 3; ++i) sides[i] = s.solid.to[i] - s.solid.from[i];
  if (as_typed(s)) return std::min(sides[0], sides[1]) <= width && sides[2] <= height;
  std::sort(sides.begin(), sides.end());
  return sides[0] <= std::min(width, height) && sides[1] <= std::max(width, height);
}

Wall wall_of(const DoorOpening& door) {
  std::string words;
  for (const char c : door.where) words += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  const auto says = [&](const char* word) { return words.find(word) != std::string::npos; };
  if (says("rear") || says("back")) return Wall::rear;
  if (says("left")) return Wall::left;
  if (says("right")) return Wall::right;
  return Wall::elsewhere;
}

void judge_places(const Stowage& hold, FaultList& faults) {
  const Maybe<Size>& cargo = hold.vehicle->cargo;
  for (std::size_t i = 0; i < hold.pieces.size(); ++i) {
    const Standing& a = hold.pieces[i];
    const Solid& s = a.solid;
    const std::array<double, 3> room = {cargo ? cargo->value.length.si() : 0, cargo ? cargo->value.width.si() : 0,
                                        cargo ? cargo->value.height.si() : 0};
    for (std::size_t k = 0; k < 3; ++k) {
      if (s.from[k] > -touching && s.to[k] < room[k] + touching) continue;
      faults.add(a.code, said("{} reaches out of the cargo space.", a.code));
      break;
    }
    for (std::size_t j = i + 1; j < hold.pieces.size(); ++j)
      if (overlap(s, hold.pieces[j].solid))
        faults.add(a.code, said("{} and {} are drawn in one place.", a.code, hold.pieces[j].code));
    for (std::size_t j = 0; j < hold.blocks.size(); ++j)
      if (overlap(s, hold.blocks[j]))
        faults.add(a.code, said("{} is drawn in the {}.", a.code, hold.vehicle->blocks[j].what));
  }
}

void judge_stances(const Stowage& hold, FaultList& faults) {
  for (const Standing& s : hold.pieces) {
    if (!s.box->size) {
      faults.add(s.code, said("{} is drawn, and nobody typed its size.", s.code));
      continue;
    }
    if (!stands_as_said(s)) faults.add(s.code, said("{} is drawn with sides that it does not have.", s.code));
    if (!as_typed(s) && has_mark(*s.box, Mark::this_way_up))
      faults.add(s.code, said("{} lies, and is marked this way up.", s.code));
    if (!as_typed(s) && !may_lie(s)) faults.add(s.code, said("{} lies as its case does not say that it may.", s.code));
    const auto& doors = hold.vehicle->doors;
    if (!doors.empty() && std::none_of(doors.begin(), doors.end(), [&](const DoorOpening& d) { return passes(s, d); }))
      faults.add(s.code, said("{} goes through no door as it stands.", s.code));
  }
}

}  // namespace dunnage
