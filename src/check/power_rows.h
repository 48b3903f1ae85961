// SPDX-License-Identifier: MIT
// Every circuit of a show as it is loaded, read once for the rules about circuits and supplies.
#pragma once

#include <vector>

#include "formula/electric.h"
#include "model/catalogue.h"
#include "model/finding.h"
#include "model/show.h"

namespace dunnage {

/// Power factor where none is given. Source: IEC 60364-5-52:2009 Annex G.
inline constexpr double assumed_power_factor = 0.8;

/// One row a circuit, in the order of the show, each with its outcome:
/// over where 1.25 x its current is above its protection or its cable, or where more voltage is lost than the
/// notes of the NEC (5 % in all) or IEC 60364-5-52 Table G.52.1 say; not checked where something is missing.
std::vector<CircuitRow> circuit_rows(const Catalogue& catalogue, const Show& show);

double power_factor_of(const Circuit& circuit);
/// The supply of a circuit: as named, or the only one. Null where there is none.
const Supply* supply_of(const Show& show, const Circuit& circuit);
/// Three phases only where the supply has them and the circuit names no leg.
Phases phases_of(const Supply* supply, const Circuit& circuit);
/// What one leg stands at against neutral: of a three-phase supply, its voltage over root 3.
std::optional<Voltage> voltage_of(const Supply* supply, Phases phases);
/// Running and starting power of what a circuit feeds; what is not known is named in `missing`.
struct FedPower {
  Power running, largest_start;  ///< largest_start: beyond running, of the one that asks most
  std::vector<std::string> words;
  std::vector<Sentence> missing;
};
FedPower fed_power(const Catalogue& catalogue, const Circuit& circuit);

}  // namespace dunnage
