// SPDX-License-Identifier: MIT
#include "document/walk_stops.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/said.h"
#include "document/shelf_walk.h"

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

std::vector<Row> way_in(const Context& context) {
  const Words& words = context.words;
  const Site& site = context.show.site;
  const std::string gate = site.gate.empty() ? words("walk.the-gate") : site.gate;
  const std::string address = site.emergency_address.empty() ? words("walk.not-given") : site.emergency_address;
  std::vector<Row> rows = {line(words.say("walk.ambulance", {{"gate", gate}}), words("walk.ambulance-state")),
                           line(words("walk.exits"), words("walk.exits-state")),
                           line(words.say("walk.address", {{"address", address}}), words("walk.address-state"))};
  std::vector<std::string> permits, dates;
  for (const Text& permit : site.permits) permits.push_back(permit.value);
  if (!permits.empty())
    rows.push_back(line(words.say("walk.permits", {{"permits", joined(permits, ", ")}}), words("walk.permits-state")));
  for (const PlanRow* row : rows_to_pull(context)) {
    const Case& box = context.catalogue.case_at(row->unit);
    if (box.inspect_by) dates.push_back(code_of(context.catalogue, *row) + " " + box.inspect_by->value.iso());
  }
  rows.push_back(line(words("walk.first-aid"), words("walk.first-aid-state")));
  if (!dates.empty())
    rows.push_back(line(words.say("walk.inspect", {{"dates", joined(dates, ", ")}}), words("walk.inspect-state")));
  return rows;
}

