// SPDX-License-Identifier: MIT
#include "document/return_sheet.h"

#include "document/form.h"
#include "document/phrase.h"
#include "document/shelf_walk.h"

namespace dunnage {
namespace {

block::Table return_table(const Context& context, const std::vector<const PlanRow*>& rows) {
  const Words& words = context.words;
  block::Table table = make_table(
      words, {{"back", "return.back"}, {"shelved", "return.shelved"}, {"code", "unit.code"}, {"name", "pull.what"},
              {"looks", "pull.looks"}, {"of", "pull.of"}, {"mass", "unit.mass"}, {"handling", "pull.handling"},
              {"home", "unit.home"}});
  std::string place;
  bool first = true;
  for (const PlanRow* row : rows) {
    if (first || row->place != place)
      table.groups.push_back(
          {row->place.empty() ? words("return.no-place") : place_words(context.show, row->place), {}});
    first = false;
    place = row->place;
    const Case& box = context.catalogue.case_at(row->unit);
    const Handling handling = handling_of(context.findings.handling, row->unit);
    table.groups.back().rows.push_back(
        {{tick_cell(), tick_cell(), text_cell(code_of(context.catalogue, *row)),
          text_cell(name_in(box, words.language)), text_cell(box.looks), text_cell(of_words(context, row->unit)),
          text_cell(mass_words(words, *row, context.units)),
          text_cell(move_words(words, handling) + "\n" + lift_words(words, handling)), text_cell(row->home)}});
  }
  set_total(table, {{"name", count_words(words, "pull.total-one", "pull.total-many", static_cast<long>(rows.size()))},
                    {"mass", sum_of(rows, context.units).text(words)}});
  return table;
}

Section return_section(const Context& context, const VehicleLoad& load) {
  const Words& words = context.words;
  const long pieces = static_cast<long>(load.rows.size());
  Section section{load.says, {}};
  block::Facts facts;
  add_fact(facts, words("pull.pieces"), std::to_string(pieces));
  add_fact(facts, words("unit.mass"), sum_of(load.rows, context.units).text(words));
  add_facts(section, "facts", std::move(facts));
  add(section, "rows", return_table(context, by_place(context.show, load.rows)));
  add(section, "note", block::Paragraph{words("return.note")});
  add(section, "missing", block::Fill{{words("return.missing"), words("return.missing")}});
  add(section, "end", block::Signature{count_words(words, "return.complete-one", "return.complete-many", pieces),
                                       {words("sign.by"), words("sign.time"), words("pull.count")}});
  return section;
}

}  // namespace

Made return_sheet(const Context& context) {
  Document document = begin_document(context, "return-sheet", "return.title");
  for (const VehicleLoad& load : vehicle_loads(context)) document.sections.push_back(return_section(context, load));
  if (document.sections.empty()) return Skipped{document.title, context.words("skip.nothing-goes")};
  return document;
}

}  // namespace dunnage
