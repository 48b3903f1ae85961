// SPDX-License-Identifier: MIT
#include "document/walk_stops.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>

#include "document/form.h"
#include "document/phrase.h"
#include "document/said.h"
#include "document/shelf_walk.h"
#include "document/use_line.h"
#include "document/wind_use.h"

namespace dunnage {
namespace {

constexpr std::size_t lifts_on_walk = 5;   // the five worst
constexpr std::size_t others_on_walk = 6;  // further findings, so that the walk stays on two pages

Row line(std::string item, std::string state) {
  return {{text_cell(std::move(item)), strong_cell(std::move(state)), tick_cell(), tick_cell()}};
}

Row finding_line(const Words& words, const std::string& item, const Finding& finding) {
  return line(item, outcome_words(words, finding.outcome));
}

bool outdoors(const Show& show) { return !show.setting || show.setting->value == "outdoor"; }
bool dark(const Show& show) { return !show.after_dark || show.after_dark->value; }

/// "2028-04-30 MAST-1, MAST-2": what is to be inspected by each day, the first day first.
std::vector<std::string> inspection_dates(const Context& context) {
  std::map<std::string, std::vector<std::string>> by_day;
  for (const PlanRow* row : rows_to_pull(context)) {
    const Case& box = context.catalogue.case_at(row->unit);
    if (box.inspect_by) by_day[box.inspect_by->value.iso()].push_back(code_of(context.catalogue, *row));
  }
  std::vector<std::string> lines;
  for (const auto& [day, codes] : by_day) lines.push_back(day + " " + joined(codes, ", "));
  return lines;
}

std::vector<Row> way_in(const Context& context) {
  const Words& words = context.words;
  const Site& site = context.show.site;
  const std::string gate = site.gate.empty() ? words("walk.the-gate") : site.gate;
  const std::string address = site.emergency_address.empty() ? words("walk.not-given") : site.emergency_address;
  const std::vector<std::string> dates = inspection_dates(context);
  const std::string aid =
      dates.empty() ? words("walk.first-aid") : words.say("walk.first-aid-dates", {{"dates", joined(dates, "; ")}});
  const std::string help = words.say("walk.address", {{"address", address}});
  return {line(words.say("walk.ambulance", {{"gate", gate}}), words("walk.ambulance-state")),
          site.radio_channel.empty()
              ? line(help, words("walk.address-state"))
              : line(joined({help, words.say("walk.radio", {{"channel", site.radio_channel}})}, "; "),
                     words("walk.address-radio-state")),
          line(aid, words("walk.first-aid-state"))};
}

/// Cable runs that are crossed that way, "foh to stage (12 ft)".
std::string crossed_runs(const Context& context, std::string_view by) {
  std::vector<std::string> runs;
  for (const Run& run : context.show.runs)
    for (const Crossing& crossing : run.over) {
      if (!crossing.crossed_by || crossing.crossed_by->value != by) continue;
      std::string text = context.words.say(
          "run.from-to", {{"from", place_words(context.show, run.from)}, {"to", place_words(context.show, run.to)}});
      if (crossing.crossing) text += " (" + print(crossing.crossing->value, context.units, Rounding::up).text() + ")";
      runs.push_back(std::move(text));
    }
  return joined(runs, ", ");
}

std::vector<Row> ground(const Context& context) {
  const Words& words = context.words;
  std::vector<Row> rows;
  if (const std::string wheels = crossed_runs(context, "wheels"); !wheels.empty())
    rows.push_back(line(words.say("walk.wheels", {{"runs", wheels}}), words("walk.wheels-state")));
  const std::string feet = crossed_runs(context, "feet");
  rows.push_back(
      line(feet.empty() ? words("walk.cables") : words.say("walk.feet", {{"runs", feet}}), words("walk.cables-state")));
  const bool holes = outdoors(context.show), lit = dark(context.show);
  if (holes && lit)
    rows.push_back(line(words("walk.holes-lit"), words("walk.holes-lit-state")));
  else if (holes)
    rows.push_back(line(words("walk.holes"), words("walk.holes-state")));
  else if (lit)
    rows.push_back(line(words("walk.lit"), words("walk.lit-state")));
  rows.push_back(line(words("walk.edges"), words("walk.edges-state")));
  return rows;
}

/// "within limit" where all agree, else a line an outcome: "NOT CHECKED: sliding".
std::string outcomes(const Context& context, const Use& use) {
  const Words& words = context.words;
  const std::vector<const Finding*> found = findings_about(context, use);
  if (found.empty()) {
    const Subject subject = subject_in(context.show.uses, use, Subject::Kind::use);
    for (const Finding& finding : context.findings.list)
      if (finding.subject == subject) return words("outcome.does-not-apply") + "\n" + words.say(finding.says);
    return words("outcome.not-checked");
  }
  const auto same = [&](const Finding* finding) { return finding->outcome == found.front()->outcome; };
  if (std::all_of(found.begin(), found.end(), same)) return outcome_words(words, found.front()->outcome);
  std::vector<std::string> lines;
  for (const Outcome outcome : {Outcome::over, Outcome::not_checked, Outcome::within}) {
    std::vector<std::string> rules;
    for (const Finding* finding : found)
      if (finding->outcome == outcome) rules.push_back(rule_words(words, finding->rule));
    if (!rules.empty()) lines.push_back(outcome_words(words, outcome) + ": " + joined(rules, ", "));
  }
  return joined(lines, "\n");
}

std::vector<Row> standing(const Context& context) {
  const Words& words = context.words;
  std::vector<Row> rows;
  const std::vector<WindUse> winds = wind_uses(context);
  // Alike in all but their names are one line: two light trees with the same weights.
  std::vector<std::array<std::string, 3>> lines;  // names, words, outcomes
  for (const Use& use : context.show.uses) {
    std::string down;  // the same figure as on the ballast sheet and the weather card
    for (const WindUse& wind : winds)
      if (wind.use == &use && down_of(wind))
        down = words.say("walk.down-at", {{"gust", level_words(context, down_of(wind))}});
    const std::string all = use_words(context, use), &name = use.as.value;
    const std::string rest = joined({all.starts_with(name) ? all.substr(name.size()) : all, down}, "; ");
    const std::string lacking = joined(short_codes(context, use), ", ");
    const std::string state =
        joined({lacking.empty() ? lacking : words("notice.short") + ": " + lacking, outcomes(context, use)}, "\n");
    const auto same = [&](const auto& l) { return l[1] == rest && l[2] == state; };
    const auto found = std::find_if(lines.begin(), lines.end(), same);
    if (found != lines.end())
      (*found)[0] += " + " + name;
    else
      lines.push_back({all.starts_with(name) ? name : std::string(), rest, state});
  }
  for (const auto& [names, rest, state] : lines) rows.push_back(line(names + rest, state));
  rows.push_back(line(words("walk.legs"), words("walk.legs-state")));
  return rows;
}

std::vector<Row> power(const Context& context) {
  const Words& words = context.words;
  std::vector<std::string> supplies;
  for (const Supply& supply : context.show.supplies) supplies.push_back(supply.name.value);
  const std::string names = supplies.empty() ? words("walk.each-supply") : joined(supplies, ", ");
  return {line(words("walk.earth-fault"), words("walk.earth-fault-state")),
          outdoors(context.show) ? line(words("walk.plugs-outdoors"), words("walk.plugs-outdoors-state"))
                                 : line(words("walk.plugs"), words("walk.plugs-state")),
          line(words.say("walk.main-switch", {{"supplies", names}}), words("walk.main-switch-state"))};
}

/// The five worst, one a case: eight bags alike are one line.
std::vector<const Finding*> lifts_to_show(const Context& context) {
  std::vector<const Finding*> lifts;
  std::vector<int> cases;
  for (const Finding* finding : worst_lifts(context.findings)) {
    const int unit = finding->subject.index;
    const int of = unit < 0 ? -1 : context.catalogue.units[static_cast<std::size_t>(unit)].case_index;
    if (lifts.size() == lifts_on_walk) break;
    if (of >= 0 && std::find(cases.begin(), cases.end(), of) != cases.end()) continue;
    cases.push_back(of);
    lifts.push_back(finding);
  }
  return lifts;
}

}  // namespace

bool has_line_of_its_own(const Finding& finding) {
  return finding.rule != RuleName::lifting && finding.subject.kind != Subject::Kind::use;
}

namespace {

/// Findings about neither a lift nor a structure in use that somebody must decide: over, then not checked. What is
/// within its limit stands on the cover and on the sheet of its kind.
std::vector<const Finding*> other_findings(const Context& context) {
  std::vector<const Finding*> found;
  for (const Outcome outcome : {Outcome::over, Outcome::not_checked})
    for (const Finding& finding : context.findings.list)
      if (finding.outcome == outcome && found.size() < others_on_walk && has_line_of_its_own(finding))
        found.push_back(&finding);
  return found;
}

std::vector<Row> others(const Context& context) {
  std::vector<Row> rows;
  for (const Finding* finding : other_findings(context))
    rows.push_back(finding_line(context.words, said(*finding, context.words), *finding));
  return rows;
}

}  // namespace

std::vector<const Finding*> findings_on_walk(const Context& context) {
  std::vector<const Finding*> out = lifts_to_show(context);
  for (const Use& use : context.show.uses)
    for (const Finding* finding : findings_about(context, use)) out.push_back(finding);
  for (const Finding* finding : other_findings(context)) out.push_back(finding);
  return out;
}

block::Table walk_table(const Context& context) {
  const Words& words = context.words;
  block::Table table =
      make_table(words, {{"item", "walk.item"}, {"state", "walk.state"}, {"ok", "walk.ok"}, {"not", "walk.not"}});
  const auto stop = [&](const char* title, std::vector<Row> rows) {
    if (!rows.empty()) table.groups.push_back({words(title), std::move(rows)});
  };
  stop("walk.stop-way-in", way_in(context));
  stop("walk.stop-standing", standing(context));
  stop("walk.stop-power", power(context));
  stop("walk.stop-ground", ground(context));
  stop("walk.stop-other", others(context));
  return table;
}

namespace {

/// "filter 28 lb, index 1.4" of one person lifting it into the vehicle; empty where it was not worked out.
std::string index_words(const Context& context, const Handling* handling) {
  if (!handling) return {};
  const Words& words = context.words;
  std::string filter, index;
  if (handling->zone_limit)
    filter = words.say("walk.filter", {{"mass", print(*handling->zone_limit, context.units, Rounding::down).text()}});
  if (handling->not_liftable)
    index = words("walk.no-index");
  else if (handling->loading_index)
    index = words.say("walk.index", {{"index", fmt::format("{:.1f}", steps_up(*handling->loading_index * 10) / 10)}});
  return joined({filter, index}, ", ");
}

}  // namespace

namespace {

/// "lift: 2 people, limit 70 lb", or how far beyond lifting by hand it is.
std::string lift_limit_words(const Context& context, const Finding& finding, const Handling* handling) {
  const Words& words = context.words;
  if (!handling) return words.say(finding.says);
  const std::string limit = figure_words(finding.limit, context, Rounding::down);
  const bool by_aid = finding.outcome == Outcome::does_not_apply;
  const std::string of =
      limit.empty() ? std::string() : words.say(by_aid ? "walk.lift-beyond" : "walk.lift-limit", {{"mass", limit}});
  return joined({lift_words(words, *handling), of}, ", ");
}

}  // namespace

block::Table lift_table(const Context& context) {
  block::Table table =
      make_table(context.words, {{"code", ""}, {"name", ""}, {"mass", ""}, {"says", ""}, {"index", ""}, {"state", ""}});
  Group group;
  for (const Finding* finding : lifts_to_show(context)) {
    const int unit = finding->subject.index;
    const Handling* handling = std::get_if<Handling>(&finding->detail);
    const bool by_aid = finding->outcome == Outcome::does_not_apply;
    std::string name, mass;
    if (unit >= 0) {
      name = name_in(context.catalogue.case_at(unit), context.words.language);
      mass = mass_words(context.words, context.plan.rows[static_cast<std::size_t>(unit)], context.units);
    }
    group.rows.push_back(
        {{text_cell(about(*finding, context.words)), text_cell(name), text_cell(mass),
          text_cell(lift_limit_words(context, *finding, handling)), text_cell(index_words(context, handling)),
          strong_cell(by_aid ? std::string() : outcome_words(context.words, finding->outcome))}});
  }
  if (!group.rows.empty()) table.groups.push_back(std::move(group));
  drop_empty_columns(table, {"index", "state"});
  return table;
}

}  // namespace dunnage