/// Cable runs that are crossed that way, "foh to stage (12 ft)".
std::string crossed_runs(const Context& context, std::string_view by) {
  std::vector<std::string> runs;
  for (const Run& run : context.show.runs)
    for (const Crossing& crossing : run.over) {
      if (!crossing.crossed_by || crossing.crossed_by->value != by) continue;
      std::string text = context.words.say("run.from-to", {{"from", place_words(context.show, run.from)},
                                                           {"to", place_words(context.show, run.to)}});
      if (crossing.crossing)
        text += " (" + print(crossing.crossing->value, context.units, Rounding::up).text() + ")";
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
  rows.push_back(line(feet.empty() ? words("walk.cables") : words.say("walk.feet", {{"runs", feet}}),
                      words("walk.cables-state")));
  if (outdoors(context.show)) rows.push_back(line(words("walk.holes"), words("walk.holes-state")));
  if (dark(context.show)) rows.push_back(line(words("walk.lit"), words("walk.lit-state")));
  return rows;
}

/// The findings about one use that apply.
std::vector<const Finding*> about(const Context& context, const Use& use) {
  std::vector<const Finding*> found;
  for (const Finding& finding : context.findings.list)
    if (finding.subject == use.as.value && finding.outcome != Outcome::does_not_apply) found.push_back(&finding);
  return found;
}

/// "NW 2 x BAG; NE 2 x BAG", or "each leg 2 x BAG" where all are alike.
std::string leg_words(const Words& words, const Finding& finding) {
  const CanopyDetail* detail = std::get_if<CanopyDetail>(&finding.detail);
  if (!detail || detail->legs.empty()) return {};
  const auto same = [&](const LegRow& row) { return row.stands == detail->legs.front().stands; };
  const auto stands = [&](const LegRow& row) { return row.stands.empty() ? words("walk.nothing") : row.stands; };
  if (std::all_of(detail->legs.begin(), detail->legs.end(), same))
    return words.say("walk.each-leg", {{"stands", stands(detail->legs.front())}});
  std::vector<std::string> legs;
  for (const LegRow& row : detail->legs) legs.push_back(row.leg + " " + stands(row));
  return joined(legs, "; ");
}

std::vector<Row> standing(const Context& context) {
  const Words& words = context.words;
  std::vector<Row> rows;
  for (const Use& use : context.show.uses) {
    const std::string name = use.as.value + ": " + use_words(context, use);
    const std::vector<const Finding*> found = about(context, use);
    if (found.empty()) rows.push_back(line(name, words("outcome.not-checked")));
    for (const Finding* finding : found) {
      const std::string head = finding == found.front() ? name : std::string();
      rows.push_back(finding_line(words, joined({head, leg_words(words, *finding), said(*finding)}, "\n"), *finding));
    }
  }
  if (!context.show.uses.empty()) rows.push_back(line(words("walk.legs"), words("walk.legs-state")));
  rows.push_back(line(words("walk.stands"), words("walk.stands-state")));
  rows.push_back(line(words("walk.bonds"), words("walk.bonds-state")));
  return rows;
}

std::vector<Row> power(const Context& context) {
  const Words& words = context.words;
  std::vector<std::string> supplies;
  for (const Supply& supply : context.show.supplies) supplies.push_back(supply.name.value);
  const std::string names = supplies.empty() ? words("walk.each-supply") : joined(supplies, ", ");
  std::vector<Row> rows = {line(words("walk.earth-fault"), words("walk.earth-fault-state")),
                           line(words("walk.plugs"), words("walk.plugs-state")),
                           line(words.say("walk.main-switch", {{"supplies", names}}), words("walk.main-switch-state"))};
  if (outdoors(context.show)) rows.insert(rows.begin() + 2, line(words("walk.dry"), words("walk.dry-state")));
  return rows;
}

std::vector<Row> stage(const Context& context) {
  const Words& words = context.words;
  std::vector<Row> rows = {line(words("walk.edges"), words("walk.edges-state")),
                           line(words("walk.brakes"), words("walk.brakes-state"))};
  if (!context.show.site.radio_channel.empty())
    rows.push_back(line(words.say("walk.radio", {{"channel", context.show.site.radio_channel}}),
                        words("walk.radio-state")));
  if (!context.show.site.curfew.empty())
    rows.push_back(line(words.say("walk.curfew", {{"curfew", context.show.site.curfew}}), words("walk.curfew-state")));
  return rows;
}

std::vector<const Finding*> lifts_to_show(const Context& context) {
  std::vector<const Finding*> lifts = worst_lifts(context.findings);
  if (lifts.size() > lifts_on_walk) lifts.resize(lifts_on_walk);
  return lifts;
}

/// "FOH-1  Front-of-house trunk, 81 lb", what is found, and the outcome or the aid.
std::vector<Row> lifting(const Context& context) {
  std::vector<Row> rows;
  for (const Finding* finding : lifts_to_show(context)) {
    const int unit = context.catalogue.unit_index(finding->subject);
    const PlanRow* row = unit < 0 ? nullptr : &context.plan.rows[static_cast<std::size_t>(unit)];
    std::string item = finding->subject;
    if (row)
      item += "  " + joined({name_in(context.catalogue.case_at(unit), context.words.language),
                             mass_words(context.words, *row, context.units)}, ", ");
    const Handling* handling = std::get_if<Handling>(&finding->detail);
    const bool by_aid = finding->outcome == Outcome::does_not_apply && handling;
    rows.push_back(line(joined({item, finding->says}, "\n"), by_aid ? lift_words(context.words, *handling)
                                                                   : outcome_words(context.words, finding->outcome)));
  }
  return rows;
}

/// Findings about neither a lift nor a structure in use: over, then not checked, then within.
std::vector<const Finding*> other_findings(const Context& context) {
  std::vector<const Finding*> found;
  for (const Outcome outcome : {Outcome::over, Outcome::not_checked, Outcome::within})
    for (const Finding& finding : context.findings.list) {
      const auto is_subject = [&](const Use& use) { return use.as.value == finding.subject; };
      if (finding.outcome == outcome && finding.rule != "lifting" && found.size() < others_on_walk &&
          std::none_of(context.show.uses.begin(), context.show.uses.end(), is_subject))
        found.push_back(&finding);
    }
  return found;
}

std::vector<Row> others(const Context& context) {
  std::vector<Row> rows;
  for (const Finding* finding : other_findings(context))
    rows.push_back(finding_line(context.words, said(*finding), *finding));
  return rows;
}

std::string under_words(const Words& words, Under under) {
  switch (under) {
    case Under::not_stated: return {};
    case Under::empty: return words("use.under-empty");
    case Under::half_full: return words("use.under-half");
    case Under::full: return words("use.under-full");
  }
  return {};
}

std::string at_height(const Context& context, const Maybe<Length>& at) {
  if (!at) return {};
  return context.words.say("use.at-height", {{"height", print(at->value, context.units, Rounding::up).text()}});
}

/// What a structure carries and what hangs on it.
std::vector<std::string> burden_words(const Context& context, const Use& use) {
  const Words& words = context.words;
  std::vector<std::string> out;
  const auto measures = [&](const Maybe<Mass>& mass, const Maybe<Area>& area, const Maybe<Length>& at) {
    return joined({mass ? print(mass->value, context.units, Rounding::up).text() : std::string(),
                   area ? print(area->value, context.units, Rounding::up).text() : std::string(),
                   at_height(context, at)}, ", ");
  };
  for (const Carried& carried : use.carries) {
    const std::string thing =
        words.say("thing.count", {{"n", std::to_string(carried.count)}, {"name", carried.code.value}});
    out.push_back(words.say("use.carries",
                            {{"what", joined({thing, measures(carried.mass, carried.area, carried.at)}, ", ")}}));
  }
  for (const Hung& hung : use.hung)
    out.push_back(
        words.say("use.hung", {{"what", joined({hung.what.value, measures(hung.mass, hung.area, hung.at)}, ", ")}}));
  return out;
}

}  // namespace

