// SPDX-License-Identifier: MIT
// [[structure]]: what stands up at a show and may fall over.
#include <algorithm>

#include "base/utf8.h"
#include "read/kit_sections.h"

namespace dunnage {
namespace {

const WordTable<StructureKind> kinds = {{"canopy", StructureKind::canopy},
                                        {"tower", StructureKind::tower},
                                        {"light-tree", StructureKind::light_tree},
                                        {"banner", StructureKind::banner},
                                        {"screen", StructureKind::screen}};
const WordTable<Roof> roofs = {{"flat", Roof::flat},
                               {"single-slope", Roof::single_slope},
                               {"two-slope", Roof::two_slope},
                               {"four-slope", Roof::four_slope}};

/// Two sides written with x between.
void read_sides(TableReader& section, std::string_view key, Maybe<Length>& length, Maybe<Length>& width) {
  const auto sides = section.lengths(key, 2, range::plan_side);
  if (!sides) return;
  length = Sourced<Length>{sides->value[0], sides->place};
  width = Sourced<Length>{sides->value[1], sides->place};
}

/// The quarters that a leg is named for: "NW" and "north-west" give "nw". Empty for any other name.
std::string quarters(std::string_view name) {
  const std::string words = utf8::lower(name);
  std::string out;
  for (std::string_view rest = words; !rest.empty();) {
    std::size_t taken = rest.front() == '-' || rest.front() == ' ' ? 1 : 0;
    for (const std::string_view quarter : {"north", "south", "east", "west"}) {
      if (taken > 0 || rest.front() != quarter.front()) continue;
      out += quarter.front();
      taken = rest.starts_with(quarter) ? quarter.size() : 1;
    }
    if (taken == 0) return {};
    rest.remove_prefix(taken);
  }
  return out;
}

/// A canopy's load is shared out over its legs, which is true of a roof that stands on all sides.
void check_legs(TableReader& section, const Structure& s) {
  if (s.kind != StructureKind::canopy || s.legs.empty()) return;
  const std::string hint = "name every leg it stands on: legs = [\"NW\", \"NE\", \"SE\", \"SW\"]";
  if (s.legs.size() < 3) {
    section.error(s.legs.front().place, "a canopy stands on three legs at least", hint);
    return;
  }
  for (const char edge : {'n', 's', 'e', 'w'})
    if (std::all_of(s.legs.begin(), s.legs.end(),
                    [&](const Text& leg) { return quarters(leg.value).find(edge) != std::string::npos; }))
      section.error(s.legs.front().place, "all legs stand on one edge of the canopy", hint);
}

void read_canopy(TableReader& section, Structure& s) {
  s.legs = section.texts("legs");
  check_legs(section, s);
  for (std::size_t i = 0; i < s.legs.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (s.legs[i].value == s.legs[j].value)
        section.diagnostics().error(s.legs[i].place, "the leg " + in_quotes(s.legs[i].value) + " is named twice",
                                    "give each leg a name of its own", s.legs[j].place, "named first here");
  s.roof = section.word("roof", roofs, Roof::flat);
  read_sides(section, "plan", s.plan_length, s.plan_width);
  s.eaves = section.quantity<Length>("eaves", range::height);
  s.wall = section.maybe_text("wall");
  s.peak = section.quantity<Length>("peak", range::height);
  if (s.eaves && s.peak && s.peak->value < s.eaves->value)
    section.error(s.peak->place, "the peak is below the eaves", "\"peak\" is the highest point of the roof");
  s.own_uplift = section.number("own_uplift", -5, 5);
  s.own_downforce = section.number("own_downforce", -5, 5);
}

void read_mast(TableReader& section, Structure& s) {
  s.mast_height = section.quantity<Length>("mast", range::height);
  s.feet = section.maybe_count("feet", 1, 12);
  s.foot_radius = section.quantity<Length>("foot_radius", range::plan_side);
  read_sides(section, "base", s.base_length, s.base_width);
  s.head_area = section.quantity<Area>("head_area", range::area);
  s.head_height = section.quantity<Length>("head_height", range::height);
  s.rated_load = section.quantity<Mass>("rated_load", range::weight_hold);
  s.rated_height = section.quantity<Length>("rated_height", range::height);
}

void read_strike(TableReader& entry, Structure& s) {
  if (const auto minutes = entry.number("minutes", 0, 1440))
    s.strike_minutes = Sourced<Duration>{minutes->value * unit::minute, minutes->place};
  entry.needs("minutes");
  if (!entry.has("minutes")) entry.error(entry.place(), "\"strike\" has no \"minutes\"", "add minutes = 6");
  const Sourced<int> people = entry.needed_count("people", 1, 100);
  if (people.typed()) s.strike_people = people;
}

}  // namespace

Structure read_structure(TableReader& section) {
  Structure s;
  s.place = section.place();
  s.code = section.code("code");
  s.name = section.text_or("name", s.code.value);
  const auto kind = section.word("kind", kinds);
  if (kind) s.kind = kind->value;
  section.needs("kind");
  if (!section.has("kind"))
    section.error(section.place(), section.section() + " has no \"kind\"",
                  "add kind = \"canopy\", \"tower\", \"light-tree\", \"banner\" or \"screen\"");
  section.entries("made_of", [&](TableReader& entry) {
    Part part;
    part.place = entry.place();
    part.code = entry.text("code");
    part.count = entry.count("count", 1, most_pieces, 1);
    if (!part.code.value.empty()) s.made_of.push_back(std::move(part));
  });
  read_canopy(section, s);
  read_mast(section, s);
  s.standing = section.quantity<Mass>("standing", range::case_mass);
  s.maker_gust = section.quantity<Speed>("maker_gust", range::wind);
  section.table("strike", "\"strike\"", [&](TableReader& entry) { read_strike(entry, s); });
  return s;
}

}  // namespace dunnage
