// SPDX-License-Identifier: MIT
// Heat, cold, water and lightning.
#include <fmt/format.h>

#include "formula/cold.h"
#include "formula/heat.h"
#include "formula/lightning.h"
#include "formula/water.h"
#include "formula/wbgt.h"
#include "reckon/answers.h"
#include "reckon/figure_words.h"

namespace dunnage {

void answer_heat_index(const Inputs& in, Answer& out, Problems& problems) {
  const auto index = heat_index(in.get<Temperature>("temperature"), in.number("humidity", 0));
  if (!index) {
    problems.push_back("the equation holds from 68 F to 112 F (20 C to 44 C); hotter is extreme danger");
    return;
  }
  result(out, said(*index, in, Rounding::up));
  also(out, "band in the shade", name(heat_band(*index)).english());
  const Temperature sun = Temperature::kelvin(index->in_kelvin() + full_sun_adds.si());
  also(out, "in full sun, up to", said(sun, in, Rounding::up).text() + ", " + name(heat_band(sun)).english());
}

void answer_wind_chill(const Inputs& in, Answer& out, Problems& problems) {
  const auto chill = wind_chill(in.get<Temperature>("temperature"), in.get<Speed>("wind"));
  if (!chill) {
    problems.push_back("wind chill is defined up to 50 F (10 C) and above 3 mph (4.8 km/h)");
    return;
  }
  result(out, said(*chill, in, Rounding::down));
  also(out, "reading", frostbite_words(*chill).english());
}

void answer_wbgt(const Inputs& in, Answer& out, Problems& problems) {
  const auto wet = in.get<Temperature>("wet"), globe = in.get<Temperature>("globe");
  const Temperature wbgt =
      in.has("air") ? wbgt_outdoors(wet, globe, in.get<Temperature>("air")) : wbgt_indoors(wet, globe);
  result(out, said(wbgt, in, Rounding::up));
  also(out, "form", in.has("air") ? "with sun" : "without sun");
  if (!in.has("work")) return;
  const std::string work = in.word("work", "");
  const WorkLoad load = work == "light"      ? WorkLoad::light
                        : work == "moderate" ? WorkLoad::moderate
                        : work == "heavy"    ? WorkLoad::heavy
                                             : WorkLoad::very_heavy;
  const auto limit = screening_limit(load, in.number("share", 100) / 100);
  if (!limit) {
    problems.push_back("this work is not allowed for so large a share of the hour: give a smaller share");
    return;
  }
  const auto verdict = [&](Temperature most) {
    return said(most, in, Rounding::down).text() + (wbgt <= most ? ", within limit" : ", over limit: less work");
  };
  also(out, "limit, used to the heat", verdict(limit->used_to_heat));
  also(out, "limit, not used to it", verdict(limit->not_used_to_heat));
}

void answer_water(const Inputs& in, Answer& out, Problems&) {
  const int people = static_cast<int>(in.number("people", 1));
  const Duration time = in.get<Duration>("hours");
  result(out, said(good_water(people, time), in, Rounding::up));
  also(out, "least, a cup each 20 minutes", said(least_water(people, time), in, Rounding::up).text());
  also(out, "nobody drinks more than, an hour", said(most_water_an_hour, in, Rounding::down).text());
}

void answer_lightning(const Inputs& in, Answer& out, Problems& problems) {
  if (!in.has("count") && !(in.has("storm") && in.has("clear"))) {
    problems.push_back(
        "count, or storm with clear, is needed, for example count=\"20 s\" or storm=\"30 mph\" "
        "clear=\"15 min\"");
    return;
  }
  const auto miles = [&](Length length, Rounding way) {
    return in.system == UnitSystem::us ? said(length / unit::mile, 1, "mi", way)
                                       : said(length / unit::kilometre, 1, "km", way);
  };
  if (in.has("count")) {
    const Duration count = in.get<Duration>("count");
    result(out, miles(flash_distance(count), Rounding::down));
    also(out, "reading", count <= shelter_count ? "shelter now" : "watch it; be in shelter before it is near");
  }
  if (in.has("storm") && in.has("clear")) {
    const Said from = miles(clearing_distance(in.get<Speed>("storm"), in.get<Duration>("clear")), Rounding::up);
    if (in.has("count"))
      also(out, "begin to clear when it is within", from.text());
    else
      result(out, from);
  }
  also(out, "all in shelter before it is within", miles(shelter_distance, Rounding::up).text());
  also(out, "begin again", "30 min after the last thunder or flash within that distance");
}

}  // namespace dunnage
