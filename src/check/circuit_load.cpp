// SPDX-License-Identifier: MIT
// Rule circuit: load, cable and voltage drop of each circuit.
#include "check/circuit_load.h"

#include "base/slack.h"
#include "check/circuit_gear.h"
#include "check/power_rows.h"
#include "check/say.h"
#include "check/standing_site.h"

namespace dunnage {
namespace {

/// What it draws, what that counts as, and what protects it.
Sentence draws_words(const CircuitRow& row, bool continuous) {
  const std::string draws = amps_up(*row.current);
  if (!continuous)
    return row.protection ? said("Draws {}, of {}.", draws, amps_down(*row.protection)) : said("Draws {}.", draws);
  const std::string counted = amps_up(*row.need);
  return row.protection
             ? said("Draws {}, counted as {} for long use, of {}.", draws, counted, amps_down(*row.protection))
             : said("Draws {}, counted as {} for long use.", draws, counted);
}

Sentence says_of(const CircuitRow& row, bool continuous) {
  Sentence says;
  if (row.current) {
    says = draws_words(row, continuous);
    if (row.ampacity && exceeds(*row.need, *row.ampacity))
      says.then(said("{} carries only {}: take a thicker cable, or load off.", row.cable, amps_down(*row.ampacity)));
    if (row.protection && exceeds(*row.need, *row.protection))
      says.then(said("More than its breaker takes: move load to another circuit."));
  }
  if (row.drop_share)
    says.then(said("Loses {} to its farthest outlet: {}, {} at most.", volts_up(*row.drop), percent_up(*row.drop_share),
                   percent_up(*row.drop_limit)));
  if (row.drop_share && exceeds(*row.drop_share, *row.drop_limit))
    says.then(said("Take a thicker or a shorter cable, or load off."));
  if (!row.missing.empty())
    says.then(said("Not given: {}. Read it off the plate or measure it, and type it.", strung(row.missing, ", ")));
  return says;
}

Finding finding_of(const Show& show, const CircuitRow& row) {
  const Circuit& circuit = show.circuits[static_cast<std::size_t>(row.circuit)];
  Finding f = begin_circuit({Subject::Kind::circuit, row.circuit}, row.name, circuit.place);
  f.outcome = row.outcome;
  f.says = says_of(row, circuit.continuous);
  if (row.need) f.measured = *row.need;
  if (row.protection) f.limit = *row.protection;
  if (!circuit.power_factor) assume(f, said("power factor 0.8"));
  if (row.current && !row.ampacity) assume(f, said("no ampacity known for {}", row.cable));
  if (row.drop_share) assume(f, said("cable unrolled, voltage drop by {}", row.drop_method));
  f.detail = CircuitDetail{row};
  return f;
}

/// No circuit is typed: is there anything to plug in?
void no_circuits(const Catalogue& c, const Show& show, const Plan& plan, Findings& findings) {
  int drawing = 0;
  for (int unit : plan.pulled()) drawing += draws_of(c, c.units[static_cast<std::size_t>(unit)].case_index).has_value();
  Finding f = begin_circuit({}, said("power"), show.show_place);
  f.says = said(
      "No circuit is listed, and {} power: nothing was added up. Type a [[supply]] and its [[circuit]]s, or have an "
      "electrician lay it out.",
      drawing == 1 ? said("1 piece that goes draws") : said("{} pieces that go draw", drawing));
  if (drawing == 0)
    say_does_not_apply(f, show.show_place, said("No circuit is listed, and nothing that goes is said to draw power."));
  else if (is_indoor(show))
    say_does_not_apply(f, setting_place(show), said("Indoors, no circuit listed: the building's own."));
  findings.list.push_back(f);
}

}  // namespace

void check_circuits(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  if (show.circuits.empty()) no_circuits(catalogue, show, plan, findings);
  for (const CircuitRow& row : circuit_rows(catalogue, show)) findings.list.push_back(finding_of(show, row));
  check_circuit_gear(catalogue, show, plan, findings);
}

}  // namespace dunnage
