// SPDX-License-Identifier: MIT
// Loads to currents, cables to ampacity, segments to the voltage lost at the farthest outlet.
#include "check/power_rows.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <numbers>

#include "base/slack.h"
#include "check/say.h"

namespace dunnage {
namespace {

std::optional<Power> draws_of_code(const Catalogue& c, const std::string& code) {
  if (const int unit = c.unit_index(code); unit >= 0)
    return draws_of(c, c.units[static_cast<std::size_t>(unit)].case_index);
  if (const int i = c.case_index(code); i >= 0) return draws_of(c, i);
  if (const Item* item = c.item(code)) return item->draws ? std::optional<Power>(item->draws->value) : std::nullopt;
  // A serves word: the most that anything serving it draws.
  std::optional<Power> most;
  const auto widen = [&](const std::optional<Power>& one) {
    if (one && (!most || *one > *most)) most = one;
  };
  for (int i : c.cases_serving(code)) widen(draws_of(c, i));
  for (int i : c.items_serving(code))
    if (const Item& item = c.kit.items[static_cast<std::size_t>(i)]; item.draws) widen(item.draws->value);
  return most;
}

/// A cable of a circuit: what it is called, its conductor, its maker's ampacity.
struct Cable {
  Sentence name;
  std::optional<Conductor> conductor;
  std::optional<Current> carries;
};

Cable cable_of(const Catalogue& c, const Maybe<std::string>& code, const Maybe<Conductor>& typed) {
  Cable cable{code ? Sentence(code->value) : said("the cable"), {}, {}};
  const auto take = [&](const auto& thing) {
    if (thing.conductor) cable.conductor = thing.conductor->value;
    if (thing.carries) cable.carries = thing.carries->value;
  };
  if (code) {
    const int unit = c.unit_index(code->value);
    if (unit >= 0)
      take(c.case_at(unit));
    else if (const Case* box = c.case_of(code->value))
      take(*box);
    else if (const Item* item = c.item(code->value))
      take(*item);
  }
  if (typed) cable.conductor = typed->value;
  return cable;
}

std::optional<Current> ampacity_of(const Cable& cable, Phases phases) {
  std::optional<Current> least = cable.carries;
  if (cable.conductor && !cable.conductor->awg.empty())
    if (const auto table = cord_ampacity(cable.conductor->awg, phases == Phases::three ? 3 : 2))
      least = least ? std::min(*least, *table) : *table;
  return least;
}

/// Adds the loss over one segment; false where it cannot be worked out, and then says why.
bool add_loss(CircuitRow& row, const Cable& cable, const Maybe<Length>& length, Phases phases, Current current,
              double power_factor) {
  if (!length) row.missing.push_back(said("the length of {}", cable.name));
  if (!cable.conductor) row.missing.push_back(said("the conductor of {}", cable.name));
  if (!length || !cable.conductor) return false;
  std::optional<Voltage> drop;
  if (!cable.conductor->awg.empty()) {
    drop = voltage_drop_us(phases, cable.conductor->awg, current, length->value);
    row.drop_method = "NEC Ch. 9 Table 8";
  } else {
    drop = voltage_drop_iec(phases, cable.conductor->section, current, length->value, power_factor);
    // That formula is to neutral; between lines it is root 3 more.
    if (drop && phases == Phases::three) drop = *drop * std::numbers::sqrt3;
    row.drop_method = "IEC 60364-5-52 Annex G";
  }
  if (!drop) {
    row.missing.push_back(said("a conductor of {} that a table has", cable.name));
    return false;
  }
  row.drop = row.drop.value_or(Voltage{}) + *drop;
  row.length = row.length.value_or(Length{}) + length->value;
  return true;
}

double drop_limit(const Supply* supply, const CircuitRow& row) {
  if (row.drop_method.starts_with("NEC")) return 0.05;
  return drop_limit_iec(!supply || supply->kind.value != "generator", false, row.length.value_or(Length{}));
}

/// The cables from the supply to the farthest outlet. `feeder`: what flows in the supply's own cable.
void read_cables(CircuitRow& row, const Catalogue& c, const Circuit& circuit, const Supply* supply, Phases phases,
                 Voltage voltage, Current feeder) {
  const double factor = power_factor_of(circuit);
  bool whole = true;
  if (supply && (supply->cable || supply->conductor || supply->length))
    whole = add_loss(row, cable_of(c, supply->cable, supply->conductor), supply->length, phases, feeder, factor);
  const Cable first = cable_of(c, circuit.cable, circuit.conductor);
  row.cable = first.name;
  row.ampacity = ampacity_of(first, phases);
  whole = add_loss(row, first, circuit.length, phases, *row.current, factor) && whole;
  for (const Segment& segment : circuit.then) {
    const Cable cable = cable_of(c, segment.cable, segment.conductor);
    const Current flows = segment.carries ? current_of(phases, segment.carries->value, voltage, factor) : *row.current;
    whole = add_loss(row, cable, segment.length, phases, flows, factor) && whole;
    if (const auto ampacity = ampacity_of(cable, phases); ampacity && !segment.carries)
      row.ampacity = row.ampacity ? std::min(*row.ampacity, *ampacity) : *ampacity;
    row.cable = strung({row.cable, cable.name}, " + ");
  }
  if (!whole) {
    row.drop.reset();
    return;
  }
  row.drop_share = *row.drop / voltage;
  row.drop_limit = drop_limit(supply, row);
}

void judge(CircuitRow& row) {
  const bool heavy = row.need && ((row.protection && exceeds(*row.need, *row.protection)) ||
                                  (row.ampacity && exceeds(*row.need, *row.ampacity)));
  const bool lossy = row.drop_share && exceeds(*row.drop_share, *row.drop_limit);
  if (heavy || lossy)
    row.outcome = Outcome::over;
  else
    row.outcome = row.missing.empty() ? Outcome::within : Outcome::not_checked;
}

CircuitRow loaded_row(const Catalogue& c, const Show& show, int index) {
  const Circuit& circuit = show.circuits[static_cast<std::size_t>(index)];
  CircuitRow row;
  row.circuit = index;
  row.name = circuit.name.value;
  if (circuit.leg) row.leg = circuit.leg->value;
  const FedPower fed = fed_power(c, circuit);
  row.load = fed.running;
  row.feeds = fed.words;
  row.missing = fed.missing;
  if (circuit.protection)
    row.protection = circuit.protection->value;
  else
    row.missing.push_back(said("its protection"));
  const Supply* supply = supply_of(show, circuit);
  const Phases phases = phases_of(supply, circuit);
  const auto voltage = voltage_of(supply, phases);
  if (!voltage) {
    row.missing.push_back(said("its supply's voltage"));
    return row;
  }
  const double factor = power_factor_of(circuit);
  row.current = current_of(phases, row.load, *voltage, factor);
  row.need = circuit.continuous ? circuit_need({}, *row.current) : circuit_need(*row.current, {});
  return row;
}

/// What flows in the feeder: all circuits of the same supply and leg together, and those on no one leg. For such a
/// circuit itself, the leg that bears most.
Current feeder_current(const Show& show, const std::vector<CircuitRow>& rows, const CircuitRow& of) {
  const Supply* supply = supply_of(show, show.circuits[static_cast<std::size_t>(of.circuit)]);
  std::map<std::string, Current> by_leg;
  for (const CircuitRow& row : rows)
    if (row.current && supply_of(show, show.circuits[static_cast<std::size_t>(row.circuit)]) == supply)
      by_leg[row.leg] += *row.current;
  const Current all = by_leg[""];
  by_leg.erase("");
  if (!of.leg.empty()) return by_leg[of.leg] + all;
  Current most;
  for (const auto& [leg, current] : by_leg) most = std::max(most, current);
  return most + all;
}

}  // namespace

double power_factor_of(const Circuit& circuit) {
  return circuit.power_factor ? circuit.power_factor->value : assumed_power_factor;
}

const Supply* supply_of(const Show& show, const Circuit& circuit) {
  if (circuit.supply.value.empty()) return show.supplies.size() == 1 ? &show.supplies.front() : nullptr;
  for (const Supply& supply : show.supplies)
    if (supply.name.value == circuit.supply.value) return &supply;
  return nullptr;
}

Phases phases_of(const Supply* supply, const Circuit& circuit) {
  return supply && supply->phases && supply->phases->value >= 3 && !circuit.leg ? Phases::three : Phases::one;
}

std::optional<Voltage> voltage_of(const Supply* supply, Phases phases) {
  if (!supply || !supply->voltage) return std::nullopt;
  const bool line_to_neutral = phases == Phases::one && supply->phases && supply->phases->value >= 3;
  return line_to_neutral ? supply->voltage->value / std::numbers::sqrt3 : supply->voltage->value;
}

FedPower fed_power(const Catalogue& catalogue, const Circuit& circuit) {
  FedPower fed;
  if (circuit.feeds.empty()) fed.missing.push_back(said("what it feeds"));
  for (const CircuitLoad& load : circuit.feeds) {
    const auto draws = load.draws ? std::optional<Power>(load.draws->value) : draws_of_code(catalogue, load.code.value);
    const std::string name = fmt::format("{} x {}", load.count, load.code.value);
    if (!draws) {
      fed.missing.push_back(said("what {} draws", load.code.value));
      fed.words.push_back(name);
      continue;
    }
    fed.running += *draws * load.count;
    if (load.starts) fed.largest_start = std::max(fed.largest_start, load.starts->value - *draws);
    fed.words.push_back(name + ", " + watts_up(*draws * load.count));
  }
  return fed;
}

std::vector<CircuitRow> circuit_rows(const Catalogue& catalogue, const Show& show) {
  std::vector<CircuitRow> rows;
  for (int i = 0; i < static_cast<int>(show.circuits.size()); ++i) rows.push_back(loaded_row(catalogue, show, i));
  for (CircuitRow& row : rows) {
    const Circuit& circuit = show.circuits[static_cast<std::size_t>(row.circuit)];
    const Supply* supply = supply_of(show, circuit);
    const Phases phases = phases_of(supply, circuit);
    if (const auto voltage = voltage_of(supply, phases); voltage && row.current)
      read_cables(row, catalogue, circuit, supply, phases, *voltage, feeder_current(show, rows, row));
    judge(row);
  }
  return rows;
}

}  // namespace dunnage
