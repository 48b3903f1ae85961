// SPDX-License-Identifier: MIT
// Rule cold: wind chill by the mean wind of the forecast.
#include "check/cold_work.h"

#include "check/say.h"
#include "check/standing_site.h"
#include "formula/cold.h"

namespace dunnage {
namespace {

const Temperature mild = Temperature::celsius(10), frostbite = Temperature::celsius(-27);

void judge(Finding& f, const Forecast& forecast, UnitSystem units) {
  const Temperature air = forecast.temperature->value;
  // A gust for a mean makes it colder: the careful side.
  const Speed wind = forecast.wind ? forecast.wind->value : forecast.gust->value;
  const auto chill = wind_chill(air, wind);
  const Temperature feels = chill.value_or(air);
  f.measured = feels;
  f.limit = frostbite;
  f.outcome = feels > frostbite ? Outcome::within : Outcome::over;
  const std::string words = print(feels, units, Rounding::down).text();
  const Sentence felt = chill ? said("Feels like {} in the wind", words) : said("{}, hardly any wind", words);
  f.says = f.outcome == Outcome::over
               ? said("{}: {}. Stop work in the open, or in turns of minutes.", felt, frostbite_words(feels))
               : said("{}.", felt);
  f.says.then(said("Warm place, dry gloves, hot drinks; change over often."));
  if (!forecast.wind) assume(f, said("gust taken for the mean wind"));
  f.detail = WeatherDetail{
      feels,
      {},
      f.outcome == Outcome::over ? frostbite_words(feels) : said("cold"),
      {said("A warm place within reach, dry gloves, hot drinks."), said("Change over often at work that stands still."),
       said("Shivering that stops, slurred speech: an emergency call.")}};
}

}  // namespace

void check_cold(const Catalogue& catalogue, const Show& show, const Plan&, Findings& findings) {
  Finding f = begin_finding(RuleName::cold, {}, said("crew"), show.forecast ? show.forecast->place : show.show_place);
  f.sources = {said("Environment Canada and NWS, wind chill, 2001")};
  f.caution = said("For dry skin and people who are well. Wet clothes are colder than this.");
  const bool known = show.forecast && show.forecast->temperature;
  if (is_indoor(show)) {
    say_does_not_apply(f, setting_place(show), said("Indoors: no wind."));
  } else if (!known) {
    return;
  } else if (show.forecast->temperature->value > mild) {
    say_does_not_apply(f, show.forecast->temperature->place, said("Too warm for a wind chill."));
  } else if (!show.forecast->wind && !show.forecast->gust) {
    say_not_given(f, {said("the wind")}, said("Ask the weather office and type it."));
  } else {
    judge(f, *show.forecast, catalogue.kit.house.units);
  }
  findings.list.push_back(f);
}

}  // namespace dunnage
