// SPDX-License-Identifier: MIT
#include "document/load_sheet.h"

#include <algorithm>
#include <cmath>

#include "document/form.h"
#include "document/load_order.h"
#include "document/load_pictures.h"
#include "document/phrase.h"
#include "document/said.h"
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

block::Facts load_facts(const Context& context, const VehicleLoad& load, const BuiltLoad& built) {
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
  if (built.detail && !built.detail->stages.empty()) {
    const LoadStage& first = built.detail->stages.front();
    add_fact(facts, words("load.left-right"),
             print(first.left, context.units, Rounding::up).text() + " / " +
                 print(first.right, context.units, Rounding::up).text());
  }
  std::vector<std::string> stops;
  if (const Load* typed = load_of(context.show, load.code))
    for (const Text& stop : typed->stops) stops.push_back(place_words(context.show, stop.value));
  add_fact(facts, words("load.stops"), joined(stops, ", "));
  return facts;
}

/// What the checks say against this load, where anything.
std::vector<std::string> against(const Context& context, const std::string& vehicle) {
  std::vector<std::string> lines;
  for (const Finding* finding : findings_about(context, vehicle))
    if (finding->outcome == Outcome::over || finding->outcome == Outcome::not_checked)
      lines.push_back(context.words.say(finding->says));
  return lines;
}

/// What may be aboard at every stage: what rests on a hitch changes on the way.
std::optional<Mass> least_cargo(const std::vector<LoadStage>& stages) {
  std::optional<Mass> least;
  for (const LoadStage& s : stages)
    if (s.most_cargo) least = std::min(least.value_or(*s.most_cargo), *s.most_cargo);
  return least;
}

/// One row a stage: what rests where, and what each may bear at most.
block::Table weights_table(const Context& context, const BuiltLoad& built) {
  const Words& words = context.words;
  block::Table table = make_table(words, {{"when", "load.when"},
                                          {"cargo", "load.cargo"},
                                          {"left", "load.left"},
                                          {"right", "load.right"},
                                          {"front", "load.front"},
                                          {"rear", "load.rear-axle"},
                                          {"axle", "load.axle"},
                                          {"tongue", "load.tongue"},
                                          {"share", "load.share"},
                                          {"total", "load.total"},
                                          {"train", "load.train"}});
  const auto up = [&](const std::optional<Mass>& mass) {
    return text_cell(mass ? print(*mass, context.units, Rounding::up).text() : std::string());
  };
  const LoadStage& first = built.detail->stages.front();
  // Beside a figure stands its limit, or that nobody gave one.
  const auto most = [&](const Maybe<Mass>& mass, const std::optional<Mass>& figure) {
    return strong_cell(mass     ? print(mass->value, context.units, Rounding::down).text()
                       : figure ? words("walk.not-given")
                                : std::string());
  };
  const auto percent = [](double share) { return plain(std::round(share * 1000) / 10, 1) + " %"; };
  Group group;
  for (const LoadStage& s : built.detail->stages) {
    const std::string number = std::to_string(group.rows.size() + 1);  // the dots of the chart have it too
    group.rows.push_back(
        {{strong_cell(number + "  " + stage_words(context, s.after)), up(s.cargo), up(s.left), up(s.right), up(s.front),
          up(s.rear), up(s.axle), up(s.tongue), text_cell(s.tongue_share ? percent(*s.tongue_share) : std::string()),
          up(s.total), up(s.train)}});
  }
  const Vehicle& v = *built.vehicle;
  const bool window = v.tongue_from && v.tongue_to;
  const std::optional<Mass> least = least_cargo(built.detail->stages);
  const Cell cargo = strong_cell(least ? print(*least, context.units, Rounding::down).text() : words("walk.not-given"));
  // A van that pulls nothing has a hitch, and nothing on it.
  const Cell tongue = first.tongue || v.kind == Vehicle::Kind::trailer ? most(v.limit_tongue, first.tongue) : Cell{};
  const Cell train = first.train ? most(v.train, first.train) : Cell{};
  group.rows.push_back({{strong_cell(words("load.at-most")),
                         cargo,
                         {},
                         {},
                         most(v.limit_front, first.front),
                         most(v.limit_rear, first.rear),
                         most(v.limit_axle, first.axle),
                         tongue,
                         strong_cell(window ? words.say("load.window", {{"from", percent(v.tongue_from->value)},
                                                                        {"to", percent(v.tongue_to->value)}})
                                            : std::string()),
                         most(v.gross, first.total),
                         train}});
  table.groups.push_back(std::move(group));
  drop_empty_columns(table, {"front", "rear", "axle", "tongue", "share", "total", "train"});
  return table;
}

