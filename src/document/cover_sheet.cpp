// SPDX-License-Identifier: MIT
#include "document/cover_sheet.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/said.h"
#include "document/shelf_walk.h"

namespace dunnage {
namespace {

std::string number_words(const Maybe<int>& number) { return number ? std::to_string(number->value) : std::string(); }

block::Facts show_facts(const Context& context) {
  const Words& words = context.words;
  const Show& show = context.show;
  const House& house = context.catalogue.kit.house;
  std::vector<std::string> with;
  for (const Text& word : show.with) with.push_back(word.value);
  block::Facts facts;
  add_fact(facts, words("fact.address"), show.site.address);
  add_fact(facts, words("fact.setting"),
           joined({show.setting ? show.setting->value : std::string(), show.floor ? show.floor->value : std::string()},
                  ", "));
  if (show.after_dark) add_fact(facts, words("fact.after-dark"), words(show.after_dark->value ? "say.yes" : "say.no"));
  add_fact(facts, words("fact.crew"), number_words(show.crew));
  add_fact(facts, words("fact.volunteers"), number_words(show.volunteers));
  add_fact(facts, words("fact.audience"), number_words(show.audience));
  if (show.hours) add_fact(facts, words("fact.hours"), plain(show.hours->value / unit::hour, 1) + " h");
  if (show.preparation_days > 0) add_fact(facts, words("fact.preparation-days"), std::to_string(show.preparation_days));
  if (show.travel_days > 0) add_fact(facts, words("fact.travel-days"), std::to_string(show.travel_days));
  if (show.console)
    add_fact(facts, words("fact.console"), what_words(context.catalogue, show.console->value, words.language));
  add_fact(facts, words("fact.with"), joined(with, ", "));
  add_fact(facts, words("fact.kit"), joined({house.name.value, house.phone.value}, ", "));
  return facts;
}

std::vector<std::string> short_lines(const Context& context) {
  const Words& words = context.words;
  std::vector<std::string> lines;
  for (const Shortage& shortage : context.plan.shortages) {
    std::string line =
        words.say("cover.short-line", {{"what", what_words(context.catalogue, shortage.what, words.language)},
                                       {"wanted", amount_words(shortage, shortage.wanted, context.units)},
                                       {"missing", amount_words(shortage, shortage.missing, context.units)}});
    if (!shortage.because.empty()) line += words.say("say.for", {{"because", words.say(shortage.because)}});
    if (!shortage.nearest.empty()) line += words.say("cover.nearest", {{"what", words.say(shortage.nearest)}});
    lines.push_back(std::move(line));
  }
  return lines;
}

/// Everything that a reader must see first.
void add_notices(const Context& context, Section& section) {
  const Words& words = context.words;
  const std::size_t before = section.blocks.size();
  add_notice(section, "over", words("notice.over"), said_lines(context.findings, Outcome::over, words));
  add_notice(section, "short", words("notice.short"), short_lines(context));
  add_notice(section, "unchecked", words("notice.unchecked"),
             said_lines(context.findings, Outcome::not_checked, words));
  std::vector<std::string> remarks;
  for (const Sentence& remark : context.plan.remarks) remarks.push_back(words.say(remark));
  add_notice(section, "remarks", words("notice.remarks"), std::move(remarks));
  if (section.blocks.size() == before) add(section, "clear", block::Paragraph{words("cover.clear")});
}

Row total_row(const Context& context, const std::string& who, const std::vector<const PlanRow*>& rows) {
  return {{text_cell(who), text_cell(std::to_string(rows.size())),
           text_cell(sum_of(rows, context.units).text(context.words))}};
}

block::Table totals(const Context& context) {
  const Words& words = context.words;
  block::Table table = make_table(words, {{"who", "cover.who"}, {"pieces", "pull.pieces"}, {"mass", "unit.mass"}});
  const std::vector<const PlanRow*> rows = rows_to_pull(context);
  if (!context.show.teams.empty()) {
    Group group{words("cover.by-team"), {}};
    for (const Walk& walk : walks(context)) group.rows.push_back(total_row(context, walk.team, walk.rows));
    table.groups.push_back(std::move(group));
  }
  Group by_vehicle{words("cover.by-vehicle"), {}};
  for (const VehicleLoad& load : vehicle_loads(context))
    by_vehicle.rows.push_back(total_row(context, load.says, load.rows));
  table.groups.push_back(std::move(by_vehicle));
  set_total(table, {{"who", words("cover.all")},
                    {"pieces", std::to_string(rows.size())},
                    {"mass", sum_of(rows, context.units).text(words)}});
  return table;
}

std::vector<std::string> skipped_lines(const Context& context) {
  std::vector<std::string> lines;
  for (const Skipped& skipped : context.skipped) lines.push_back(skipped.document + ": " + skipped.reason);
  return lines;
}

std::vector<std::string> site_lines(const Context& context) {
  const Words& words = context.words;
  std::vector<std::string> lines;
  for (const SiteHas& has : context.show.site.has) {
    std::string line = what_words(context.catalogue, has.what.value, words.language);
    if (has.count > 0) line = words.say("thing.count", {{"n", std::to_string(has.count)}, {"name", line}});
    if (has.volume) line += ", " + print(has.volume->value, context.units, Rounding::down).text();
    if (has.length) line += ", " + print(has.length->value, context.units, Rounding::down).text();
    if (!has.from.empty()) line += words.say("cover.from", {{"from", has.from}});
    lines.push_back(std::move(line));
  }
  return lines;
}

std::vector<std::string> want_lines(const Context& context) {
  const Words& words = context.words;
  std::vector<std::string> lines;
  for (const Want& want : context.show.wants) {
    std::string line = words.say(
        "thing.count",
        {{"n", std::to_string(want.count)}, {"name", what_words(context.catalogue, want.what.value, words.language)}});
    if (want.length) line += ", " + print(want.length->value, context.units, Rounding::up).text();
    if (!want.because.empty()) line += words.say("say.for", {{"because", want.because}});
    lines.push_back(std::move(line));
  }
  return lines;
}

/// "CODE  Name" of the rows that `picks`, in order of the walk.
template <class Picks>
std::vector<std::string> unit_lines(const Context& context, Picks picks) {
  std::vector<std::string> lines;
  for (const PlanRow* row : rows_to_pull(context))
    if (picks(*row))
      lines.push_back(joined(
          {code_of(context.catalogue, *row), name_in(context.catalogue.case_at(row->unit), context.words.language)},
          "  "));
  return lines;
}

std::string override_line(const Words& words, const std::string& key, const Override& typed) {
  const std::string code =
      typed.count > 0 ? words.say("thing.count", {{"n", std::to_string(typed.count)}, {"name", typed.code.value}})
                      : typed.code.value;
  return words.say(key, {{"what", code}, {"because", typed.because}});
}

std::vector<std::string> change_lines(const Context& context) {
  std::vector<std::string> lines;
  for (const Override& typed : context.show.bring) lines.push_back(override_line(context.words, "cover.bring", typed));
  for (const Override& typed : context.show.leave) lines.push_back(override_line(context.words, "cover.leave", typed));
  return lines;
}

std::vector<std::string> out_lines(const Catalogue& catalogue) {
  std::vector<std::string> lines;
  for (const CaseUnit& unit : catalogue.units)
    if (unit.out_of_service) lines.push_back(unit.code + ": " + unit.out_of_service->value);
  return lines;
}

/// How many masses are estimates, and which are not known; empty where all were weighed.
std::string estimate_words(const Context& context) {
  const Words& words = context.words;
  std::vector<std::string> unknown;
  long estimated = 0;
  for (const PlanRow* row : rows_to_pull(context)) {
    if (!row->mass_known)
      unknown.push_back(code_of(context.catalogue, *row));
    else if (row->estimated)
      ++estimated;
  }
  return joined(
      {unknown.empty() ? std::string() : words.say("cover.unknown", {{"codes", joined(unknown, ", ")}}),
       estimated == 0 ? std::string() : count_words(words, "cover.estimated-one", "cover.estimated-many", estimated)},
      "\n");
}

/// A rule as `list rules` calls it, in the language.
std::string rule_name(const Words& words, const Finding& finding) {
  return words.say(Sentence(std::string_view(name(finding.rule)), {}));
}

/// One line a rule, reason and place.
std::vector<std::string> not_applying(const Context& context) {
  std::vector<std::pair<std::string, std::vector<std::string>>> by_reason;
  for (const Finding& finding : context.findings.list) {
    if (finding.outcome != Outcome::does_not_apply) continue;
    const std::string reason =
        told_of(rule_name(context.words, finding), context.words.say(finding.says), context.words) +
        (finding.place.known() ? " (" + context.words.say(finding.place.short_words()) + ")" : std::string());
    const auto same = [&](const auto& line) { return line.first == reason; };
    auto line = std::find_if(by_reason.begin(), by_reason.end(), same);
    if (line == by_reason.end()) line = by_reason.insert(line, {reason, {}});
    line->second.push_back(about(finding, context.words));
  }
  std::vector<std::string> lines;
  for (const auto& [reason, subjects] : by_reason) lines.push_back(joined(subjects, ", ") + ", " + reason);
  return lines;
}

/// Which sentence tells what is known of the choice of cases. What is not weighed comes first: nothing is proved of it.
const char* proof_key(const CoverReport& cover) {
  if (cover.units == 0) return "cover.nothing-chosen";
  if (cover.unweighed > 0) return "cover.unweighed";
  if (!cover.short_proved) return "cover.not-proved-short";
  if (cover.by_units) return cover.proved ? "cover.proved-fewest" : "cover.not-proved-fewest";
  if (!cover.proved) return "cover.not-proved";
  return cover.unweighed_left > 0 ? "cover.proved-weighed" : "cover.proved";
}

/// How good the choice of cases for the show's demands is known to be.
std::string proof_words(const Context& context) {
  const CoverReport& cover = context.plan.cover;
  return context.words.say(proof_key(cover),
                           {{"mass", print(cover.mass, context.units, Rounding::up).text()},
                            {"heavier", print(cover.mass - cover.bound, context.units, Rounding::up).text()},
                            {"units", std::to_string(cover.units)},
                            {"more", std::to_string(cover.units - cover.units_bound)},
                            {"unweighed", std::to_string(cover.unweighed)},
                            {"left", std::to_string(cover.unweighed_left)}});
}

}  // namespace

Made cover(const Context& context) {
  const Words& words = context.words;
  Document document = begin_document(context, "cover", "cover.title");
  Section section;
  add_facts(section, "facts", show_facts(context));
  add_notices(context, section);
  add(section, "totals", totals(context));
  add_listing(section, "packet", words("cover.packet"), context.made);
  add_listing(section, "skipped", words("cover.skipped"), skipped_lines(context));
  add_listing(section, "site", words("cover.site"), site_lines(context));
  add_listing(section, "wants", words("cover.wants"), want_lines(context));
  if (!context.show.teams.empty())
    add_listing(section, "no-team", words("cover.no-team"),
                unit_lines(context, [](const PlanRow& row) { return row.team.empty(); }));
  add_listing(section, "changes", words("cover.changes"), change_lines(context));
  add_listing(section, "out", words("cover.out"), out_lines(context.catalogue));
  const std::string estimates = estimate_words(context);
  if (!estimates.empty()) add(section, "estimates", block::Paragraph{estimates});
  add_listing(section, "not-applying", words("cover.not-applying"), not_applying(context));
  std::vector<const Finding*> all;
  std::vector<std::string> assumed;
  for (const Finding& finding : context.findings.list) all.push_back(&finding);
  for (const Sentence& part : each_once(all, &Finding::assumptions)) assumed.push_back(words.say(part));
  add_listing(section, "assumed", words("cover.assumed"), std::move(assumed));
  add(section, "proof", block::Paragraph{proof_words(context)});
  add(section, "decide", block::Paragraph{who_decides(context)});
  document.sections.push_back(std::move(section));
  return document;
}

}  // namespace dunnage
