// SPDX-License-Identifier: MIT
// [[case]] and [[unit]].
#include <algorithm>

#include "read/conductor_key.h"
#include "read/kit_sections.h"

namespace dunnage {
namespace {

const WordTable<Form> forms = {
    {"trunk", Form::trunk}, {"tub", Form::tub}, {"bag", Form::bag}, {"box", Form::box}, {"loose", Form::loose}};
const WordTable<Hold> hold_words = {{"good", Hold::good}, {"fair", Hold::fair}, {"poor", Hold::poor}};
const WordTable<Mark> mark_words = {{"this-way-up", Mark::this_way_up},
                                    {"fragile", Mark::fragile},
                                    {"keep-dry", Mark::keep_dry},
                                    {"keep-cool", Mark::keep_cool},
                                    {"no-hand-truck", Mark::no_hand_truck},
                                    {"no-stack", Mark::no_stack},
                                    {"heavy", Mark::heavy}};

const WordTable<Lying> lying_words = {{"end", Lying::end}, {"side", Lying::side}, {"flat", Lying::flat}};

Content read_content(TableReader& entry) {
  Content content;
  content.place = entry.place();
  content.item = entry.text("item");
  content.count = entry.needed_count("count", 1, most_pieces).value;
  if (const auto left = entry.measured("left", {&range::distance, &range::water})) {
    if (left->value.range == &range::water)
      content.left_volume = Sourced<Volume>{Volume::from_si(left->value.si), left->place};
    else
      content.left = Sourced<Length>{Length::from_si(left->value.si), left->place};
  }
  return content;
}

void read_what_it_is(TableReader& section, Case& box) {
  box.code = section.code("code");
  box.name = section.text("name");
  box.names = section.texts_by_key("names");
  box.form = section.word("form", forms, Form::box);
  section.needs("form");
  if (!section.has("form"))
    section.error(section.place(), section.section() + " has no \"form\"",
                  "add form = \"trunk\", \"tub\", \"bag\", \"box\" or \"loose\"");
  box.looks = section.text_or("looks").value;
  box.count = section.count("count", 1, most_pieces, 1);
  box.contents_on_label = section.flag("contents_on_label", true);
  box.revision = section.text_or("revision").value;
  box.inspect_by = section.date("inspect_by");
}

void read_where_it_is(TableReader& section, Case& box) {
  const Text home = section.text_or("home"), spot = section.text_or("place"), vehicle = section.text_or("vehicle");
  box.home = home.value;
  box.home_place = home.place;
  box.place_word = spot.value;
  box.place_word_place = spot.place;
  box.vehicle = vehicle.value;
  box.vehicle_place = vehicle.place;
}

void read_body(TableReader& section, Case& box) {
  box.size = section.size("size", range::case_side);
  box.empty = section.quantity<Mass>("empty", range::case_mass);
  box.weighed = section.quantity<Mass>("weighed", range::case_mass);
  box.grips = section.count("grips", 0, 12, 0);
  if (const auto hold = section.word("hold", hold_words)) {
    box.hold = hold->value;
    box.hold_typed = true;
  }
  box.grip_height = section.quantity<Length>("grip_height", range::height);
  box.wheels = section.flag("wheels", false);
  box.marks = section.words("marks", mark_words);
  box.stack = section.quantity<Mass>("stack", range::mass_on_top);
  box.stack_count = section.maybe_count("stack_count", 0, most_stacked);
  box.lies = section.words("lies", lying_words);
  if (!box.lies.empty() && std::find(box.marks.begin(), box.marks.end(), Mark::this_way_up) != box.marks.end())
    section.error(section.place_of_value("lies"), "a case marked \"this-way-up\" lies on no other side",
                  "take away the mark, or this key");
  box.travels = section.quantity<Mass>("travels", range::case_mass);
  box.filled = section.quantity<Mass>("filled", range::case_mass);
}

void read_what_it_does(TableReader& section, Case& box) {
  section.entries("holds", [&](TableReader& entry) {
    Content content = read_content(entry);
    if (!content.item.value.empty()) box.holds.push_back(std::move(content));
  });
  box.serves = section.texts("serves");
  box.rating = section.quantity<Mass>("rating", range::weight_hold);
  box.rated_height = section.quantity<Length>("rated_height", range::height);
  box.draws = section.quantity<Power>("draws", range::power);
  box.input_level = section.quantity<Line>("input_level", range::level);
  box.length = section.quantity<Length>("length", range::piece_length);
  box.conductor = read_conductor(section);
  box.carries = section.quantity<Current>("carries", range::current);
  box.wind_area = section.quantity<Area>("wind_area", range::area);
  box.fader_pitch = section.quantity<Paper>("fader_pitch", range::fader_pitch);
  box.fader_bank = section.maybe_count("fader_bank", 1, most_faders);
}

}  // namespace

Case read_case(TableReader& section) {
  Case box;
  box.place = section.place();
  read_what_it_is(section, box);
  read_where_it_is(section, box);
  read_body(section, box);
  read_what_it_does(section, box);
  box.goes = read_goes(section);
  box.per = read_per(section);
  box.needs = read_needs(section);
  box.spare_for = section.maybe_text("spare_for");
  box.spare_each = section.count("spare_each", 1, most_pieces, 0);
  if (box.spare_each > 0 && !box.spare_for)
    section.error(section.place_of_value("spare_each"), "\"spare_each\" stands without \"spare_for\"",
                  "add spare_for = \"...\": what it is a spare for");
  return box;
}

UnitChange read_unit_change(TableReader& section) {
  UnitChange change;
  change.place = section.place();
  change.code = section.text("code");
  change.out_of_service = section.maybe_text("out_of_service");
  change.weighed = section.quantity<Mass>("weighed", range::case_mass);
  change.home = section.maybe_text("home");
  return change;
}

}  // namespace dunnage
