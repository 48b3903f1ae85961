// SPDX-License-Identifier: MIT
// [[item]].
#include "read/conductor_key.h"
#include "read/kit_sections.h"

namespace dunnage {

Item read_item(TableReader& section) {
  Item item;
  item.place = section.place();
  item.code = section.code("code");
  item.name = section.text("name");
  item.names = section.texts_by_key("names");
  item.mass = section.quantity<Mass>("mass", range::piece_mass);
  item.serves = section.texts("serves");
  item.length = section.quantity<Length>("length", range::piece_length);
  item.joins = section.maybe_text("joins");
  if (const auto each = section.measured("each", {&range::run_length, &range::water})) {
    if (each->value.range == &range::water)
      item.each_volume = Sourced<Volume>{Volume::from_si(each->value.si), each->place};
    else
      item.each = Sourced<Length>{Length::from_si(each->value.si), each->place};
  }
  item.used_up = section.flag("used_up", false);
  item.draws = section.quantity<Power>("draws", range::power);
  item.input_level = section.quantity<Line>("input_level", range::level);
  item.rating = section.quantity<Mass>("rating", range::weight_hold);
  item.phantom = section.flag("phantom", false);
  item.conductor = read_conductor(section);
  item.carries = section.quantity<Current>("carries", range::current);
  item.from_frequency = section.quantity<Frequency>("from", range::frequency);
  item.to_frequency = section.quantity<Frequency>("to", range::frequency);
  if (item.from_frequency && item.to_frequency && item.from_frequency->value > item.to_frequency->value)
    section.error(item.to_frequency->place, "\"to\" is below \"from\"", "write the lower frequency under \"from\"");
  return item;
}

}  // namespace dunnage
