// SPDX-License-Identifier: MIT
// A supply with its circuits in words: what the one-line diagram and the tables of the power sheet say alike.
#pragma once

#include <string>
#include <vector>

#include "document/context.h"

namespace dunnage {

std::string watts_words(Power power, Rounding way);
std::string amps_words(Current current, Rounding way);

/// The diagram of one supply. `detail` null: from what was typed, nothing checked.
picture::OneLine one_line(const Context& context, const Supply& supply, const SupplyDetail* detail);

/// Columns circuit, leg, draws, need, of, cable, drop, state.
block::Table circuit_table(const Context& context, const std::vector<CircuitRow>& rows);
/// Columns leg, load, current; without a group where no circuit names a leg.
block::Table leg_power_table(const Context& context, const SupplyDetail& detail);

}  // namespace dunnage
