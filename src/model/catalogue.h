// SPDX-License-Identifier: MIT
// The kit with its units counted out and every code to be found.
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "model/kit.h"

namespace dunnage {

/// One thing that is carried: CODE, or CODE-1 ... CODE-n.
struct CaseUnit {
  int case_index = 0;
  int number = 1;  ///< "3 of 8"
  std::string code;
  std::string home;
  Maybe<Mass> weighed;  ///< the unit's own, else its case's
  Maybe<std::string> out_of_service;
};

/// Mass of one unit with all that belongs in it.
struct UnitMass {
  Mass mass;               ///< known parts only where `known` is false
  bool known = false;      ///< false: nothing given, or a part without a mass
  bool estimated = false;  ///< summed, not weighed
  Mass as_ballast;         ///< filled where given, else `mass`
  Mass summed;             ///< empty + contents, to be told against the scale
  bool summed_known = false;
};

struct Catalogue {
  Kit kit;
  std::vector<CaseUnit> units;                ///< in order of case, then number
  std::vector<std::pair<int, int>> units_of;  ///< [first, last) by case

  const Item* item(std::string_view code) const;
  const Case* case_of(std::string_view code) const;  ///< by the case's code
  int unit_index(std::string_view code) const;       ///< by the unit's code; -1
  int case_index(std::string_view code) const;       ///< -1
  int item_index(std::string_view code) const;       ///< -1
  const Structure* structure(std::string_view code) const;
  const Vehicle* vehicle(std::string_view code) const;
  const Case& case_at(int unit) const {
    return kit.cases[static_cast<std::size_t>(units[static_cast<std::size_t>(unit)].case_index)];
  }

  /// Items and cases that serve `word`: named by it (code) or listing it in `serves`.
  const std::vector<int>& items_serving(std::string_view word) const;
  const std::vector<int>& cases_serving(std::string_view word) const;
  /// True when a code or a serves word of this kit.
  bool knows(std::string_view word) const;

  UnitMass mass_of(int unit) const;

  std::unordered_map<std::string, int> item_by_code, case_by_code, unit_by_code;
  std::unordered_map<std::string, int> structure_by_code, vehicle_by_code;
  std::unordered_map<std::string, std::vector<int>> items_by_word, cases_by_word;
};

/// Counts out the units and builds the indexes. The kit's codes are unique (read/ has checked).
Catalogue make_catalogue(Kit kit);

}  // namespace dunnage
