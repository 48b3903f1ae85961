// SPDX-License-Identifier: MIT
// Rule heat: heat index in the sun, or a reading of wet-bulb globe temperature, and what that asks.
#include "check/heat_work.h"

#include <array>
#include <cmath>

#include "check/say.h"
#include "check/standing_site.h"
#include "formula/heat.h"
#include "formula/wbgt.h"

namespace dunnage {
namespace {

const Temperature coolest = Temperature::fahrenheit(68), hottest = Temperature::fahrenheit(112);
const Temperature danger = Temperature::fahrenheit(103);
// Triggers of the OSHA proposed rule of 2024, not final when read.
const Temperature first_trigger = Temperature::fahrenheit(80), second_trigger = Temperature::fahrenheit(90);

std::string words(Temperature t, UnitSystem units) { return print(t, units, Rounding::up).text(); }

std::vector<Sentence> measures_at(Temperature feels) {
  std::vector<Sentence> out;
  if (feels < first_trigger) return out;
  out.push_back(said("Water within reach: a cup of 8 oz (a quarter litre) each 20 minutes."));
  out.push_back(said("Shade within reach; new people a fifth of the day first, a fifth more each day."));
  if (feels >= second_trigger) out.push_back(said("Rest of 15 minutes in the shade each 2 hours, or more."));
  out.push_back(said("Confused, stumbling or fainting: an emergency call; cool them at once."));
  return out;
}

/// The largest share of each hour that people not used to heat may work moderately.
Sentence work_words(Temperature wbgt) {
  struct Share {
    double share;
    Sentence words;
  };
  const std::array<Share, 3> shares{{{0.74, said("at most three quarters of each hour")},
                                     {0.49, said("at most half of each hour")},
                                     {0.24, said("at most a quarter of each hour")}}};
  for (const Share& s : shares)
    if (const auto limit = screening_limit(WorkLoad::moderate, s.share); limit && wbgt <= limit->not_used_to_heat)
      return s.words;
  return said("not at all");
}

void judge_reading(Finding& f, Temperature wbgt, UnitSystem units) {
  const Temperature limit = screening_limit(WorkLoad::moderate, 1)->not_used_to_heat;
  f.sources = {as_is("OSHA Technical Manual III:4")};
  f.measured = wbgt;
  f.limit = limit;
  f.outcome = wbgt <= limit ? Outcome::within : Outcome::over;
  f.says = said("WBGT reading {}: people not used to heat may work moderately {}.", words(wbgt, units),
                f.outcome == Outcome::within ? said("all of the hour") : work_words(wbgt));
  f.detail = WeatherDetail{wbgt, wbgt, as_is("WBGT"), measures_at(second_trigger)};
}

void judge_index(Finding& f, const Forecast& forecast, UnitSystem units) {
  const Temperature air = forecast.temperature->value;
  f.limit = danger;
  if (air > hottest) {
    f.outcome = Outcome::over;
    f.measured = air;
    f.says =
        said("{} is beyond the heat index: extreme danger. Stop, or move the work to cooler hours.", words(air, units));
    f.detail = WeatherDetail{air, air, said("extreme danger"), measures_at(air)};
    return;
  }
  const Temperature shade = *heat_index(air, forecast.humidity->value);
  const Temperature sun = Temperature::from_si(shade.si() + full_sun_adds.si());
  f.measured = sun;
  f.outcome = sun < danger ? Outcome::within : Outcome::over;
  const Sentence band = name(heat_band(sun));
  f.says = said("Feels like {} in the shade, up to {} in full sun: {}.", words(shade, units), words(sun, units), band);
  if (f.outcome == Outcome::over) f.says.then(said("Move the work to cooler hours, or stop."));
  f.detail = WeatherDetail{shade, sun, band, measures_at(sun)};
}

}  // namespace

void check_heat(const Catalogue& catalogue, const Show& show, const Plan&, Findings& findings) {
  Finding f = begin_finding(RuleName::heat, {}, said("crew"), show.forecast ? show.forecast->place : show.show_place);
  f.sources = {as_is("NWS SR 90-23"), said("OSHA proposed rule of 2024")};
  f.caution = said("A forecast is not a reading on site. Heavy clothes and heavy work are hotter than this.");
  const UnitSystem units = catalogue.kit.house.units;
  const auto say = [&] {
    if (is_indoor(show))
      return say_does_not_apply(f, setting_place(show), said("Indoors: the forecast is not the room's."));
    const Forecast forecast = show.forecast.value_or(Forecast{});
    if (forecast.wbgt) return judge_reading(f, forecast.wbgt->value, units);
    if (!forecast.temperature)
      return say_not_given(f, {said("the temperature, so neither heat, cold nor water was worked out")},
                           said("Ask the weather office and type it."));
    if (forecast.temperature->value < coolest)
      return say_does_not_apply(f, forecast.temperature->place, said("Too cool for a heat index."));
    if (!forecast.humidity)
      return say_not_given(f, {said("the humidity")}, said("Ask the weather office and type it."));
    judge_index(f, forecast, units);
  };
  say();
  findings.list.push_back(f);
}

}  // namespace dunnage
