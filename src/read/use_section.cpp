// SPDX-License-Identifier: MIT
// [[use]]: a structure standing somewhere, what holds it down and what it holds up.
#include "read/show_sections.h"

namespace dunnage {
namespace {

/// at = ["0 in", "-20 in"]: across and along, from the middle of the base.
void read_spot(TableReader& entry, BallastLine& line) {
  const auto spot = entry.quantities_or_one("at", range::ground_offset);
  if (!entry.has("at")) return;
  if (spot.size() == 2)
    line.at = std::pair(Length::from_si(spot[0].value), Length::from_si(spot[1].value));
  else
    entry.error(entry.place_of_value("at"), "\"at\" must be two lengths from the middle of the base",
                "write at = [\"0 in\", \"-20 in\"]");
}

void read_leg_names(TableReader& entry, BallastLine& line) {
  const bool one_word = entry.is_text("legs");
  line.legs = entry.texts_or_one("legs");
  if (one_word && line.legs.size() == 1 && line.legs[0].value == "each") {
    line.each_leg = true;
    line.legs.clear();
  }
}

BallastLine read_stakes(TableReader& entry) {
  BallastLine line;
  line.place = entry.place();
  read_leg_names(entry, line);
  if (!entry.has("legs"))
    entry.error(entry.place(), "an entry of \"stakes\" has no \"legs\"",
                "write legs = \"each\" or legs = [\"NW\", \"NE\"]");
  line.count = entry.count("count", 1, most_count, 1);
  return line;
}

BallastLine read_ballast(TableReader& entry) {
  BallastLine line;
  line.place = entry.place();
  read_leg_names(entry, line);
  read_spot(entry, line);
  if (entry.has("legs") == entry.has("at"))
    entry.error(entry.place(), "an entry of \"ballast\" needs either \"legs\" or \"at\"",
                "write legs = \"each\", legs = [\"NW\", \"NE\"] or at = [\"0 in\", \"-20 in\"]");
  line.code = entry.text("code");
  line.count = entry.count("count", 1, most_count, 1);
  return line;
}

void read_held_up(TableReader& section, Use& use) {
  section.entries("carries", [&](TableReader& entry) {
    Carried carried;
    carried.place = entry.place();
    carried.code = entry.text("code");
    carried.count = entry.count("count", 1, most_count, 1);
    carried.at = entry.quantity<Length>("at", range::height);
    carried.area = entry.quantity<Area>("area", range::area);
    carried.mass = entry.quantity<Mass>("mass", range::weight_hold);
    if (!carried.code.value.empty()) use.carries.push_back(std::move(carried));
  });
  section.entries("hung", [&](TableReader& entry) {
    Hung hung;
    hung.place = entry.place();
    hung.what = entry.text("what");
    hung.area = entry.quantity<Area>("area", range::area);
    hung.at = entry.quantity<Length>("at", range::height);
    hung.mass = entry.quantity<Mass>("mass", range::weight_hold);
    use.hung.push_back(std::move(hung));
  });
}

}  // namespace

void read_use_sections(TableReader& top, Show& show) {
  top.tables("use", "[[use]]", [&](TableReader& section) {
    Use use;
    use.place = section.place();
    use.structure = section.text("structure");
    use.as = section.text("as");
    const Text at = section.text_or("at");
    use.at_place = at.value;
    use.at_place_typed = at.place;
    use.walls = section.texts("walls");
    use.under = section.word<Under>(
        "under", {{"empty", Under::empty}, {"half full", Under::half_full}, {"full", Under::full}}, Under::not_stated);
    use.ground = section.maybe_text("ground");
    section.entries("ballast", [&](TableReader& entry) {
      BallastLine line = read_ballast(entry);
      if (!line.code.value.empty()) use.ballast.push_back(std::move(line));
    });
    section.entries("stakes", [&](TableReader& entry) { use.stakes.push_back(read_stakes(entry)); });
    read_held_up(section, use);
    use.cable = section.quantity<Mass>("cable", range::weight_hold);
    if (!use.structure.value.empty()) show.uses.push_back(std::move(use));
  });
}

}  // namespace dunnage
