// SPDX-License-Identifier: MIT
// Lists of what may be named, sorted so that the nearest is the same in every run.
#include "read/references.h"

#include <algorithm>
#include <map>
#include <set>

#include "base/nearest.h"
#include "model/facts.h"

namespace dunnage {
namespace {

std::vector<std::string> sorted(const std::set<std::string>& words) { return {words.begin(), words.end()}; }

}  // namespace

References::References(const Catalogue& catalogue, Diagnostics& diagnostics)
    : catalogue_(catalogue), diagnostics_(diagnostics) {
  for (const Structure& structure : catalogue.kit.structures) structures_.push_back(structure.code.value);
  for (const Vehicle& vehicle : catalogue.kit.vehicles) vehicles_.push_back(vehicle.code.value);
}

const References::Known& References::known() const {
  if (known_) return *known_;
  std::set<std::string> items, cases, pieces, words;
  for (const Item& item : catalogue_.kit.items) {
    items.insert(item.code.value);
    for (const Text& word : item.serves) words.insert(word.value);
  }
  for (const Case& box : catalogue_.kit.cases) {
    cases.insert(box.code.value);
    for (const Text& word : box.serves) words.insert(word.value);
  }
  pieces = cases;
  for (const CaseUnit& unit : catalogue_.units) pieces.insert(unit.code);
  words.insert(items.begin(), items.end());
  words.insert(cases.begin(), cases.end());
  known_ = Known{sorted(items), sorted(cases), sorted(pieces), sorted(words), {}};
  words.insert(pieces.begin(), pieces.end());
  known_->words_and_units = sorted(words);
  return *known_;
}

bool References::one_of(const Text& typed, const std::vector<std::string>& known, const std::string& cause,
                        const std::string& otherwise) const {
  if (std::find(known.begin(), known.end(), typed.value) != known.end()) return true;
  const std::string near = did_you_mean(typed.value, known);
  diagnostics_.error(typed.place, cause, near.empty() ? otherwise : near);
  return false;
}

bool References::item(const Text& typed) const {
  if (catalogue_.item_index(typed.value) >= 0) return true;
  const bool is_case = catalogue_.case_index(typed.value) >= 0;
  return one_of(
      typed, known().items, "no item has the code " + in_quotes(typed.value),
      is_case ? "that is a case, and a case holds items only" : "add an [[item]] with this code, or correct it");
}

bool References::box(const Text& typed) const {
  if (catalogue_.case_index(typed.value) >= 0) return true;
  return one_of(typed, known().cases, "no case has the code " + in_quotes(typed.value),
                "add a [[case]] with this code, or correct it");
}

bool References::piece(const Text& typed) const {
  if (catalogue_.case_index(typed.value) >= 0 || catalogue_.unit_index(typed.value) >= 0) return true;
  const bool is_item = catalogue_.item_index(typed.value) >= 0;
  return one_of(
      typed, known().pieces, "no case has the code " + in_quotes(typed.value),
      is_item ? "that is an item; name the case it lives in" : "add a [[case]] with this code, or correct it");
}

bool References::word(const Text& typed) const {
  if (catalogue_.knows(typed.value)) return true;
  return one_of(typed, known().words, "nothing in the kit is or serves as " + in_quotes(typed.value),
                "add it to the \"serves\" of an item or a case, or correct it");
}

bool References::word_or_unit(const Text& typed) const {
  if (catalogue_.knows(typed.value) || catalogue_.unit_index(typed.value) >= 0) return true;
  return one_of(typed, known().words_and_units, "nothing in the kit is or serves as " + in_quotes(typed.value),
                "add it to the \"serves\" of an item or a case, or correct it");
}

bool References::structure(const Text& typed) const {
  return one_of(typed, structures_, "no structure has the code " + in_quotes(typed.value),
                "add a [[structure]] with this code to the kit, or correct it");
}

bool References::structure_or_kind(const Text& typed) const {
  std::vector<std::string> known = structures_;
  for (const StructureKind kind : {StructureKind::canopy, StructureKind::tower, StructureKind::light_tree,
                                   StructureKind::banner, StructureKind::screen})
    known.emplace_back(dunnage::word(kind));
  return one_of(typed, known, "no structure is or has the code " + in_quotes(typed.value),
                "write a structure's code, or canopy, tower, light-tree, banner or screen");
}

bool References::vehicle(const Text& typed) const {
  if (vehicles_.empty() || typed.value.empty()) return true;
  return one_of(typed, vehicles_, "no vehicle has the code " + in_quotes(typed.value),
                "the kit's vehicles are: " + listed(vehicles_));
}

void References::once_each(const std::vector<Text>& names, const std::string& what, const std::string& hint) const {
  std::map<std::string, Place> first;
  for (const Text& name : names) {
    if (name.value.empty()) continue;
    const auto [at, fresh] = first.emplace(name.value, name.place);
    if (!fresh)
      diagnostics_.error(name.place, "the " + what + " " + in_quotes(name.value) + " stands twice", hint, at->second,
                         "it stands first here");
  }
}

std::vector<int> References::units_of(const std::string& code) const {
  const int box = catalogue_.case_index(code);
  std::vector<int> out;
  if (box >= 0) {
    const auto [begin, end] = catalogue_.units_of[static_cast<std::size_t>(box)];
    for (int unit = begin; unit < end; ++unit) out.push_back(unit);
  } else if (const int unit = catalogue_.unit_index(code); unit >= 0) {
    out.push_back(unit);
  }
  return out;
}

}  // namespace dunnage
