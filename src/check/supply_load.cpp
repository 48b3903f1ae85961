// SPDX-License-Identifier: MIT
// Rule supply: rating, balance of the legs, and what a generator has left.
#include "check/supply_load.h"

#include <algorithm>
#include <numbers>

#include "base/slack.h"
#include "check/power_rows.h"
#include "check/say.h"
#include "formula/access.h"

namespace dunnage {
namespace {

std::string volt_amperes_up(Power apparent) { return plain(steps_up(apparent / unit::watt), 0) + " VA"; }

/// Of a generator's extinguisher: clear of its fire, near enough to fetch. From memory.
constexpr Length extinguisher_from = 25 * unit::foot, extinguisher_to = 75 * unit::foot;

/// What is judged besides the rating.
struct Judged {
  std::vector<Sentence> missing, over;
};

void add_leg(SupplyDetail& d, const CircuitRow& row, Power apparent) {
  if (row.leg.empty()) return;
  auto leg = std::find_if(d.legs.begin(), d.legs.end(), [&](const LegPower& l) { return l.leg == row.leg; });
  if (leg == d.legs.end()) leg = d.legs.insert(leg, LegPower{row.leg, {}, {}, {}});
  leg->load += row.load;
  leg->apparent += apparent;
  if (row.current) leg->current += *row.current;
}

/// A circuit of three phases loads each leg with a third, and with the whole of its current.
void spread_over_legs(SupplyDetail& d, const Show& show) {
  if (d.phases < 3 || d.legs.empty()) return;
  for (const CircuitRow& row : d.circuits) {
    if (!row.leg.empty()) continue;
    for (LegPower& leg : d.legs) {
      leg.load += row.load / 3;
      leg.apparent += row.load / power_factor_of(show.circuits[static_cast<std::size_t>(row.circuit)]) / 3;
      if (row.current) leg.current += *row.current;
    }
  }
}

/// Whole feet or metres: nobody paces out a distance to the centimetre.
std::string paced(Length length, UnitSystem units, Rounding way) {
  const Length step = 1 * (units == UnitSystem::us ? unit::foot : unit::metre);
  const double steps = way == Rounding::up ? steps_up(length / step) : steps_down(length / step);
  Printed out = print(step * steps, units, Rounding::nearest);
  out.decimals = 0;
  return out.text();
}

/// What outlets stand at: on a leg of three phases against neutral, the highest first.
std::vector<Voltage> outlet_voltages(const SupplyDetail& d) {
  if (!d.voltage) return {};
  const auto on_leg = [](const CircuitRow& row) { return !row.leg.empty(); };
  const bool legs = std::any_of(d.circuits.begin(), d.circuits.end(), on_leg);
  if (d.phases < 3 || !legs) return {*d.voltage};
  const Voltage leg = *d.voltage / std::numbers::sqrt3;
  return std::all_of(d.circuits.begin(), d.circuits.end(), on_leg) ? std::vector{leg} : std::vector{*d.voltage, leg};
}

void add_tests(SupplyDetail& d, UnitSystem units) {
  if (d.kind == "generator")
    d.tests.push_back(
        said("Generator: fenced off, exhaust away from people; refuelled off and cooled; extinguisher {} to {} away.",
             paced(extinguisher_from, units, Rounding::up), paced(extinguisher_to, units, Rounding::down)));
  for (const CircuitRow& row : d.circuits)
    d.tests.push_back(said("{}: press the test button of its residual-current device; it trips; reset it.", row.name));
  d.tests.push_back(said("Outlet tester at the farthest outlet of each circuit: earth, line and neutral right."));
  for (const Voltage voltage : outlet_voltages(d))
    d.tests.push_back(said("Voltage at the farthest outlet under load: {} or more.",
                           plain(steps_up(voltage / unit::volt * 0.95), 0) + " V"));
}

/// What height and heat leave of a generator.
void derate(SupplyDetail& d, const Show& show, const Supply& supply, Judged& judged) {
  d.left = d.rated;
  if (supply.kind.value != "generator" || !d.rated) return;
  if (!show.site.altitude) judged.missing.push_back(said("the site's altitude"));
  if (!show.forecast || !show.forecast->temperature) judged.missing.push_back(said("the temperature"));
  if (!judged.missing.empty()) return;
  const auto share = generator_share(show.site.altitude->value, show.forecast->temperature->value);
  if (share)
    d.left = *d.rated * *share;
  else
    judged.over.push_back(said("Too high or too hot for the table of generators: ask its maker what it gives there."));
}

/// What a generator keeps clear of: true where it is too near; `missing` where that was not given.
bool too_near(const Maybe<Length>& typed, Length least, const Sentence& missing, Judged& judged) {
  if (!typed) judged.missing.push_back(missing);
  return typed && falls_short(typed->value, least);
}

void judge_clear(const Supply& supply, UnitSystem units, Judged& judged) {
  if (supply.kind.value != "generator") return;
  const auto is = [&](Length length) { return print(length, units, Rounding::down).text(); };
  const auto least = [&](Length length) { return print(length, units, Rounding::up).text(); };
  if (too_near(supply.distance, generator_distance, said("its distance to the nearest tent, door or window"), judged))
    judged.over.push_back(said("It stands {} from a tent, door or window: move it to {} at least.",
                               is(supply.distance->value), least(generator_distance)));
  if (too_near(supply.fuel, fuel_distance, said("how far its fuel is kept from the nearest tent"), judged))
    judged.over.push_back(
        said("Its fuel is kept {} from a tent: move it to {} at least.", is(supply.fuel->value), least(fuel_distance)));
}

/// A leg may take its equal share of the rating and no more.
void judge_legs(SupplyDetail& d, Judged& judged) {
  if (d.legs.empty()) return;
  if (d.phases < 3 &&
      std::any_of(d.circuits.begin(), d.circuits.end(), [](const CircuitRow& r) { return r.leg.empty(); }))
    judged.missing.push_back(said("the leg of every circuit"));
  const auto [least, most] = std::minmax_element(
      d.legs.begin(), d.legs.end(), [](const LegPower& a, const LegPower& b) { return a.apparent < b.apparent; });
  const int has = std::max(static_cast<int>(d.legs.size()), d.phases >= 3 ? 3 : 1);
  Power unnamed = d.apparent;  // on the legs that no circuit names
  for (const LegPower& leg : d.legs) unnamed = unnamed - leg.apparent;
  const int legs = static_cast<int>(d.legs.size());
  const Power smallest = legs < has ? std::max(Power{}, unnamed / (has - legs)) : least->apparent;
  if (most->apparent > Power{}) d.imbalance = (most->apparent - smallest) / most->apparent;
  if (d.left && exceeds(most->apparent, *d.left / has))
    judged.over.push_back(said("Leg {} takes {}, its share is {}: move a circuit to another leg.", most->leg,
                               volt_amperes_up(most->apparent), watts_down(*d.left / has)));
}

Sentence legs_words(const SupplyDetail& d) {
  std::vector<Sentence> words;
  for (const LegPower& leg : d.legs) words.push_back(said("leg {} {}", leg.leg, watts_up(leg.load)));
  return strung(words, ", ");
}

/// "Carries 2400 W, 3000 VA and 800 W more while starting, of 5000 W: leg A 1200 W, leg B 1200 W."
Sentence carries_words(const SupplyDetail& d) {
  const std::string load = watts_up(d.load), apparent = volt_amperes_up(d.apparent);
  Sentence words = d.starting > Power{}
                       ? said("Carries {}, {} and {} more while starting", load, apparent, watts_up(d.starting))
                       : said("Carries {}, {}", load, apparent);
  if (d.left) words = said("{}, of {}", words, watts_down(*d.left));
  return d.legs.empty() ? said("{}.", words) : said("{}: {}.", words, legs_words(d));
}

SupplyDetail detail_of(const Catalogue& c, const Show& show, int index, const std::vector<CircuitRow>& rows,
                       Judged& judged) {
  const Supply& supply = show.supplies[static_cast<std::size_t>(index)];
  SupplyDetail d;
  d.kind = supply.kind;
  d.phases = supply.phases && supply.phases->value >= 3 ? 3 : 1;
  if (supply.voltage) d.voltage = supply.voltage->value;
  if (supply.power) d.rated = supply.power->value;
  for (const CircuitRow& row : rows) {
    const Circuit& circuit = show.circuits[static_cast<std::size_t>(row.circuit)];
    if (supply_of(show, circuit) != &supply) continue;
    d.circuits.push_back(row);
    d.load += row.load;
    const FedPower fed = fed_power(c, circuit);
    d.starting = std::max(d.starting, fed.largest_start);
    for (const Sentence& what : fed.missing) judged.missing.push_back(what);
    const Power apparent = row.load / power_factor_of(circuit);
    d.apparent += apparent;
    add_leg(d, row, apparent);
  }
  spread_over_legs(d, show);
  add_tests(d, c.kit.house.units);
  return d;
}

Finding finding_of(const Catalogue& c, const Show& show, int index, const std::vector<CircuitRow>& rows) {
  const Supply& supply = show.supplies[static_cast<std::size_t>(index)];
  Judged judged;
  SupplyDetail d = detail_of(c, show, index, rows, judged);
  if (!supply.power) judged.missing.push_back(said("its rated power"));
  derate(d, show, supply, judged);
  judge_clear(supply, c.kit.house.units, judged);
  judge_legs(d, judged);
  Finding f = begin_finding(RuleName::supply, {Subject::Kind::supply, index}, supply.name.value, supply.place);
  f.sources = {said("as rated"), said("height and heat: common practice, no source"),
               said("City of Fort Worth (Texas), tent permit page, year not seen")};
  f.caution = said("Its own plate and manual win. Earthing and the neutral's bond are the electrician's.");
  const Power all = d.apparent + d.starting;
  f.measured = all;
  if (d.left) f.limit = *d.left;
  if (d.left && exceeds(all, *d.left))
    judged.over.insert(judged.over.begin(), said("That is more than it has: take load off, or bring another."));
  f.says = carries_words(d);
  for (const Sentence& words : judged.over) f.says.then(words);
  if (!judged.missing.empty())
    f.says.then(said("Not given: {}. Read its plate or measure, and type it.", strung(judged.missing, ", ")));
  f.outcome = !judged.over.empty() ? Outcome::over : judged.missing.empty() ? Outcome::within : Outcome::not_checked;
  if (d.imbalance && *d.imbalance > 0.2)
    f.caution = said("The legs differ by {} of the larger: even them out.", percent_up(*d.imbalance)).then(f.caution);
  if (d.phases == 3 && !d.legs.empty()) assume(f, said("the voltage typed is taken between lines"));
  f.detail = std::move(d);
  return f;
}

}  // namespace

void check_supplies(const Catalogue& catalogue, const Show& show, const Plan&, Findings& findings) {
  const auto rows = circuit_rows(catalogue, show);
  for (int i = 0; i < static_cast<int>(show.supplies.size()); ++i) {
    const Supply* supply = &show.supplies[static_cast<std::size_t>(i)];
    if (std::any_of(show.circuits.begin(), show.circuits.end(),
                    [&](const Circuit& circuit) { return supply_of(show, circuit) == supply; }))
      findings.list.push_back(finding_of(catalogue, show, i, rows));
  }
}

}  // namespace dunnage
