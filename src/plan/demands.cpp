// SPDX-License-Identifier: MIT
#include "plan/demands.h"

#include <fmt/format.h>

#include <algorithm>

#include "plan/counts.h"

namespace dunnage {

namespace {

/// The words by which the show's own lines ask for cable and pads: common practice, no source.
constexpr const char* line_cable = "mic-cable";
constexpr const char* pad_word = "pad";

struct Gatherer {
  std::vector<Demand> out;

  void ask(const std::string& what, int count, std::string because, Place place, Maybe<Length> length = {}) {
    Demand d;
    d.what = what;
    d.count = count;
    d.because = std::move(because);
    d.place = place;
    d.length = length;
    out.push_back(std::move(d));
  }
  void ask(const Maybe<std::string>& what, int count, const std::string& because) {
    if (what) ask(what->value, count, because, what->place);
  }
};

std::string named(const Input& input) {
  const std::string who = input.performer.empty() ? input.source.value : input.performer + ", " + input.source.value;
  return fmt::format("input {} ({})", input.channel.value, who);
}

void ask_inputs(Gatherer& g, const Show& show) {
  for (const Input& input : show.inputs) {
    const std::string why = named(input);
    g.ask(input.pickup, 1, why);
    g.ask(input.stand, 1, why);
    if (input.cable) g.ask(line_cable, 1, why, input.cable->place, input.cable);
    if (input.pad) g.ask(pad_word, 1, why, input.pad->place);
  }
}

void ask_mixes(Gatherer& g, const Show& show) {
  for (const Mix& mix : show.mixes) {
    const std::string why = fmt::format("mix {} ({})", mix.output.value, mix.who);
    g.ask(mix.wedge, mix.count, why);
    g.ask(mix.pack, mix.count, why);
    g.ask(mix.speaker, mix.count, why);
    if (mix.cable) g.ask(line_cable, 1, why, mix.cable->place, mix.cable);
  }
}

void ask_runs(Gatherer& g, const Show& show) {
  for (const Run& run : show.runs) {
    Maybe<Length> reach = run.length;
    if (!reach)
      if (const auto sum = length_of(run)) reach = Sourced<Length>{*sum, run.place};
    g.ask(run.cable.value, run.count, fmt::format("the run from {} to {}", run.from, run.to), run.cable.place, reach);
  }
}

bool same_thing(const Catalogue& catalogue, const std::string& has, const std::string& wanted) {
  if (has == wanted) return true;
  const auto& items = catalogue.items_serving(wanted);
  const auto& cases = catalogue.cases_serving(wanted);
  return std::any_of(items.begin(), items.end(), [&](int i) { return catalogue.kit.items[static_cast<std::size_t>(i)].code.value == has; }) ||
         std::any_of(cases.begin(), cases.end(), [&](int i) { return catalogue.kit.cases[static_cast<std::size_t>(i)].code.value == has; });
}

}  // namespace

std::vector<Demand> demands_of(const Catalogue& catalogue, const Show& show) {
  Gatherer g;
  if (show.console) g.ask(show.console, 1, "the show's console");
  ask_inputs(g, show);
  ask_mixes(g, show);
  ask_runs(g, show);
  for (const Want& want : show.wants) {
    g.ask(want.what.value, want.count, "the show", want.place, want.length);
    g.out.back().reason = want.because;
  }
  deal_site(catalogue, show, g.out);
  return std::move(g.out);
}

void deal_site(const Catalogue& catalogue, const Show& show, std::vector<Demand>& demands) {
  for (const SiteHas& has : show.site.has) {
    int left = has.count;
    for (Demand& demand : demands) {
      if (!same_thing(catalogue, has.what.value, demand.what)) continue;
      const int dealt = std::min(left, demand.count - demand.from_site);
      demand.from_site += dealt;
      left -= dealt;
    }
  }
}

}  // namespace dunnage
