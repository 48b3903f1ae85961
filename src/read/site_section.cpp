// SPDX-License-Identifier: MIT
// Where and when: [site], [[time]], [forecast], [[place]], [[team]].
#include "read/show_sections.h"

namespace dunnage {
namespace {

Site read_site(TableReader& section) {
  Site site;
  site.place = section.place();
  site.address = section.text_or("address").value;
  site.gate = section.text_or("gate").value;
  site.emergency_address = section.text_or("emergency_address").value;
  site.hospital = section.text_or("hospital").value;
  site.radio_channel = section.text_or("radio_channel").value;
  site.curfew = section.text_or("curfew").value;
  site.permits = section.texts("permits");
  section.entries("contacts", [&](TableReader& entry) {
    site.contacts.push_back({entry.text("role"), entry.text("name"), entry.text_or("phone")});
  });
  section.entries("has", [&](TableReader& entry) {
    SiteHas has;
    has.place = entry.place();
    has.what = entry.text("what");
    if (const auto count = entry.maybe_count("count", 1, 100000)) has.count = count->value;
    if (const auto amount = entry.measured("amount", {&range::run_length, &range::water})) {
      if (amount->value.range == &range::water)
        has.volume = Sourced<Volume>{Volume::from_si(amount->value.si), amount->place};
      else
        has.length = Sourced<Length>{Length::from_si(amount->value.si), amount->place};
    }
    has.from = entry.text_or("from").value;
    if (!has.what.value.empty()) site.has.push_back(std::move(has));
  });
  site.altitude = section.quantity<Length>("altitude", range::distance);
  site.ground = section.maybe_text("ground");
  site.clear = section.quantity<Duration>("clear", range::minutes);
  site.shelter = section.maybe_text("shelter");
  site.extinguisher_walk = section.quantity<Length>("extinguisher_walk", range::distance);
  return site;
}

/// "14:30": two digits, a colon, two digits, on the clock.
bool is_clock_time(std::string_view text) {
  const auto digit = [&](std::size_t i) { return text[i] >= '0' && text[i] <= '9'; };
  if (text.size() != 5 || text[2] != ':' || !digit(0) || !digit(1) || !digit(3) || !digit(4)) return false;
  return text.substr(0, 2) < "24" && text.substr(3) < "60";
}

ClockTime read_time(TableReader& section) {
  ClockTime time;
  time.place = section.place();
  const Text at = section.text("at");
  if (!at.value.empty() && !is_clock_time(at.value))
    section.error(at.place, in_quotes(at.value) + " is not a time", "write hours and minutes: at = \"14:30\"");
  time.at = at.value;
  time.what = section.text("what");
  return time;
}

Forecast read_forecast(TableReader& section) {
  Forecast f;
  f.place = section.place();
  f.wind = section.quantity<Speed>("wind", range::wind);
  f.gust = section.quantity<Speed>("gust", range::wind);
  if (f.wind && f.gust && f.gust->value < f.wind->value)
    section.error(f.gust->place, "the gust is below the wind", "a gust is the strongest of the wind: check both");
  f.temperature = section.quantity<Temperature>("temperature", range::temperature);
  f.humidity = section.number("humidity", 0, 100);
  f.rain = section.number("rain", 0, 100);
  f.wbgt = section.quantity<Temperature>("wbgt", range::temperature);
  f.storm = section.quantity<Speed>("storm", range::wind);
  f.issued_by = section.text_or("issued_by").value;
  f.issued_at = section.text_or("issued_at").value;
  return f;
}

Team read_team(TableReader& section) {
  Team team;
  team.place = section.place();
  team.name = section.text("name");
  team.homes = section.texts_or_one("home");
  team.places = section.texts_or_one("place");
  team.vehicles = section.texts_or_one("vehicle");
  if (!section.has("home") && !section.has("place") && !section.has("vehicle"))
    section.error(section.place(), "[[team]] does not say what the team pulls",
                  "add home = \"...\", place = \"...\" or vehicle = \"...\"");
  return team;
}

}  // namespace

void read_site_sections(TableReader& top, Show& show) {
  top.table("site", "[site]", [&](TableReader& section) { show.site = read_site(section); });
  top.tables("time", "[[time]]", [&](TableReader& section) { show.times.push_back(read_time(section)); });
  top.table("forecast", "[forecast]", [&](TableReader& section) { show.forecast = read_forecast(section); });
  top.tables("place", "[[place]]", [&](TableReader& section) {
    ShowPlace spot;
    spot.place = section.place();
    spot.code = section.code("code");
    spot.name = section.text_or("name").value;
    spot.takes = section.texts("takes");
    if (!spot.code.value.empty()) show.places.push_back(std::move(spot));
  });
  top.tables("team", "[[team]]", [&](TableReader& section) { show.teams.push_back(read_team(section)); });
}

}  // namespace dunnage
