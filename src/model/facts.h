// SPDX-License-Identifier: MIT
// The facts of a show that a kit's `goes` rules may name: one table, so that reader, planner and help agree.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/unit.h"
#include "model/catalogue.h"
#include "model/show.h"

namespace dunnage {

/// What one fact is: yes or no, a number (quantities in SI), or words (a list has any of them).
using FactValue = std::variant<bool, double, std::vector<std::string>>;

struct FactKind {
  std::string_view name;
  enum class Type { yes_no, words, number, quantity } type;
  std::optional<Measure> measure;  ///< of a quantity
  std::string_view state_it;       ///< what to write in the show, for a hint
};

/// Every fact, in the order `help conditions` prints.
const std::vector<FactKind>& fact_kinds();
const FactKind* fact_kind(std::string_view name);

/// The show's value of a fact; nothing where the show does not state it. Counts of inputs, mixes, runs,
/// and lists of structures, sources and the house's own words are always stated.
/// A structure in use answers to its code and to its kind.
std::optional<FactValue> fact(const Catalogue& catalogue, const Show& show, std::string_view name);

/// "canopy", "tower", "light-tree", "banner", "screen": as typed.
std::string_view word(StructureKind kind);

}  // namespace dunnage