/// Straps, load bars and what tips by itself, each with the rule that asks for it.
std::vector<std::string> tie_lines(const Context& context, const LoadingDetail& d) {
  const Words& words = context.words;
  const auto mass = [&](Mass m) { return print(m, context.units, Rounding::up).text(); };
  std::vector<std::string> lines{words.say(d.blocked ? "load.ties-blocked" : "load.ties",
                                           {{"n", std::to_string(d.tie_downs)},
                                            {"mass", mass(d.straps_hold)},
                                            {"length", print(d.length, context.units, Rounding::up).text()}})};
  for (const LoadBar& bar : d.bars)
    lines.push_back(words.say(bar.ahead ? "load.bar-ahead" : "load.bar-line",
                              {{"when", stage_words(context, bar.stop)},
                               {"at", print_small(bar.at, context.units, Rounding::nearest).text()},
                               {"mass", mass(bar.holds)}}));
  if (!d.tips.empty()) lines.push_back(words.say("load.tips", {{"codes", joined(d.tips, ", ")}}));
  for (const char* key : {"load.caution-wheels", "load.caution-again", "load.caution-weigh"})
    lines.push_back(words(key));
  return lines;
}

/// Whence the figures of a vehicle come, and what they take for granted.
std::string source_words(const Context& context, const std::string& vehicle) {
  const std::vector<const Finding*> told = findings_about(context, vehicle);
  const std::string from = list_words(told, &Finding::sources, context.words),
                    taken = list_words(told, &Finding::assumptions, context.words);
  if (from.empty()) return {};
  return taken.empty() ? context.words.say("walk.sources", {{"sources", from}})
                       : context.words.say("ballast.sources", {{"sources", from}, {"assumed", taken}});
}

block::Table order_table(const Context& context, const VehicleLoad& load, const BuiltLoad& built) {
  const Words& words = context.words;
  const bool planned = !built.pieces.empty();
  block::Table table = planned ? make_table(words, {{"loaded", "pull.loaded"},
                                                    {"number", "load.number"},
                                                    {"code", "unit.code"},
                                                    {"name", "pull.what"},
                                                    {"stands", "load.stands"},
                                                    {"stop", "load.stop"},
                                                    {"mass", "unit.mass"},
                                                    {"handling", "pull.handling"}})
                               : make_table(words, {{"loaded", "pull.loaded"},
                                                    {"number", "load.number"},
                                                    {"code", "unit.code"},
                                                    {"name", "pull.what"},
                                                    {"mass", "unit.mass"},
                                                    {"handling", "pull.handling"},
                                                    {"stack", "load.stack"}});
  table.groups = planned ? built_groups(context, built, load) : loading_groups(context, load);
  set_total(table,
            {{"name", count_words(words, "pull.total-one", "pull.total-many", static_cast<long>(load.rows.size()))},
             {"mass", sum_of(load.rows, context.units).text(words)}});
  if (!planned) drop_empty_columns(table, {"stack"});
  const Load* typed = load_of(context.show, load.code);
  if (planned && (!typed || typed->stops.empty())) drop_column(table, "stop");
  return table;
}

Section load_section(const Context& context, const VehicleLoad& load) {
  const Words& words = context.words;
  const BuiltLoad built = built_load(context, load.code);
  const bool planned = !built.pieces.empty();
  Section section{load.says, {}};
  if (context.plan.loading) add_notice(section, "over", words("load.against"), against(context, load.code));
  add_facts(section, "facts", load_facts(context, load, built));
  add(section, "note", block::Paragraph{words(planned ? "load.note-planned" : "load.note")});
  if (planned) {
    add(section, "views", block::Picture{load_views(context, built)});
    add(section, "row-views", block::Picture{row_views(context, built)});
  }
  add(section, "rows", order_table(context, load, built));
  if (planned && built.detail) {
    add(section, "weights", weights_table(context, built));
    add_listing(section, "ties", words("load.ties-head"), tie_lines(context, *built.detail));
    if (std::optional<picture::Chart> chart = load_chart(context, built)) add(section, "chart", block::Picture{*chart});
  }
  add(section, "end", block::Signature{words("load.complete"), {words("sign.by"), words("sign.time")}});
  if (const std::string sources = source_words(context, load.code); !sources.empty())
    add(section, "sources", block::Paragraph{sources});
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
