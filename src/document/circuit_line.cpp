// SPDX-License-Identifier: MIT
#include "document/circuit_line.h"

#include "document/form.h"
#include "document/phrase.h"

namespace dunnage {
namespace {

double rounded(double count, Rounding way) { return way == Rounding::up ? steps_up(count) : steps_down(count); }

std::string per_cent(double share, Rounding way) { return plain(rounded(share * 1000, way) / 10, 1) + " %"; }

picture::State branch_state(Outcome outcome) {
  if (outcome == Outcome::within) return picture::State::enough;
  return outcome == Outcome::over ? picture::State::lacking : picture::State::unknown;
}

std::string length_words(const Context& context, const std::optional<Length>& length) {
  return length ? print(*length, context.units, Rounding::up).text() : std::string();
}

/// "9.4 A of 20 A" with what long use counts.
std::string drawn_words(const Context& context, const CircuitRow& row) {
  if (!row.current) return context.words("outcome.not-checked");
  return context.words.say("power.draws", {{"current", amps_words(*row.current, Rounding::up)}});
}

constexpr std::size_t most_lines = 3;

/// Loads of which there are too many for a line each: they part at the semicolons only.
std::string in_one_run(const std::vector<std::string>& loads) {
  std::string out;
  for (const std::string& load : loads) {
    if (!out.empty()) out += "; ";
    for (const char c : load) c == ' ' ? out.append("\u00A0") : out.append(1, c);
  }
  return out;
}

picture::Branch branch_of(const Context& context, const CircuitRow& row) {
  const Words& words = context.words;
  picture::Branch branch;
  const std::string protection =
      row.protection ? amps_words(*row.protection, Rounding::down) : words("power.no-protection");
  const std::string leg = row.leg.empty() ? std::string() : words.say("power.leg", {{"leg", row.leg}});
  branch.breaker = {row.name, joined({protection, leg}, ", ")};
  branch.cable = {joined(
      {row.cable.empty() ? words("power.no-cable") : words.say(row.cable), length_words(context, row.length)}, ", ")};
  branch.cable.push_back(row.drop_share ? words.say("power.drop", {{"drop", per_cent(*row.drop_share, Rounding::up)}})
                                        : words("power.drop-unknown"));
  branch.loads = row.feeds.size() > most_lines ? std::vector{in_one_run(row.feeds)} : row.feeds;
  branch.loads.push_back(drawn_words(context, row));
  branch.state = branch_state(row.outcome);
  branch.says = outcome_words(words, row.outcome);
  return branch;
}

/// A row with what was typed of its circuit, where the check had no use for it.
CircuitRow with_typed(const Context& context, CircuitRow row) {
  const auto at = static_cast<std::size_t>(row.circuit);
  if (at >= context.show.circuits.size()) return row;
  const Circuit& circuit = context.show.circuits[at];
  if (row.cable.empty() && circuit.cable) row.cable = circuit.cable->value;
  if (!row.length && circuit.length) row.length = circuit.length->value;
  if (!row.protection && circuit.protection) row.protection = circuit.protection->value;
  return row;
}

/// A circuit of which no check has said anything.
picture::Branch typed_branch(const Context& context, const Circuit& circuit) {
  CircuitRow row;
  row.name = circuit.name.value;
  if (circuit.leg) row.leg = circuit.leg->value;
  if (circuit.cable) row.cable = circuit.cable->value;
  if (circuit.length) row.length = circuit.length->value;
  if (circuit.protection) row.protection = circuit.protection->value;
  for (const CircuitLoad& load : circuit.feeds)
    row.feeds.push_back(
        context.words.say("thing.count", {{"n", std::to_string(load.count)}, {"name", load.code.value}}));
  return branch_of(context, row);
}

}  // namespace

std::string watts_words(Power power, Rounding way) { return plain(rounded(power / unit::watt, way), 0) + " W"; }
std::string amps_words(Current current, Rounding way) {
  return plain(rounded(current / unit::ampere * 10, way) / 10, 1) + " A";
}

picture::OneLine one_line(const Context& context, const Supply& supply, const SupplyDetail* detail) {
  const Words& words = context.words;
  picture::OneLine diagram;
  const std::string voltage =
      supply.voltage ? plain(supply.voltage->value / unit::volt, 0) + " V" : words("power.no-voltage");
  const std::string phases =
      supply.phases ? words.say("power.phases", {{"n", plain(supply.phases->value, 0)}}) : std::string();
  const std::string rated = supply.power ? watts_words(supply.power->value, Rounding::down) : words("power.no-rating");
  diagram.supply = {supply.name.value, joined({supply.kind.value, voltage, phases, rated}, ", ")};
  if (detail) {
    for (const CircuitRow& row : detail->circuits)
      diagram.branches.push_back(branch_of(context, with_typed(context, row)));
  } else {
    for (const Circuit& circuit : context.show.circuits)
      if (circuit.supply.value == supply.name.value) diagram.branches.push_back(typed_branch(context, circuit));
  }
  return diagram;
}

block::Table circuit_table(const Context& context, const std::vector<CircuitRow>& rows) {
  const Words& words = context.words;
  block::Table table = make_table(words, {{"circuit", "power.circuit"},
                                          {"load", "power.load"},
                                          {"need", "power.need"},
                                          {"of", "power.of"},
                                          {"left", "power.left"},
                                          {"cable", "power.carries"},
                                          {"drop", "power.drop-head"},
                                          {"state", ""}});
  const std::string unknown = words("power.unknown");  // the state beside it says it loudly
  const auto amps = [&](const std::optional<Current>& current, Rounding way) {
    return current ? amps_words(*current, way) : unknown;
  };
  Group group;
  for (const CircuitRow& row : rows) {
    std::string left = unknown;
    if (row.need && row.protection)
      left = *row.need <= *row.protection
                 ? amps_words(*row.protection - *row.need, Rounding::down)
                 : words.say("power.over-by", {{"current", amps_words(*row.need - *row.protection, Rounding::up)}});
    group.rows.push_back({{strong_cell(row.name), text_cell(watts_words(row.load, Rounding::up)),
                           text_cell(amps(row.need, Rounding::up)), text_cell(amps(row.protection, Rounding::down)),
                           text_cell(left), text_cell(amps(row.ampacity, Rounding::down)),
                           text_cell(row.drop_share ? per_cent(*row.drop_share, Rounding::up) : unknown),
                           strong_cell(outcome_words(words, row.outcome))}});
  }
  table.groups.push_back(std::move(group));
  return table;
}

block::Table leg_power_table(const Context& context, const SupplyDetail& detail) {
  block::Table table = make_table(context.words, {{"leg", "power.leg-head"},
                                                  {"load", "power.load"},
                                                  {"apparent", "power.apparent"},
                                                  {"current", "power.current"}});
  Group group;
  for (const LegPower& leg : detail.legs)
    group.rows.push_back({{strong_cell(leg.leg), text_cell(watts_words(leg.load, Rounding::up)),
                           text_cell(plain(steps_up(leg.apparent / unit::watt), 0) + " VA"),
                           text_cell(leg.current > Current{} ? amps_words(leg.current, Rounding::up)
                                                             : context.words("outcome.not-checked"))}});
  if (!group.rows.empty()) table.groups.push_back(std::move(group));
  return table;
}

}  // namespace dunnage
