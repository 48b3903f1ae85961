// SPDX-License-Identifier: MIT
#include "document/return_sheet.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/shelf_walk.h"

namespace dunnage {
namespace {

bool scanned(const Context& context, int unit, Stage from) {
  return context.tally && context.tally->stage >= from && context.tally->is_present(unit);
}

/// The first box is for the vehicle, the second for the shelf: a scan on the way back means the second.
Cell tick_or_said(const Context& context, int unit, Stage from) {
  return scanned(context, unit, from) ? strong_cell(context.words("return.scanned")) : tick_cell();
}

const char* stage_key(Stage stage) {
  return stage == Stage::out ? "stage.out" : stage == Stage::loaded ? "stage.loaded" : "stage.back";
}

/// What the lists of scans do not have, and where each was seen last.
std::vector<std::string> still_out(const Context& context, const std::vector<const PlanRow*>& rows) {
  std::vector<std::string> lines;
  if (!context.tally) return lines;
  for (const MissingUnit& one : context.tally->missing) {
    const auto here = [&](const PlanRow* row) { return row->unit == one.unit; };
    if (std::none_of(rows.begin(), rows.end(), here)) continue;
    const auto& unit = context.catalogue.units[static_cast<std::size_t>(one.unit)];
    const std::string thing = unit.code + "  " + name_in(context.catalogue.case_at(one.unit), context.words.language);
    const std::string last =
        one.last ? context.words.say("return.last-seen", {{"stage", context.words(stage_key(one.last->stage))},
                                                          {"list", joined({one.last->list, one.last->time}, ", ")}})
                 : context.words("return.never-seen");
    lines.push_back(
        thing + ": " +
        joined({last, one.pulled_by.empty() ? "" : context.words.say("return.pulled-by", {{"who", one.pulled_by}})},
               "; "));
  }
  return lines;
}

block::Table return_table(const Context& context, const std::vector<const PlanRow*>& rows) {
  const Words& words = context.words;
  block::Table table = make_table(words, {{"back", "return.back"},
                                          {"shelved", "return.shelved"},
                                          {"code", "unit.code"},
                                          {"name", "pull.what"},
                                          {"looks", "pull.looks"},
                                          {"of", "pull.of"},
                                          {"mass", "unit.mass"},
                                          {"handling", "pull.handling"},
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
        {{tick_or_said(context, row->unit, Stage::loaded), tick_or_said(context, row->unit, Stage::back),
          text_cell(code_of(context.catalogue, *row)), text_cell(name_in(box, words.language)), text_cell(box.looks),
          text_cell(of_words(context, row->unit)), text_cell(mass_words(words, *row, context.units)),
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
  add_notice(section, "still-out", words("return.still-out"), still_out(context, load.rows));
  add(section, "rows", return_table(context, by_place(context.show, load.rows)));
  add(section, "note", block::Paragraph{words("return.note")});
  add(section, "missing", block::Fill{{words("return.missing"), words("return.missing")}});
  add(section, "end",
      block::Signature{count_words(words, "return.complete-one", "return.complete-many", pieces),
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
