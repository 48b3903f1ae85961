// SPDX-License-Identifier: MIT
// [show]: facts that rules ask for. What is absent stays unknown.
#include "read/show_sections.h"

namespace dunnage {

void read_show_facts(TableReader& section, Show& show) {
  show.show_place = section.place();
  show.title = section.text("title");
  show.date = section.date("date");
  section.needs("date");
  if (!section.has("date"))
    section.error(section.place(), "[show] has no \"date\"", "add date = 2027-06-19: year, month, day, without quotes");
  show.travel_days = section.count("travel_days", 0, 60, 0);
  show.preparation_days = section.count("preparation_days", 0, 60, 0);
  if (const auto setting = section.word<std::string>("setting", {{"indoor", "indoor"}, {"outdoor", "outdoor"}}))
    show.setting = *setting;
  show.floor = section.maybe_text("floor");
  show.after_dark = section.maybe_flag("after_dark");
  show.crew = section.maybe_count("crew", 0, 1000);
  show.volunteers = section.maybe_count("volunteers", 0, 10000);
  show.audience = section.maybe_count("audience", 0, 1000000);
  show.hours = section.quantity<Duration>("hours", range::minutes);
  show.console = section.maybe_text("console");
  show.fader_pitch = section.quantity<Paper>("fader_pitch", range::fader_pitch);
  show.fader_bank = section.maybe_count("fader_bank", 1, most_faders);
  show.with = section.texts("with");
  show.input_order =
      section.word<std::string>("input_order", {{"channel", "channel"}, {"performer", "performer"}}, "channel");
  show.revision = section.maybe_text("revision");
  show.stop_person = section.maybe_text("stop_person");
}

}  // namespace dunnage
