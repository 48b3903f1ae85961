// SPDX-License-Identifier: MIT
// When a case goes, how many, and what it needs. Rules are data: facts, bounds and words, no formulas.
#include <fmt/format.h>

#include "base/nearest.h"
#include "model/facts.h"
#include "read/kit_sections.h"

namespace dunnage {
namespace {

/// "crew_from" -> the fact "crew" and the bound.
struct FactKey {
  std::string fact;
  Condition::Kind kind = Condition::Kind::any_of;
};

FactKey split(const std::string& key) {
  if (key.ends_with("_from")) return {key.substr(0, key.size() - 5), Condition::Kind::from};
  if (key.ends_with("_to")) return {key.substr(0, key.size() - 3), Condition::Kind::to};
  return {key, Condition::Kind::any_of};
}

bool has_bounds(const FactKind& kind) {
  return kind.type == FactKind::Type::number || kind.type == FactKind::Type::quantity;
}

std::vector<std::string> known_keys() {
  std::vector<std::string> out;
  for (const FactKind& kind : fact_kinds()) {
    out.emplace_back(kind.name);
    if (!has_bounds(kind)) continue;
    out.push_back(std::string(kind.name) + "_from");
    out.push_back(std::string(kind.name) + "_to");
  }
  return out;
}

const Range& range_of(Measure measure) {
  if (measure == Measure::speed) return range::wind;
  if (measure == Measure::temperature) return range::temperature;
  assert(measure == Measure::duration && "each measure of the table of facts has its range here");
  return range::minutes;
}

void read_values(TableReader& table, const std::string& key, const FactKind& kind, Condition& condition) {
  switch (kind.type) {
    case FactKind::Type::yes_no:
      for (const auto& value : table.flags_or_one(key)) condition.values.emplace_back(value.value);
      return;
    case FactKind::Type::number:
      for (const auto& value : table.numbers_or_one(key)) condition.values.emplace_back(value.value);
      return;
    case FactKind::Type::quantity:
      for (const auto& value : table.quantities_or_one(key, range_of(*kind.measure)))
        condition.values.emplace_back(value.value);
      return;
    case FactKind::Type::words:
      for (const Text& value : table.texts_or_one(key)) {
        if (kind.name == "setting" && value.value != "indoor" && value.value != "outdoor") {
          table.error(value.place, fmt::format("\"setting\" cannot be {}", in_quotes(value.value)),
                      "one of: indoor, outdoor");
          continue;
        }
        condition.values.emplace_back(value.value);
      }
      return;
  }
}

void unknown_fact(TableReader& table, const Text& key) {
  const std::vector<std::string> known = known_keys();
  std::string hint = did_you_mean(key.value, known);
  if (hint.empty()) hint = "a rule may ask for: " + listed(known);
  table.error(key.place, in_quotes(key.value) + " is nothing that a show states", hint);
  table.ignore(key.value);
}

ConditionTable read_conditions(TableReader& table) {
  ConditionTable out;
  Condition unused;
  for (const std::string& key : table.learning() ? known_keys() : std::vector<std::string>())
    read_values(table, key, *fact_kind(split(key).fact), unused);
  out.place = table.place();
  const std::vector<Text> keys = table.keys();
  if (keys.empty())
    table.error(table.place(), "a rule of \"goes\" is empty", "write what it depends on, or goes = \"always\"");
  for (const Text& key : keys) {
    const FactKey split_key = split(key.value);
    const FactKind* kind = fact_kind(split_key.fact);
    const bool bound = split_key.kind != Condition::Kind::any_of;
    if (!kind || (bound && !has_bounds(*kind))) {
      unknown_fact(table, key);
      continue;
    }
    Condition condition{split_key.fact, split_key.kind, {}, key.place};
    read_values(table, key.value, *kind, condition);
    if (bound && table.is_list_or_table(key.value))
      table.error(table.place_of_value(key.value), in_quotes(key.value) + " must be one value, not a list",
                  "a bound is one value; a list is for " + in_quotes(split_key.fact) + " alone");
    out.all.push_back(std::move(condition));
  }
  return out;
}

}  // namespace

Goes read_goes(TableReader& section) {
  Goes goes;
  if (section.has("goes")) goes.place = section.place_of_value("goes");
  if (!section.has("goes") || section.is_text("goes")) {
    goes.kind = section.word<Goes::Kind>("goes", {{"always", Goes::Kind::always}, {"asked", Goes::Kind::asked}},
                                         Goes::Kind::unstated);
    return goes;
  }
  goes.kind = Goes::Kind::when;
  section.entries_or_one("goes", [&](TableReader& table) { goes.any.push_back(read_conditions(table)); });
  return goes;
}

namespace {

const WordTable<std::string> counted = {
    {"crew", "crew"}, {"volunteers", "volunteers"}, {"audience", "audience"}, {"input", "input"}, {"mix", "mix"},
    {"run", "run"},   {"crossing", "crossing"},     {"hour", "hour"},         {"day", "day"}};
const WordTable<std::string> crossers = {{"feet", "feet"}, {"wheels", "wheels"}};

void read_every(TableReader& entry, Per& per) {
  const bool of_length = per.of == "run" || per.of == "crossing";
  if (entry.is_text("every") && of_length) {
    per.every_is_length = true;
    const auto every = entry.quantity<Length>("every", range::run_length);
    per.every = every ? every->value / unit::metre : 1;
    return;
  }
  const Sourced<int> every = entry.needed_count("every", 1, 1000000);
  per.every = every.value;
  if (per.of == "crossing" && every.typed())
    entry.error(every.place, "crossings are counted by their length", "write every = \"10 m\"");
}

Per read_one_per(TableReader& entry) {
  Per per;
  per.place = entry.place();
  if (entry.has("structure")) {
    per.of = "structure";
    per.structure = entry.text("structure");
  } else {
    entry.ignore("structure");
    const auto of = entry.word("of", counted);
    if (of) per.of = of->value;
    if (!entry.has("of"))
      entry.error(entry.place(), "an entry of \"per\" has no \"of\"",
                  "write { every = 6, of = \"crew\", send = 1 } or { structure = \"tower\", send = 2 }");
    if (of)
      read_every(entry, per);
    else
      entry.ignore("every");
    per.floor = entry.maybe_text("floor");
    if (const auto by = entry.word("crossed_by", crossers)) per.crossed_by = *by;
    if (of && (per.floor || per.crossed_by) && per.of != "run" && per.of != "crossing")
      entry.error(per.floor ? per.floor->place : per.crossed_by->place,
                  "\"floor\" and \"crossed_by\" narrow runs and crossings only",
                  "write of = \"run\" or of = \"crossing\"");
  }
  per.send = entry.needed_count("send", 1, most_pieces).value;
  return per;
}

}  // namespace

std::vector<Per> read_per(TableReader& section) {
  std::vector<Per> out;
  section.entries("per", [&](TableReader& entry) {
    Per per = read_one_per(entry);
    if (!per.of.empty()) out.push_back(std::move(per));
  });
  return out;
}

std::vector<Need> read_needs(TableReader& section) {
  std::vector<Need> out;
  section.entries("needs", [&](TableReader& entry) {
    Need need;
    need.place = entry.place();
    need.code = entry.text("code");
    need.each = entry.count("each", 1, most_pieces, 0);
    need.once = entry.count("once", 1, most_pieces, 0);
    if (entry.has("each") && entry.has("once"))
      entry.error(entry.place_of_value("once"), "\"each\" and \"once\" stand together",
                  "keep \"each\" (for every unit that goes) or \"once\" (however many go)");
    if (need.each == 0 && need.once == 0) need.each = 1;
    if (!need.code.value.empty()) out.push_back(std::move(need));
  });
  return out;
}

}  // namespace dunnage
