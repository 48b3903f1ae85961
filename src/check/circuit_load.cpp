// SPDX-License-Identifier: MIT
// Rule circuit: load, cable and voltage drop of each circuit.
#include "check/circuit_load.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "check/canopy_site.h"
#include "check/power_rows.h"
#include "check/say.h"

namespace dunnage {
namespace {

constexpr const char* source = "NEC 210.20(A), 400.5, Ch. 9 Table 8; IEC 60364-5-52 Annex G";
constexpr const char* caution =
    "Test every residual-current device before doors. A licensed electrician and the inspector decide.";

std::string says_of(const CircuitRow& row, bool continuous) {
  std::string says;
  if (row.current) {
    says = fmt::format("Draws {}", amps_up(*row.current));
    if (continuous) says += fmt::format(", counted as {} for long use", amps_up(*row.need));
    if (row.protection) says += fmt::format(", of {}", amps_down(*row.protection));
    says += ".";
    if (row.ampacity && *row.need > *row.ampacity * (1 + 1e-9))
      says += fmt::format(" {} carries only {}: take a thicker cable, or load off.", row.cable,
                          amps_down(*row.ampacity));
    if (row.protection && *row.need > *row.protection * (1 + 1e-9))
      says += " More than its breaker takes: move load to another circuit.";
  }
  if (row.drop_share)
    says += fmt::format(" Loses {} to its farthest outlet: {}, {} at most.", volts_up(*row.drop),
                        percent_up(*row.drop_share), percent_up(*row.drop_limit));
  if (row.drop_share && *row.drop_share > *row.drop_limit * (1 + 1e-9))
    says += " Take a thicker or a shorter cable, or load off.";
  if (!row.missing.empty())
    says += fmt::format("{}Not given: {}. Read it off the plate or measure it, and type it.",
                        says.empty() ? "" : " ", fmt::join(row.missing, ", "));
  return says;
}

Finding finding_of(const Show& show, const CircuitRow& row) {
  const Circuit& circuit = show.circuits[static_cast<std::size_t>(row.circuit)];
  Finding f = begin_finding("circuit", row.name, circuit.place);
  f.source = source;
  f.caution = caution;
  f.outcome = row.outcome;
  f.says = says_of(row, circuit.continuous);
  if (row.need) f.measured = *row.need;
  if (row.protection) f.limit = *row.protection;
  if (!circuit.power_factor) assume(f, "power factor 0.8");
  if (row.current && !row.ampacity) assume(f, "no ampacity known for " + row.cable);
  if (row.drop_share) assume(f, "cable unrolled, voltage drop by " + row.drop_method);
  f.detail = CircuitDetail{row};
  return f;
}

/// No circuit is typed: is there anything to plug in?
void no_circuits(const Catalogue& c, const Show& show, const Plan& plan, Findings& findings) {
  int drawing = 0;
  for (int unit : plan.pulled())
    drawing += draws_of(c, c.units[static_cast<std::size_t>(unit)].case_index).has_value();
  Finding f = begin_finding("circuit", "power", show.show_place);
  f.source = source;
  f.caution = caution;
  f.says = fmt::format(
      "No circuit is listed, and {} power: nothing was added up. Type a [[supply]] and its [[circuit]]s, or have an "
      "electrician lay it out.",
      drawing == 1 ? "1 piece that goes draws" : fmt::format("{} pieces that go draw", drawing));
  if (drawing == 0)
    say_does_not_apply(f, show.show_place, "No circuit is listed, and nothing that goes is said to draw power.");
  else if (is_indoor(show))
    say_does_not_apply(f, setting_place(show), "Indoors, no circuit listed: the building's own.");
  findings.list.push_back(f);
}

}  // namespace

void check_circuits(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  if (show.circuits.empty()) no_circuits(catalogue, show, plan, findings);
  for (const CircuitRow& row : circuit_rows(catalogue, show)) findings.list.push_back(finding_of(show, row));
}

}  // namespace dunnage
