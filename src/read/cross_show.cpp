// SPDX-License-Identifier: MIT
// The show against the kit: every code and word that it names, and names that it gives twice.
#include <algorithm>

#include "base/nearest.h"
#include "read/cross_rooms.h"

namespace dunnage {
namespace {

void check_demands(const References& refer, const Show& show) {
  const auto maybe = [&](const Maybe<std::string>& typed) {
    if (typed) refer.word(*typed);
  };
  for (const Want& want : show.wants) {
    const auto same = [&](const SiteHas& has) { return has.what.value == want.what.value; };
    if (std::none_of(show.site.has.begin(), show.site.has.end(), same)) refer.word(want.what);
  }
  for (const Input& input : show.inputs) {
    maybe(input.pickup);
    maybe(input.stand);
  }
  for (const Mix& mix : show.mixes) {
    maybe(mix.wedge);
    maybe(mix.pack);
    maybe(mix.prop);
    maybe(mix.speaker);
  }
  for (const Run& run : show.runs)
    if (!run.cable.value.empty()) refer.word(run.cable);
}

void check_power(const References& refer, const Show& show) {
  std::vector<std::string> supplies;
  for (const Supply& supply : show.supplies) supplies.push_back(supply.name.value);
  for (const Circuit& circuit : show.circuits) {
    if (!circuit.supply.value.empty())
      refer.one_of(circuit.supply, supplies, "no supply is called " + in_quotes(circuit.supply.value),
                   "add a [[supply]] with this name, or correct it");
    for (const CircuitLoad& load : circuit.feeds) refer.word_or_unit(load.code);
  }
}

/// Places are free words until the show lists its own.
void check_places(const References& refer, const Show& show) {
  if (show.places.empty()) return;
  std::vector<std::string> known;
  for (const ShowPlace& spot : show.places) known.push_back(spot.code.value);
  const std::string otherwise = "the show's places are: " + listed(known);
  const auto check = [&](const Text& typed) {
    if (!typed.value.empty())
      refer.one_of(typed, known, "no place of this show is called " + in_quotes(typed.value), otherwise);
  };
  for (const Use& use : show.uses) check({use.at_place, use.at_place_typed});
  for (const Input& input : show.inputs) check({input.at_place, input.at_place_typed});
  for (const Team& team : show.teams)
    for (const Text& spot : team.places) check(spot);
  for (const Load& load : show.loads)
    for (const Text& stop : load.stops) check(stop);
  // A case's own place may be of another show; only what looks like a slip is told.
  for (const Case& box : refer.catalogue().kit.cases) {
    if (std::find(known.begin(), known.end(), box.place_word) != known.end()) continue;
    const std::string near = did_you_mean(box.place_word, known);
    if (!box.place_word.empty() && !near.empty())
      refer.diagnostics().warning(box.place_word_place, "no place of this show is called " + in_quotes(box.place_word),
                                  near);
  }
}

void check_teams_and_loads(const References& refer, const Show& show) {
  std::vector<std::string> homes;
  for (const CaseUnit& unit : refer.catalogue().units) homes.push_back(unit.home);
  for (const Team& team : show.teams) {
    for (const Text& vehicle : team.vehicles) refer.vehicle(vehicle);
    for (const Text& home : team.homes) {
      const auto begins = [&](const std::string& one) { return one.starts_with(home.value); };
      if (std::none_of(homes.begin(), homes.end(), begins))
        refer.diagnostics().warning(home.place, "nothing lives at " + in_quotes(home.value),
                                    did_you_mean(home.value, homes));
    }
  }
  for (const Load& load : show.loads)
    for (const StandsAt& spot : load.stands) refer.piece(spot.code);
  for (const Load& load : show.loads)
    if (refer.catalogue().kit.vehicles.empty() && !load.vehicle.value.empty())
      refer.diagnostics().error(load.vehicle.place, "the kit has no vehicle", "add a [[vehicle]] to the kit");
    else
      refer.vehicle(load.vehicle);
}

/// A name each, told with the first where a second bears it.
void check_names_once(const References& refer, const Show& show) {
  const auto names = [](const auto& list, auto member) {
    std::vector<Text> out;
    for (const auto& one : list) out.push_back(one.*member);
    return out;
  };
  refer.once_each(names(show.places, &ShowPlace::code), "place");
  refer.once_each(names(show.teams, &Team::name), "team");
  refer.once_each(names(show.uses, &Use::as), "use");
  refer.once_each(names(show.mixes, &Mix::output), "output");
  refer.once_each(names(show.supplies, &Supply::name), "supply");
  refer.once_each(names(show.circuits, &Circuit::name), "circuit");
  refer.once_each(names(show.bring, &Override::code), "piece to bring");
  refer.once_each(names(show.leave, &Override::code), "piece to leave");
  std::vector<Text> channels;
  for (const Input& input : show.inputs)
    if (input.channel.typed()) channels.push_back({std::to_string(input.channel.value), input.channel.place});
  refer.once_each(channels, "channel");
}

void check_console(const References& refer, const Show& show) {
  if (!show.console || refer.catalogue().knows(show.console->value)) return;
  std::vector<std::string> known;
  for (const auto& box : refer.catalogue().kit.cases)
    for (const ConditionTable& table : box.goes.any)
      for (const Condition& condition : table.all)
        for (const auto& value : condition.values)
          if (const auto* text = std::get_if<std::string>(&value); text && condition.fact == "console") {
            if (*text == show.console->value) return;
            known.push_back(*text);
          }
  for (const auto* things : {&refer.catalogue().cases_by_word, &refer.catalogue().items_by_word})
    for (const auto& entry : *things) known.push_back(entry.first);
  std::sort(known.begin(), known.end());
  refer.diagnostics().warning(
      show.console->place,
      "no rule asks for the console " + in_quotes(show.console->value) + " and nothing in the kit serves as it",
      did_you_mean(show.console->value, known));
}

}  // namespace

void check_show_words(const References& refer, const Show& show) {
  check_demands(refer, show);
  check_power(refer, show);
  check_places(refer, show);
  check_teams_and_loads(refer, show);
  check_names_once(refer, show);
  check_console(refer, show);
  std::vector<std::string> house_words;
  for (const Text& word : refer.catalogue().kit.house.words) house_words.push_back(word.value);
  for (const Text& word : show.with)
    refer.one_of(word, house_words, in_quotes(word.value) + " is not one of the house's own words",
                 "add it to words = [...] in [house]");
  for (const Override& one : show.bring) refer.piece(one.code);
  for (const Override& one : show.leave) refer.piece(one.code);
}

}  // namespace dunnage