std::string use_words(const Context& context, const Use& use) {
  const Words& words = context.words;
  const Structure* structure = context.catalogue.structure(use.structure.value);
  const std::string name =
      structure && !structure->name.value.empty() ? structure->name.value : use.structure.value;
  std::vector<std::string> walls, parts = {name};
  for (const Text& wall : use.walls) walls.push_back(wall.value);
  if (!use.at_place.empty()) parts.push_back(words.say("use.at", {{"place", place_words(context.show, use.at_place)}}));
  if (!walls.empty()) parts.push_back(words.say("use.walls", {{"walls", joined(walls, ", ")}}));
  parts.push_back(under_words(words, use.under));
  const Maybe<std::string>& ground_typed = use.ground ? use.ground : context.show.site.ground;
  if (ground_typed) parts.push_back(words.say("use.ground", {{"ground", ground_typed->value}}));
  for (std::string& burden : burden_words(context, use)) parts.push_back(std::move(burden));
  return joined(parts, "; ");
}

std::vector<const Finding*> findings_on_walk(const Context& context) {
  std::vector<const Finding*> out = lifts_to_show(context);
  for (const Use& use : context.show.uses)
    for (const Finding* finding : about(context, use)) out.push_back(finding);
  for (const Finding* finding : other_findings(context)) out.push_back(finding);
  return out;
}

block::Table walk_table(const Context& context) {
  const Words& words = context.words;
  block::Table table = make_table(
      words, {{"item", "walk.item"}, {"state", "walk.state"}, {"ok", "walk.ok"}, {"not", "walk.not"}});
  const auto stop = [&](const char* title, std::vector<Row> rows) {
    if (!rows.empty()) table.groups.push_back({words(title), std::move(rows)});
  };
  stop("walk.stop-way-in", way_in(context));
  stop("walk.stop-standing", standing(context));
  stop("walk.stop-power", power(context));
  stop("walk.stop-ground", ground(context));
  stop("walk.stop-stage", stage(context));
  stop("walk.stop-lifting", lifting(context));
  stop("walk.stop-other", others(context));
  return table;
}

}  // namespace dunnage
