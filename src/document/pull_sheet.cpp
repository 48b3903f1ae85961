// SPDX-License-Identifier: MIT
#include "document/pull_sheet.h"

#include <algorithm>
#include <utility>

#include "base/utf8.h"
#include "document/form.h"
#include "document/phrase.h"
#include "document/shelf_walk.h"

namespace dunnage {
namespace {

/// "3 of 8", and that it is a spare.
std::string number_words(const Context& context, const PlanRow& row) {
  return joined({of_words(context, row.unit), row.spare ? context.words("pull.spare") : std::string()}, "\n");
}

/// The one vehicle of all rows; empty where there are several or a row has none.
std::string only_vehicle(const std::vector<const PlanRow*>& rows) {
  for (const PlanRow* row : rows)
    if (row->vehicle != rows.front()->vehicle) return {};
  return rows.front()->vehicle;
}

Row pull_row(const Context& context, const PlanRow& row, bool say_vehicle) {
  const Words& words = context.words;
  const Handling handling = handling_of(context.findings.handling, row.unit);
  const std::string vehicle = say_vehicle ? vehicle_words(context.catalogue, row.vehicle) : std::string();
  const Case& box = context.catalogue.case_at(row.unit);
  return {tick_cell(),
          tick_cell(),
          text_cell(code_of(context.catalogue, row)),
          text_cell(name_in(box, words.language)),
          text_cell(box.looks),
          text_cell(number_words(context, row)),
          text_cell(mass_words(words, row, context.units)),
          text_cell(move_words(words, handling) + "\n" + lift_words(words, handling)),
          text_cell(joined({place_words(context.show, row.place), vehicle}, "\n"))};
}

block::Table pull_table(const Context& context, const std::vector<const PlanRow*>& rows) {
  const Words& words = context.words;
  block::Table table = make_table(words, {{"pulled", "pull.pulled"},
                                          {"loaded", "pull.loaded"},
                                          {"code", "unit.code"},
                                          {"name", "pull.what"},
                                          {"looks", "pull.looks"},
                                          {"of", "pull.of"},
                                          {"mass", "unit.mass"},
                                          {"handling", "pull.handling"},
                                          {"goes", "pull.goes"}});
  const bool say_vehicle = only_vehicle(rows).empty();
  const std::string* home = nullptr;
  for (const PlanRow* row : rows) {
    if (!home || *home != row->home)
      table.groups.push_back({row->home.empty() ? words("pull.no-home") : row->home, {}});
    home = &row->home;
    table.groups.back().rows.push_back(pull_row(context, *row, say_vehicle));
  }
  set_total(table, {{"name", count_words(words, "pull.total-one", "pull.total-many", static_cast<long>(rows.size()))},
                    {"mass", sum_of(rows, context.units).text(words)}});
  return table;
}

/// True when a stranger could take `other`, which stays, for `mine`, which goes: the same kind of case, or one
/// that looks the same under the same name or on the same shelf.
bool look_alike(const Context& context, const PlanRow& mine, const PlanRow& other) {
  const Case& a = context.catalogue.case_at(mine.unit);
  const Case& b = context.catalogue.case_at(other.unit);
  if (&a == &b) return true;
  if (a.looks.empty() || utf8::lower(a.looks) != utf8::lower(b.looks)) return false;
  return a.name.value == b.name.value || (!mine.home.empty() && mine.home == other.home);
}

/// Units that stay and look like one of these rows, one line a case and home.
std::vector<std::string> stay_lines(const Context& context, const std::vector<const PlanRow*>& rows) {
  std::vector<const PlanRow*> staying;
  for (const PlanRow& other : context.plan.rows) {
    const auto alike = [&](const PlanRow* mine) { return look_alike(context, *mine, other); };
    if (!other.goes && std::any_of(rows.begin(), rows.end(), alike)) staying.push_back(&other);
  }
  sort_by_walk(context.catalogue, staying);
  std::vector<std::string> lines;
  for (std::size_t first = 0; first < staying.size();) {
    const Case& box = context.catalogue.case_at(staying[first]->unit);
    std::vector<std::string> codes;
    std::size_t last = first;
    for (; last < staying.size() && &context.catalogue.case_at(staying[last]->unit) == &box &&
           staying[last]->home == staying[first]->home;
         ++last)
      codes.push_back(code_of(context.catalogue, *staying[last]));
    const std::string what = joined({name_in(box, context.words.language), box.looks, staying[first]->home}, "; ");
    lines.push_back(context.words.say("pull.stays-line", {{"codes", joined(codes, ", ")}, {"what", what}}));
    first = last;
  }
  return lines;
}

/// Who knows the shelves: the first contact whose role has one of the words listed for it, else the house.
std::string who_knows(const Context& context) {
  const std::string roles = context.words("pull.ask-roles");
  for (const Contact& contact : context.show.site.contacts)
    for (std::size_t begin = 0; begin < roles.size();) {
      const std::size_t end = std::min(roles.find(", ", begin), roles.size());
      if (utf8::lower(contact.role.value).find(roles.substr(begin, end - begin)) != std::string::npos)
        return joined({contact.name.value, contact.role.value, contact.phone.value}, ", ");
      begin = end + 2;
    }
  const House& house = context.catalogue.kit.house;
  return joined({house.name.value, house.phone.value}, ", ");
}

Section pull_section(const Context& context, const Walk& walk) {
  const Words& words = context.words;
  Section section{walk.team, {}};
  add(section, "intro", block::Paragraph{words("pull.intro")});
  block::Facts facts;
  const long pieces = static_cast<long>(walk.rows.size());
  add_fact(facts, words("pull.pieces"), std::to_string(pieces));
  add_fact(facts, words("unit.mass"), sum_of(walk.rows, context.units).text(words));
  add_fact(facts, words("unit.vehicle"), vehicle_words(context.catalogue, only_vehicle(walk.rows)));
  add_facts(section, "facts", std::move(facts));
  add(section, "rows", pull_table(context, walk.rows));
  add_listing(section, "stays", words("pull.stays"), stay_lines(context, walk.rows));
  add(section, "ask", block::Paragraph{words.say("pull.ask", {{"who", who_knows(context)}})});
  add(section, "missing", block::Fill{{words("pull.missing"), words("pull.missing")}});
  add(section, "end",
      block::Signature{count_words(words, "pull.complete-one", "pull.complete-many", pieces),
                       {words("pull.by"), words("sign.time"), words("pull.count")}});
  return section;
}

}  // namespace

Made pull_sheet(const Context& context) {
  Document document = begin_document(context, "pull-sheet", "pull.title");
  for (const Walk& walk : walks(context)) document.sections.push_back(pull_section(context, walk));
  if (document.sections.empty()) return Skipped{document.title, context.words("skip.nothing-goes")};
  return document;
}

}  // namespace dunnage
