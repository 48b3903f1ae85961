// SPDX-License-Identifier: MIT
// What people hear and walk over: [[noise]], [[way]].
#include "read/show_sections.h"

namespace dunnage {

void read_people_sections(TableReader& top, Show& show) {
  top.tables("noise", "[[noise]]", [&](TableReader& section) {
    Heard heard;
    heard.place = section.place();
    heard.who = section.text("who");
    heard.level = section.quantity<Sound>("level", range::sound);
    heard.time = section.quantity<Duration>("hours", range::minutes);
    if (!heard.who.value.empty()) show.heard.push_back(std::move(heard));
  });
  top.tables("way", "[[way]]", [&](TableReader& section) {
    Passage way;
    way.place = section.place();
    way.what = section.text("what");
    way.rise = section.quantity<Length>("rise", range::height);
    way.ramp = section.quantity<Length>("ramp", range::run_length);
    way.width = section.quantity<Length>("width", range::plan_side);
    if (!way.what.value.empty()) show.ways.push_back(std::move(way));
  });
}

}  // namespace dunnage
