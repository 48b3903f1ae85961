// SPDX-License-Identifier: MIT
#include "plan/demands.h"

#include <algorithm>
#include <array>

#include "formula/heat.h"
#include "formula/water.h"
#include "plan/counts.h"

namespace dunnage {

namespace {

/// The words by which the show's own lines ask for cable and pads: common practice, no source.
constexpr const char* line_cable = "mic-cable";
constexpr const char* pad_word = "pad";
constexpr const char* water_word = "drinking-water";

struct Gatherer {
  std::vector<Demand> out;

  void ask(const std::string& what, int count, Sentence because, Place place, Maybe<Length> length = {}) {
    Demand d;
    d.what = what;
    d.count = count;
    d.because = std::move(because);
    d.place = place;
    d.length = length;
    out.push_back(std::move(d));
  }
  void ask(const Maybe<std::string>& what, int count, const Sentence& because) {
    if (what) ask(what->value, count, because, what->place);
  }
};

Sentence named(const Input& input) {
  const std::string who = input.performer.empty() ? input.source.value : input.performer + ", " + input.source.value;
  return said("input {} ({})", input.channel.value, who);
}

bool needs_pad(const Input& input, const Maybe<Line>& most) {
  return !input.pad && input.level && most && input.level->value > most->value;
}

/// The largest level that any console of the kind asked for takes: the least of them, so that none is overdriven.
Maybe<Line> console_level(const Catalogue& catalogue, const Show& show) {
  Maybe<Line> least;
  if (!show.console) return least;
  auto see = [&](const Maybe<Line>& level) {
    if (level && (!least || level->value < least->value)) least = level;
  };
  for (const int k : catalogue.cases_serving(show.console->value))
    see(catalogue.kit.cases[static_cast<std::size_t>(k)].input_level);
  for (const int i : catalogue.items_serving(show.console->value))
    see(catalogue.kit.items[static_cast<std::size_t>(i)].input_level);
  return least;
}

void ask_inputs(Gatherer& g, const Catalogue& catalogue, const Show& show) {
  const Maybe<Line> most = console_level(catalogue, show);
  for (const Input& input : show.inputs) {
    const Sentence why = named(input);
    g.ask(input.pickup, 1, why);
    g.ask(input.stand, 1, why);
    if (input.cable) g.ask(line_cable, 1, why, input.cable->place, input.cable);
    if (input.pad)
      g.ask(pad_word, 1, why, input.pad->place);
    else if (needs_pad(input, most)) {
      g.ask(pad_word, 1, why, input.level->place);
      g.out.back().reason = said("its level of {} dBu is more than the console takes ({} dBu)",
                                 plain(input.level->value.si(), 1), plain(most->value.si(), 1));
    }
  }
}

/// True where the demand typed at a place is served with an item that needs phantom power.
bool served_with_phantom(const Catalogue& catalogue, const Place& place, const std::vector<Demand>& demands) {
  return std::any_of(demands.begin(), demands.end(), [&](const Demand& demand) {
    return demand.place == place && std::any_of(demand.by.begin(), demand.by.end(), [&](const Demand::By& by) {
             return by.item >= 0 && catalogue.kit.items[static_cast<std::size_t>(by.item)].phantom;
           });
  });
}

void ask_mixes(Gatherer& g, const Show& show) {
  for (const Mix& mix : show.mixes) {
    const Sentence why = said("mix {} ({})", mix.output.value, mix.who);
    g.ask(mix.wedge, mix.count, why);
    g.ask(mix.pack, mix.count, why);
    g.ask(mix.speaker, mix.count, why);
    g.ask(mix.prop, mix.count, why);
    if (mix.cable) g.ask(line_cable, 1, why, mix.cable->place, mix.cable);
  }
}

/// A house that keeps tape by the floor it suits has a word "tape-FLOOR" for each.
bool knows_tape(const Catalogue& catalogue) {
  return std::any_of(catalogue.kit.items.begin(), catalogue.kit.items.end(), [](const Item& item) {
    return item.used_up && std::any_of(item.serves.begin(), item.serves.end(),
                                       [](const Text& word) { return word.value.rfind("tape-", 0) == 0; });
  });
}

/// What is laid over a run where it is crossed, and the tape that holds it down on each floor.
void ask_floor(Gatherer& g, const Catalogue& catalogue, const Run& run, const Crossing& over, const Sentence& why) {
  if (over.crossing && over.crossed_by) {
    Demand d;
    d.what = "cover-" + over.crossed_by->value;
    d.way = Way::laid;
    d.count = 1;
    d.length = over.crossing;
    d.bears = over.wheel;
    d.because = why;
    d.reason = over.crossed_by->value == "wheels" ? said("crossed by wheels") : said("crossed by feet");
    d.place = over.crossing->place;
    g.out.push_back(std::move(d));
  }
  const Maybe<Length>& length = over.length;
  if (!over.floor || !length || over.floor->value == "grass") return;  // nothing sticks to grass
  if (!catalogue.knows("tape-" + over.floor->value) && !knows_tape(catalogue)) return;
  Demand d;
  d.what = "tape-" + over.floor->value;
  d.way = Way::measured;
  d.unit = "m";
  d.count = static_cast<int>(steps_up(length->value * run.count / unit::metre));
  d.because = why;
  d.reason = said("over {}", over.floor->value);
  d.place = over.floor->place;
  g.out.push_back(std::move(d));
}

void ask_runs(Gatherer& g, const Catalogue& catalogue, const Show& show) {
  for (const Run& run : show.runs) {
    Maybe<Length> reach = run.length;
    if (!reach)
      if (const auto sum = length_of(run)) reach = Sourced<Length>{*sum, run.place};
    const Sentence why = said("the run from {} to {}", run.from, run.to);
    g.ask(run.cable.value, run.count, why, run.cable.place, reach);
    for (const Crossing& over : run.over) ask_floor(g, catalogue, run, over, why);
  }
}

/// From 80 F as it feels; above what the equation covers counts too, below it does not. Source: OSHA's proposed
/// rule of 2024, first trigger.
bool hot(const Forecast& forecast) {
  const Temperature air = forecast.temperature->value;
  if (!forecast.humidity) return !(air < Temperature::fahrenheit(80));
  if (const auto index = heat_index(air, forecast.humidity->value)) return !(*index < Temperature::fahrenheit(80));
  return Temperature::fahrenheit(100) < air;
}

/// Water in the heat, where the kit has any: nothing is published for the cool.
void ask_water(Gatherer& g, const Catalogue& catalogue, const Show& show) {
  if (!catalogue.knows(water_word) || !show.forecast || !show.forecast->temperature || !show.crew || !show.hours)
    return;
  if (!hot(*show.forecast)) return;
  const int people = show.crew->value + (show.volunteers ? show.volunteers->value : 0);
  Demand d;
  d.what = water_word;
  d.way = Way::measured;
  d.unit = "l";
  d.count = static_cast<int>(steps_up(good_water(people, show.hours->value) / unit::litre));
  d.because = said("the heat");
  d.reason = said("{} people, a quart an hour each", people);
  d.place = show.forecast->temperature->place;
  g.out.push_back(std::move(d));
}

void ask_walls(Gatherer& g, const Catalogue& catalogue, const Show& show) {
  for (const Use& use : show.uses) {
    const Structure* structure = catalogue.structure(use.structure.value);
    if (!structure || !structure->wall || use.walls.empty()) continue;
    const bool all = std::any_of(use.walls.begin(), use.walls.end(),
                                 [](const Text& wall) { return wall.value == "all" || wall.value == "each"; });
    g.ask(structure->wall->value, all ? 4 : static_cast<int>(use.walls.size()), use.as.value, use.walls.front().place);
    g.out.back().reason = said("its walls");
  }
}

/// Whole metres or litres that the site has.
int site_measure(const SiteHas& has) {
  if (has.volume) return static_cast<int>(steps_down(has.volume->value / unit::litre));
  return has.length ? static_cast<int>(steps_down(has.length->value / unit::metre)) : 0;
}

bool same_thing(const Catalogue& catalogue, const std::string& has, const std::string& wanted) {
  if (has == wanted) return true;
  const auto& items = catalogue.items_serving(wanted);
  const auto& cases = catalogue.cases_serving(wanted);
  return std::any_of(items.begin(), items.end(),
                     [&](int i) { return catalogue.kit.items[static_cast<std::size_t>(i)].code.value == has; }) ||
         std::any_of(cases.begin(), cases.end(),
                     [&](int i) { return catalogue.kit.cases[static_cast<std::size_t>(i)].code.value == has; });
}

}  // namespace

std::vector<Demand> demands_of(const Catalogue& catalogue, const Show& show) {
  Gatherer g;
  if (show.console) g.ask(show.console, 1, said("the show's console"));
  ask_inputs(g, catalogue, show);
  ask_mixes(g, show);
  ask_runs(g, catalogue, show);
  ask_walls(g, catalogue, show);
  ask_water(g, catalogue, show);
  for (const Want& want : show.wants) {
    g.ask(want.what.value, want.count, said("the show"), want.place, want.length);
    g.out.back().reason = want.because;
  }
  deal_site(catalogue, show, g.out);
  return std::move(g.out);
}

std::vector<InputNeeds> input_needs(const Catalogue& catalogue, const Show& show, const std::vector<Demand>& demands) {
  const Maybe<Line> most = console_level(catalogue, show);
  std::vector<InputNeeds> out;
  for (const Input& input : show.inputs) {
    InputNeeds needs;
    if (needs_pad(input, most)) needs.pad = (input.level->value - most->value) / unit::decibel_u;
    if (!input.phantom && input.pickup) needs.phantom = served_with_phantom(catalogue, input.pickup->place, demands);
    out.push_back(needs);
  }
  return out;
}

void deal_site(const Catalogue& catalogue, const Show& show, std::vector<Demand>& demands) {
  for (const SiteHas& has : show.site.has) {
    // Pieces lower what is asked for by the piece, metres and litres what is asked for by the measure.
    std::array<int, 2> left = {has.count, site_measure(has)};
    for (Demand& demand : demands) {
      if (!same_thing(catalogue, has.what.value, demand.what)) continue;
      int& rest = left[demand.way == Way::measured];
      const int dealt =
          has.enough() ? demand.count - demand.from_site : std::min(rest, demand.count - demand.from_site);
      demand.from_site += dealt;
      rest -= dealt;
    }
  }
}

}  // namespace dunnage
