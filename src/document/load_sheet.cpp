// SPDX-License-Identifier: MIT
#include "document/load_sheet.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/shelf_walk.h"

namespace dunnage {
namespace {

const Load* load_of(const Show& show, const std::string& vehicle) {
  for (const Load& load : show.loads)
    if (load.vehicle.value == vehicle) return &load;
  return nullptr;
}

/// The rows by stop, the last stop first: what comes off first goes in last. Places that are no stop go in first.
std::vector<Group> loading_groups(const Context& context, const VehicleLoad& load) {
  const Words& words = context.words;
  std::vector<std::string> stops;
  if (const Load* typed = load_of(context.show, load.code))
    for (const Text& stop : typed->stops) stops.push_back(stop.value);
  const auto rank = [&](const std::string& place) {
    return std::find(stops.begin(), stops.end(), place) - stops.begin();
  };
  std::vector<const PlanRow*> rows = by_place(context.show, load.rows);
  std::stable_sort(rows.begin(), rows.end(),
                   [&](const PlanRow* a, const PlanRow* b) { return rank(a->place) > rank(b->place); });
  std::vector<Group> groups;
  std::string last;
  int number = 0;
  for (const PlanRow* row : rows) {
    const std::string title = row->place.empty() ? words("return.no-place") : place_words(context.show, row->place);
    if (groups.empty() || title != last) groups.push_back({title, {}});
    last = title;
    const Handling handling = handling_of(context.findings.handling, row->unit);
    const Case& box = context.catalogue.case_at(row->unit);
    const std::string stack = box.stack ? print(box.stack->value, context.units, Rounding::down).text() : std::string();
    groups.back().rows.push_back(
        {{tick_cell(), text_cell(std::to_string(++number)), text_cell(code_of(context.catalogue, *row)),
          text_cell(name_in(box, words.language)), text_cell(mass_words(words, *row, context.units)),
          text_cell(move_words(words, handling) + "\n" + lift_words(words, handling)), text_cell(stack)}});
  }
  return groups;
}

block::Facts load_facts(const Context& context, const VehicleLoad& load) {
  const Words& words = context.words;
  block::Facts facts;
  add_fact(facts, words("pull.pieces"), std::to_string(load.rows.size()));
  add_fact(facts, words("load.mass"), sum_of(load.rows, context.units).text(words));
  const Vehicle* vehicle = context.catalogue.vehicle(load.code);
  const auto rating = [&](const char* key, const Maybe<Mass>& mass) {
    if (mass) add_fact(facts, words(key), print(mass->value, context.units, Rounding::down).text());
  };
  if (vehicle) {
    rating("load.payload", vehicle->payload);
    rating("load.gross", vehicle->gross);
    if (!vehicle->payload && !vehicle->gross) add_fact(facts, words("load.payload"), words("walk.not-given"));
  }
  std::vector<std::string> stops;
  if (const Load* typed = load_of(context.show, load.code))
    for (const Text& stop : typed->stops) stops.push_back(place_words(context.show, stop.value));
  add_fact(facts, words("load.stops"), joined(stops, ", "));
  return facts;
}

Section load_section(const Context& context, const VehicleLoad& load) {
  const Words& words = context.words;
  Section section{load.says, {}};
  add_facts(section, "facts", load_facts(context, load));
  add(section, "note", block::Paragraph{words("load.note")});
  block::Table table = make_table(words, {{"loaded", "pull.loaded"}, {"number", "load.number"}, {"code", "unit.code"},
                                          {"name", "pull.what"}, {"mass", "unit.mass"},
                                          {"handling", "pull.handling"}, {"stack", "load.stack"}});
  table.groups = loading_groups(context, load);
  set_total(table, {{"name", count_words(words, "pull.total-one", "pull.total-many",
                                         static_cast<long>(load.rows.size()))},
                    {"mass", sum_of(load.rows, context.units).text(words)}});
  drop_empty_columns(table, {"stack"});
  add(section, "rows", std::move(table));
  add(section, "end", block::Signature{words("load.complete"), {words("sign.by"), words("sign.time")}});
  return section;
}

}  // namespace

Made load_sheet(const Context& context) {
  Document document = begin_document(context, "load-sheet", "load.title");
  for (const VehicleLoad& load : vehicle_loads(context))
    if (!load.code.empty()) document.sections.push_back(load_section(context, load));
  if (document.sections.empty()) return Skipped{document.title, context.words("skip.no-vehicle")};
  return document;
}

}  // namespace dunnage
