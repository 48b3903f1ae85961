// SPDX-License-Identifier: MIT
#include "plan/counts.h"

#include <algorithm>

#include "model/facts.h"
#include "plan/rule_words.h"

namespace dunnage {

namespace {

using Value = std::variant<bool, double, std::string>;

bool equals(const FactValue& fact, const Value& typed) {
  if (const bool* yes = std::get_if<bool>(&fact))
    return std::holds_alternative<bool>(typed) && *yes == std::get<bool>(typed);
  if (const double* n = std::get_if<double>(&fact))
    return std::holds_alternative<double>(typed) && *n == std::get<double>(typed);
  const auto& words = std::get<std::vector<std::string>>(fact);
  return std::holds_alternative<std::string>(typed) &&
         std::find(words.begin(), words.end(), std::get<std::string>(typed)) != words.end();
}

bool meets(const Condition& condition, const FactValue& fact) {
  if (condition.kind == Condition::Kind::any_of)
    return std::any_of(condition.values.begin(), condition.values.end(),
                       [&](const Value& v) { return equals(fact, v); });
  const double* measured = std::get_if<double>(&fact);
  const double* bound = condition.values.empty() ? nullptr : std::get_if<double>(&condition.values.front());
  if (!measured || !bound) return false;
  return condition.kind == Condition::Kind::from ? *measured >= *bound : *measured <= *bound;
}

bool holds(const Catalogue& catalogue, const Show& show, const Condition& condition) {
  const auto value = fact(catalogue, show, condition.fact);
  return value && meets(condition, *value);
}

bool all_hold(const Catalogue& catalogue, const Show& show, const ConditionTable& table) {
  return std::all_of(table.all.begin(), table.all.end(), [&](const Condition& c) { return holds(catalogue, show, c); });
}

/// Metres of run, or of crossing, that a `per` counts.
Length total_length(const Show& show, const Per& per) {
  Length total;
  for (const Run& run : show.runs) {
    const bool narrowed = per.floor || per.crossed_by || per.of == "crossing";
    if (!narrowed) {
      if (const auto length = length_of(run)) total += *length * run.count;
      continue;
    }
    for (const Crossing& over : run.over) {
      if (per.floor && (!over.floor || over.floor->value != per.floor->value)) continue;
      if (per.crossed_by && (!over.crossed_by || over.crossed_by->value != per.crossed_by->value)) continue;
      const auto& length = per.of == "crossing" ? over.crossing : over.length;
      if (length) total += length->value * run.count;
    }
  }
  return total;
}

double structures(const Catalogue& catalogue, const Show& show, const std::string& wanted) {
  return static_cast<double>(std::count_if(show.uses.begin(), show.uses.end(), [&](const Use& use) {
    if (use.structure.value == wanted) return true;
    const Structure* s = catalogue.structure(use.structure.value);
    return s && word(s->kind) == wanted;
  }));
}

double total(const Catalogue& catalogue, const Show& show, const Per& per) {
  auto stated = [](const Maybe<int>& n) { return n ? static_cast<double>(n->value) : 0.0; };
  if (per.of == "structure") return structures(catalogue, show, per.structure.value);
  if (per.of == "crew") return stated(show.crew);
  if (per.of == "volunteers") return stated(show.volunteers);
  if (per.of == "audience") return stated(show.audience);
  if (per.of == "input") return static_cast<double>(show.inputs.size());
  if (per.of == "mix") return static_cast<double>(show.mixes.size());
  if (per.of == "hour") return show.hours ? show.hours->value / unit::hour : 0.0;
  if (per.of == "day") return 1.0;
  if (per.every_is_length) return total_length(show, per) / unit::metre;
  return static_cast<double>(show.runs.size());
}

}  // namespace

std::optional<Sentence> holds(const Catalogue& catalogue, const Show& show, const Goes& goes) {
  if (goes.kind == Goes::Kind::always) return said("it goes to every show");
  if (goes.kind != Goes::Kind::when) return std::nullopt;
  for (const ConditionTable& table : goes.any) {
    if (!all_hold(catalogue, show, table)) continue;
    Sentence out;
    for (const Condition& condition : table.all) {
      const Sentence words = words_for(catalogue, show, condition);
      out = out.empty() ? words : said("{} and {}", out, words);
    }
    return out;
  }
  return std::nullopt;
}

Sentence why_none_holds(const Catalogue& catalogue, const Show& show, const Goes& goes) {
  std::vector<Sentence> told;
  for (const ConditionTable& table : goes.any)
    for (const Condition& condition : table.all) {
      if (holds(catalogue, show, condition)) continue;
      const Sentence words = words_against(catalogue, show, condition);
      if (std::find(told.begin(), told.end(), words) == told.end()) told.push_back(words);
      break;  // one that fails is reason enough
    }
  Sentence out;
  for (const Sentence& words : told) out = out.empty() ? words : said("{}, and {}", out, words);
  return out;
}

int sent(const Catalogue& catalogue, const Show& show, const Per& per) {
  if (per.every <= 0) return 0;
  return static_cast<int>(steps_up(total(catalogue, show, per) / per.every)) * per.send;
}

Sentence words(const Catalogue& catalogue, const Show& show, const Per& per) {
  return words_for(catalogue, show, per, total(catalogue, show, per));
}

std::optional<Length> length_of(const Run& run) {
  if (run.length) return run.length->value;
  Length sum;
  bool any = false;
  for (const Crossing& over : run.over)
    if (over.length) {
      sum += over.length->value;
      any = true;
    }
  return any ? std::optional<Length>(sum) : std::nullopt;
}

}  // namespace dunnage
