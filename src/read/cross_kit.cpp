// SPDX-License-Identifier: MIT
// The kit against itself: what cases hold and need, what rules name, what structures are made of.
#include <algorithm>

#include "read/cross_rooms.h"

namespace dunnage {
namespace {

/// What is left of something used up, against what full ones hold.
template <class Q>
void check_left(const References& refer, const Content& content, const Maybe<Q>& left, const Maybe<Q>& each,
                const Item& item, const char* example) {
  if (!left) return;
  if (!each) {
    refer.diagnostics().error(left->place, "\"left\" needs to know how much a full one holds",
                              std::string("add each = \"") + example + "\" to the item " + in_quotes(item.code.value),
                              item.code.place, "the item");
    return;
  }
  if (left->value > each->value * content.count * (1 + 1e-9))
    refer.diagnostics().error(left->place, "more is left than " + std::to_string(content.count) + " full ones hold",
                              "\"left\" is over all of them together", each->place, "a full one holds this");
}

void check_contents(const References& refer, const Case& box) {
  for (const Content& content : box.holds) {
    if (!refer.item(content.item)) continue;
    const Item& item = *refer.catalogue().item(content.item.value);
    check_left(refer, content, content.left, item.each, item, "50 m");
    check_left(refer, content, content.left_volume, item.each_volume, item, "20 l");
  }
}

void check_rule_words(const References& refer, const Condition& condition) {
  std::vector<std::string> house_words;
  for (const Text& word : refer.catalogue().kit.house.words) house_words.push_back(word.value);
  for (const auto& value : condition.values) {
    const auto* text = std::get_if<std::string>(&value);
    if (!text) continue;
    const Text typed{*text, condition.place};
    if (condition.fact == "structure") refer.structure_or_kind(typed);
    if (condition.fact == "with")
      refer.one_of(typed, house_words, in_quotes(*text) + " is not one of the house's own words",
                   "add it to words = [...] in [house]");
  }
}

void check_case(const References& refer, const Case& box) {
  check_contents(refer, box);
  for (const Need& need : box.needs) {
    refer.word(need.code);
    if (need.code.value == box.code.value)
      refer.diagnostics().error(need.code.place, in_quotes(box.code.value) + " needs itself",
                                "name what goes with it, or take this entry away");
  }
  for (const Per& per : box.per)
    if (per.of == "structure") refer.structure_or_kind(per.structure);
  for (const ConditionTable& table : box.goes.any)
    for (const Condition& condition : table.all) check_rule_words(refer, condition);
  if (box.spare_for) refer.word(*box.spare_for);
  refer.vehicle({box.vehicle, box.vehicle_place});
}

/// A change must name one unit.
void check_unit(const References& refer, const UnitChange& change) {
  const Catalogue& catalogue = refer.catalogue();
  const Case* box = catalogue.case_of(change.code.value);
  if (box && box->count > 1) {
    const std::string code = box->code.value;
    refer.diagnostics().error(change.code.place, in_quotes(code) + " is " + std::to_string(box->count) + " units",
                              "name one of them: " + code + "-1 to " + code + "-" + std::to_string(box->count));
    return;
  }
  if (catalogue.unit_index(change.code.value) >= 0) return;
  std::vector<std::string> units;
  for (const CaseUnit& unit : catalogue.units) units.push_back(unit.code);
  refer.one_of(change.code, units, "no unit has the code " + in_quotes(change.code.value),
               "a case of one has its case's code; of several, CODE-1, CODE-2 ...");
}

/// Only a van has a hitch here.
void check_pulled_by(const References& refer, const Vehicle& trailer) {
  if (!trailer.pulled_by || !refer.vehicle(*trailer.pulled_by) || trailer.kind == Vehicle::Kind::van) return;
  const Text& puller = *trailer.pulled_by;
  if (puller.value == trailer.code.value) {
    refer.diagnostics().error(puller.place, in_quotes(puller.value) + " cannot pull itself",
                              "name the van that pulls it");
    return;
  }
  if (const Vehicle* other = refer.catalogue().vehicle(puller.value); other && other->kind == Vehicle::Kind::trailer)
    refer.diagnostics().error(puller.place, in_quotes(puller.value) + " is a trailer itself",
                              "name the van that pulls this one", other->place, "the trailer");
}

/// What [house] names must be there, else a print would be refused.
void check_house(const References& refer, const House& house, const Surroundings& around) {
  const auto among = [&](const Text& name, const std::vector<std::string>& known, const char* cause, const char* list) {
    if (!known.empty() && !name.value.empty())
      refer.one_of(name, known, cause + in_quotes(name.value), list + listed(known));
  };
  for (const Text& name : house.packet) among(name, around.documents, "there is no document ", "the documents are: ");
  among(house.label_stock, around.stocks, "there is no label stock ", "the stocks are: ");
  for (const Text& name : house.languages)
    among(name, around.languages, "there are no printed words in ", "there are printed words in: ");
  constexpr std::size_t most_languages = 2;  // a third would crowd out the other two
  if (house.languages.size() > most_languages)
    refer.diagnostics().error(house.languages[most_languages].place, "at most two languages have room on one sheet",
                              "name the one that this house prints besides with --lang");
  refer.once_each(house.languages, "language", "keep one of the two");
}

}  // namespace

void check_kit(const References& refer, const Surroundings& around) {
  const Kit& kit = refer.catalogue().kit;
  for (const Item& item : kit.items)
    if (item.joins && item.joins->value != "itself") refer.item(*item.joins);
  for (const Case& box : kit.cases) check_case(refer, box);
  for (const UnitChange& change : kit.changes) check_unit(refer, change);
  for (const Structure& structure : kit.structures)
    for (const Part& part : structure.made_of) refer.box(part.code);
  for (const Vehicle& vehicle : kit.vehicles) check_pulled_by(refer, vehicle);
  check_house(refer, kit.house, around);
}

}  // namespace dunnage
