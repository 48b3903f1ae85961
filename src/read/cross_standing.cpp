// SPDX-License-Identifier: MIT
// A unit stands in one place: on one leg, in one use, taken by one place and by one vehicle.
#include <map>

#include "base/nearest.h"
#include "read/cross_rooms.h"

namespace dunnage {
namespace {

/// Who has claimed which unit, and where that was typed.
class Claims {
 public:
  explicit Claims(const References& refer) : refer_(refer) {}

  /// Claims one unit; told when another line has it.
  void claim(int unit, const Place& place, const std::string& what) {
    const auto [at, fresh] = first_.emplace(unit, place);
    if (fresh) return;
    const std::string& code = refer_.catalogue().units[static_cast<std::size_t>(unit)].code;
    refer_.diagnostics().error(place, in_quotes(code) + " " + what + " twice",
                               "a unit stands in one place: keep one of the two", at->second, "it is first named here");
  }

 private:
  const References& refer_;
  std::map<int, Place> first_;
};

/// The one unit that a code names, when it names one alone; -1 for a case of several.
int sole_unit(const References& refer, const std::string& code) {
  const std::vector<int> units = refer.units_of(code);
  return units.size() == 1 ? units.front() : -1;
}

/// A unit named by its own code may be asked for once only.
void check_once(const References& refer, const Text& code, std::size_t times) {
  if (times <= 1) return;
  const int unit = sole_unit(refer, code.value);
  if (unit < 0) return;
  const Case& box = refer.catalogue().case_at(unit);
  refer.diagnostics().error(code.place,
                            in_quotes(code.value) + " is one unit and is asked for " + std::to_string(times) + " times",
                            box.count > 1 ? "name the case, " + in_quotes(box.code.value) + ", to take any of its units"
                                          : "name other units for the other places");
}

void check_legs(const References& refer, const Use& use, const BallastLine& line) {
  const Structure* structure = refer.catalogue().structure(use.structure.value);
  if (!structure) return;
  std::vector<std::string> legs;
  for (const Text& leg : structure->legs) legs.push_back(leg.value);
  if ((line.each_leg || !line.legs.empty()) && legs.empty()) {
    refer.diagnostics().error(line.place, "the structure " + in_quotes(structure->code.value) + " names no legs",
                              "add legs = [\"NW\", \"NE\", \"SE\", \"SW\"] to it, or place the weights with \"at\"",
                              structure->code.place, "the structure");
    return;
  }
  for (const Text& leg : line.legs)
    refer.one_of(leg, legs, in_quotes(leg.value) + " is not a leg of " + structure->code.value,
                 "its legs are: " + listed(legs) + "; for all of them write legs = \"each\"");
  for (std::size_t i = 0; i < line.legs.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (line.legs[i].value == line.legs[j].value)
        refer.diagnostics().error(line.legs[i].place, "the leg " + in_quotes(line.legs[i].value) + " is named twice",
                                  "raise \"count\" to put more on it", line.legs[j].place, "named first here");
}

void check_use(const References& refer, const Use& use, Claims& standing) {
  const Structure* structure =
      refer.structure(use.structure) ? refer.catalogue().structure(use.structure.value) : nullptr;
  for (const BallastLine& line : use.stakes) check_legs(refer, use, line);
  for (const BallastLine& line : use.ballast) {
    check_legs(refer, use, line);
    if (!refer.piece(line.code)) continue;
    std::size_t legs = line.at ? 1 : line.legs.size();
    if (line.each_leg && structure) legs = structure->legs.size();
    check_once(refer, line.code, legs * static_cast<std::size_t>(line.count));
    if (const int unit = sole_unit(refer, line.code.value); unit >= 0) standing.claim(unit, line.code.place, "stands");
  }
  for (const Carried& carried : use.carries) {
    if (!refer.word_or_unit(carried.code)) continue;
    check_once(refer, carried.code, static_cast<std::size_t>(carried.count));
    if (const int unit = sole_unit(refer, carried.code.value); unit >= 0)
      standing.claim(unit, carried.code.place, "stands");
  }
}

void claim_all(const References& refer, const std::vector<Text>& codes, Claims& claims) {
  for (const Text& code : codes) {
    if (!refer.piece(code)) continue;
    // One message a line is enough where a whole case is named again.
    Diagnostics& diagnostics = refer.diagnostics();
    const std::size_t before = diagnostics.errors();
    for (const int unit : refer.units_of(code.value)) {
      if (diagnostics.errors() > before) break;
      claims.claim(unit, code.place, "is taken");
    }
  }
}

}  // namespace

void check_standing(const References& refer, const Show& show) {
  Claims standing(refer), places(refer), loads(refer);
  for (const Use& use : show.uses) {
    check_use(refer, use, standing);
    refer.once_each(use.walls, "wall", "a side has one wall: name each side once");
  }
  for (const ShowPlace& spot : show.places) claim_all(refer, spot.takes, places);
  for (const Load& load : show.loads) claim_all(refer, load.takes, loads);
}

}  // namespace dunnage
