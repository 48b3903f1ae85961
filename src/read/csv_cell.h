// SPDX-License-Identifier: MIT
// One cell as people write it into what the kit wants: "12,5 kg", "29\" x 21\" x 18\"", "yes", "6 x mic; 2 x DI".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/unit.h"
#include "model/intake.h"
#include "model/key.h"
#include "read/csv_number.h"

namespace dunnage {

/// Blank-separated words.
std::vector<std::string> split_words(std::string_view text);

/// What became of a cell. Neither value nor cause: it says nothing, as a dash does.
struct ReadCell {
  std::optional<IntakeValue> value;
  std::string guess;  ///< what was taken for granted; empty: nothing
  std::string cause, hint;
};

/// A cell of a key of this kind. `unit`: of numbers without one; empty: there is none.
ReadCell read_cell(const std::string& cell, const Key& key, const std::string& unit, Decimals decimals);

/// "27,5 lbs" -> "27.5 lb"; `guess` and `cause` as above. What already is a quantity of one of `measures` stays.
ReadCell read_quantity_cell(const std::string& cell, const std::vector<Measure>& measures, const std::string& unit,
                            Decimals decimals);

/// Whether cells of a key of this kind are numbers, sizes or quantities.
bool has_numbers(const Key& key);

/// Whether commas in numbers are decimal, from all cells of numbers together; a comma before three digits alone says
/// nothing.
Decimals decimals_of(const std::vector<std::string>& cells, char delimiter);

}  // namespace dunnage
