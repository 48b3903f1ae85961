// SPDX-License-Identifier: MIT
// Counting out the units, finding codes, adding up masses.
#include "model/catalogue.h"

#include <algorithm>

namespace dunnage {

namespace {

template <class Map>
int find(const Map& map, std::string_view code) {
  const auto at = map.find(std::string(code));
  return at == map.end() ? -1 : at->second;
}

void add_units(Catalogue& c, int index) {
  const Case& box = c.kit.cases[static_cast<std::size_t>(index)];
  const int first = static_cast<int>(c.units.size());
  for (int number = 1; number <= box.count; ++number) {
    CaseUnit unit;
    unit.case_index = index;
    unit.number = number;
    unit.code = box.count == 1 ? box.code.value : box.code.value + "-" + std::to_string(number);
    unit.home = box.home;
    unit.weighed = box.weighed;
    c.unit_by_code.emplace(unit.code, static_cast<int>(c.units.size()));
    c.units.push_back(std::move(unit));
  }
  c.units_of.emplace_back(first, static_cast<int>(c.units.size()));
}

void apply_change(Catalogue& c, const UnitChange& change) {
  const int index = c.unit_index(change.code.value);
  if (index < 0) return;  // told by the reader
  CaseUnit& unit = c.units[static_cast<std::size_t>(index)];
  if (change.out_of_service) unit.out_of_service = change.out_of_service;
  if (change.weighed) unit.weighed = change.weighed;
  if (change.home) unit.home = change.home->value;
}

void index_words(Catalogue& c) {
  auto add = [](auto& map, const std::string& word, int index) {
    auto& list = map[word];
    if (list.empty() || list.back() != index) list.push_back(index);
  };
  for (int i = 0; i < static_cast<int>(c.kit.items.size()); ++i) {
    const Item& item = c.kit.items[static_cast<std::size_t>(i)];
    add(c.items_by_word, item.code.value, i);
    for (const Text& word : item.serves) add(c.items_by_word, word.value, i);
  }
  for (int i = 0; i < static_cast<int>(c.kit.cases.size()); ++i) {
    const Case& box = c.kit.cases[static_cast<std::size_t>(i)];
    add(c.cases_by_word, box.code.value, i);
    for (const Text& word : box.serves) add(c.cases_by_word, word.value, i);
  }
}

/// Mass of one content line; false when the item has none. What is used up weighs by what is left.
bool add_content(const Catalogue& c, const Content& content, Mass& sum) {
  const Item* item = c.item(content.item.value);
  if (!item || !item->mass) return false;
  double pieces = content.count;
  if (content.left && item->each && item->each->value.si() > 0)
    pieces = std::min(pieces, content.left->value / item->each->value);
  if (content.left_volume && item->each_volume && item->each_volume->value.si() > 0)
    pieces = std::min(pieces, content.left_volume->value / item->each_volume->value);
  sum += item->mass->value * pieces;
  return true;
}

}  // namespace

Catalogue make_catalogue(Kit kit) {
  Catalogue c;
  c.kit = std::move(kit);
  for (int i = 0; i < static_cast<int>(c.kit.items.size()); ++i)
    c.item_by_code.emplace(c.kit.items[static_cast<std::size_t>(i)].code.value, i);
  for (int i = 0; i < static_cast<int>(c.kit.cases.size()); ++i) {
    c.case_by_code.emplace(c.kit.cases[static_cast<std::size_t>(i)].code.value, i);
    add_units(c, i);
  }
  for (int i = 0; i < static_cast<int>(c.kit.structures.size()); ++i)
    c.structure_by_code.emplace(c.kit.structures[static_cast<std::size_t>(i)].code.value, i);
  for (int i = 0; i < static_cast<int>(c.kit.vehicles.size()); ++i)
    c.vehicle_by_code.emplace(c.kit.vehicles[static_cast<std::size_t>(i)].code.value, i);
  for (const UnitChange& change : c.kit.changes) apply_change(c, change);
  index_words(c);
  return c;
}

int Catalogue::item_index(std::string_view code) const { return find(item_by_code, code); }
int Catalogue::case_index(std::string_view code) const { return find(case_by_code, code); }
int Catalogue::unit_index(std::string_view code) const { return find(unit_by_code, code); }

const Item* Catalogue::item(std::string_view code) const {
  const int i = item_index(code);
  return i < 0 ? nullptr : &kit.items[static_cast<std::size_t>(i)];
}
const Case* Catalogue::case_of(std::string_view code) const {
  const int i = case_index(code);
  return i < 0 ? nullptr : &kit.cases[static_cast<std::size_t>(i)];
}
const Structure* Catalogue::structure(std::string_view code) const {
  const int i = find(structure_by_code, code);
  return i < 0 ? nullptr : &kit.structures[static_cast<std::size_t>(i)];
}
const Vehicle* Catalogue::vehicle(std::string_view code) const {
  const int i = find(vehicle_by_code, code);
  return i < 0 ? nullptr : &kit.vehicles[static_cast<std::size_t>(i)];
}

const std::vector<int>& Catalogue::items_serving(std::string_view word) const {
  static const std::vector<int> none;
  const auto at = items_by_word.find(std::string(word));
  return at == items_by_word.end() ? none : at->second;
}
const std::vector<int>& Catalogue::cases_serving(std::string_view word) const {
  static const std::vector<int> none;
  const auto at = cases_by_word.find(std::string(word));
  return at == cases_by_word.end() ? none : at->second;
}
bool Catalogue::knows(std::string_view word) const {
  return !items_serving(word).empty() || !cases_serving(word).empty();
}

UnitMass Catalogue::mass_of(int index) const {
  const CaseUnit& unit = units[static_cast<std::size_t>(index)];
  const Case& box = kit.cases[static_cast<std::size_t>(unit.case_index)];
  UnitMass out;
  bool complete = box.empty.has_value();
  Mass sum = box.empty ? box.empty->value : Mass();
  for (const Content& content : box.holds) complete = add_content(*this, content, sum) && complete;
  out.summed = sum;
  out.summed_known = complete;
  if (unit.weighed) {
    out.mass = unit.weighed->value;
    out.known = true;
  } else if (box.travels) {
    out.mass = box.travels->value;
    out.known = true;
  } else {
    out.mass = sum;
    out.known = complete;
    out.estimated = !box.holds.empty() || !complete;
  }
  out.as_ballast = box.filled ? box.filled->value : out.mass;
  return out;
}

}  // namespace dunnage
