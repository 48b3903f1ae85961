// SPDX-License-Identifier: MIT
// Rule water: what the crew drinks against what goes.
#include "check/crew_water.h"

#include <algorithm>

#include "base/slack.h"
#include "check/say.h"
#include "check/standing_site.h"
#include "formula/heat.h"
#include "formula/water.h"

namespace dunnage {
namespace {

constexpr const char* word = "drinking-water";

/// Below this, in full sun, nothing is asked. Source: OSHA proposed rule of 2024, first trigger (80 F).
bool warm(const Forecast& forecast) {
  const Temperature air = forecast.temperature->value;
  const double humidity = forecast.humidity ? forecast.humidity->value : 100;
  const auto shade = heat_index(air, humidity);
  if (!shade) return air > Temperature::fahrenheit(100);
  return !falls_short(shade->si() + full_sun_adds.si(), Temperature::fahrenheit(80).si());
}

Volume going_along(const Catalogue& c, const Plan& plan) {
  Volume sum;
  for (int unit : plan.pulled())
    for (const Content& content : c.case_at(unit).holds) {
      const Item* item = c.item(content.item.value);
      if (!item || !item->each_volume) continue;
      const auto is_word = [](const Text& one) { return one.value == word; };
      if (std::none_of(item->serves.begin(), item->serves.end(), is_word)) continue;
      sum += content.left_volume ? content.left_volume->value : item->each_volume->value * content.count;
    }
  return sum;
}

/// What the site has to drink; without an amount somewhere it has as much as is wanted.
struct SiteWater {
  Volume measured;
  const SiteHas* tap = nullptr;  ///< the first without an amount
};

SiteWater site_water(const Show& show) {
  SiteWater water;
  for (const SiteHas& has : show.site.has) {
    if (has.what.value != word) continue;
    if (has.volume)
      water.measured += has.volume->value;
    else if (!water.tap)
      water.tap = &has;
  }
  return water;
}

void judge(Finding& f, const Catalogue& c, const Show& show, const Plan& plan) {
  const UnitSystem units = c.kit.house.units;
  const int people = (show.crew ? show.crew->value : 0) + (show.volunteers ? show.volunteers->value : 0);
  const SiteWater site = site_water(show);
  const Volume have = going_along(c, plan) + site.measured;
  const Volume least = least_water(people, show.hours->value);
  f.measured = have;
  f.limit = least;
  f.says = said("{} people for {} h ask {}, {} better; {} goes.", people, plain(show.hours->value / unit::hour, 1),
                print(least, units, Rounding::up).text(),
                print(good_water(people, show.hours->value), units, Rounding::up).text(),
                print(have, units, Rounding::down).text());
  if (site.measured > Volume{})
    f.says.then(said("{} of it is the site's.", print(site.measured, units, Rounding::down).text()));
  if (site.tap)
    f.says.then(site.tap->from.empty() ? said("The site has more.") : said("The site has more: {}.", site.tap->from));
  f.outcome = site.tap || !falls_short(have, least) ? Outcome::within : Outcome::over;
  if (f.outcome == Outcome::over)
    f.says.then(said("Bring {} more, or find a tap.", print(least - have, units, Rounding::up).text()));
  if (!show.volunteers) assume(f, said("volunteers not stated: none counted"));
}

}  // namespace

void check_water(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  Finding f = begin_finding(RuleName::water, {}, said("crew"), show.forecast ? show.forecast->place : show.show_place);
  f.sources = {said("OSHA/NIOSH, 8 oz each 20 minutes")};
  f.caution = said("For crew and volunteers, not for the audience. Nobody drinks more than 48 oz (1.4 l) an hour.");
  if (is_indoor(show)) {
    say_does_not_apply(f, setting_place(show), said("Indoors: taps are the building's."));
  } else if (!show.forecast || !show.forecast->temperature) {
    return;
  } else if (!warm(*show.forecast)) {
    say_does_not_apply(f, show.forecast->temperature->place, said("Not warm enough to ask for more than usual."));
  } else if (!show.crew || !show.hours) {
    say_not_given(f, {said("crew and hours")}, said("Type them under [show]."));
  } else {
    judge(f, catalogue, show, plan);
  }
  findings.list.push_back(f);
}

}  // namespace dunnage
