// SPDX-License-Identifier: MIT
#include "plan/rule_words.h"

#include <fmt/format.h>

#include "base/unit.h"

namespace dunnage {

namespace {

using Value = std::variant<bool, double, std::string>;

/// A number as the house reads it, with its unit.
std::string with_unit(const Catalogue& catalogue, const std::string& fact, double n) {
  const FactKind* kind = fact_kind(fact);
  const bool us = catalogue.kit.house.units == UnitSystem::us;
  if (fact == "rain") return plain(n, 0) + " %";
  if (!kind || !kind->measure) return plain(n, 2);
  switch (*kind->measure) {
    case Measure::duration: return plain(n / 3600, 2) + " h";
    case Measure::speed: return us ? plain(n / 0.44704, 1) + " mph" : plain(n, 1) + " m/s";
    case Measure::temperature:
      return us ? plain(Temperature::kelvin(n).in_fahrenheit(), 1) + " F" : plain(Temperature::kelvin(n).in_celsius(), 1) + " C";
    default: return plain(n, 2);
  }
}

std::string listed(const Catalogue& catalogue, const Condition& condition) {
  std::string out;
  for (const Value& value : condition.values) {
    const double* n = std::get_if<double>(&value);
    const std::string* text = std::get_if<std::string>(&value);
    out += (out.empty() ? "" : " or ") + (n ? with_unit(catalogue, condition.fact, *n) : text ? *text : std::string());
  }
  return out;
}

/// Whether the fact has the value as one of its words.
bool has_word(const FactValue& fact, const Value& value) {
  const auto* words = std::get_if<std::vector<std::string>>(&fact);
  const auto* text = std::get_if<std::string>(&value);
  return words && text && std::find(words->begin(), words->end(), *text) != words->end();
}

/// The values of a condition that the show really has.
std::string met(const Condition& condition, const FactValue& fact) {
  std::string out;
  for (const Value& value : condition.values)
    if (has_word(fact, value)) out += (out.empty() ? "" : " and ") + std::get<std::string>(value);
  return out;
}

std::string subject(const std::string& fact) {
  if (fact == "setting") return "the setting is";
  if (fact == "inputs" || fact == "mixes" || fact == "runs") return fact + " number";
  if (fact == "hours") return "the show takes";
  if (fact == "volunteers") return "volunteers number";
  if (fact == "gust") return "the forecast gust is";
  if (fact == "wind") return "the forecast wind is";
  if (fact == "temperature") return "the forecast temperature is";
  if (fact == "rain") return "the chance of rain is";
  return "the " + fact + " is";
}

std::string actual(const Catalogue& catalogue, const Show& show, const std::string& name) {
  const auto value = fact(catalogue, show, name);
  if (!value) return "not stated";
  if (const double* n = std::get_if<double>(&*value)) return with_unit(catalogue, name, *n);
  const auto* words = std::get_if<std::vector<std::string>>(&*value);
  return words && !words->empty() ? words->front() : "not stated";
}

bool asks_yes(const Condition& condition) {
  return !condition.values.empty() && std::holds_alternative<bool>(condition.values.front()) &&
         std::get<bool>(condition.values.front());
}

std::string plural(const std::string& of) { return of + (of == "mix" ? "es" : "s"); }

}  // namespace

std::string words_for(const Catalogue& catalogue, const Show& show, const Condition& condition) {
  const std::string& name = condition.fact;
  const auto value = fact(catalogue, show, name);
  if (name == "after_dark") return asks_yes(condition) ? "it is after dark" : "it is by daylight";
  const std::string has = value ? met(condition, *value) : std::string();
  if (name == "setting") return "the show is " + has + "s";
  if (name == "with") return "the show is with " + has;
  if (name == "structure") return "a " + has + " stands";
  if (name == "source") return has + (has.find(" and ") == std::string::npos ? " is" : " are") + " on the input list";
  const std::string out = subject(name) + " " + actual(catalogue, show, name);
  if (condition.kind == Condition::Kind::any_of) return out;
  return fmt::format("{} ({} {})", out, condition.kind == Condition::Kind::from ? "from" : "up to", listed(catalogue, condition));
}

std::string words_against(const Catalogue& catalogue, const Show& show, const Condition& condition) {
  const std::string& name = condition.fact;
  const std::string wanted = listed(catalogue, condition);
  if (name == "after_dark") return asks_yes(condition) ? "it is by daylight" : "it is after dark";
  if (name == "setting") return "the show is " + actual(catalogue, show, name) + "s";
  if (name == "with") return "the show is not with " + wanted;
  if (name == "structure") return "no " + wanted + " stands";
  if (name == "source") return "no " + wanted + " is on the input list";
  const char* how = condition.kind == Condition::Kind::from ? "under" : condition.kind == Condition::Kind::to ? "over" : "not";
  return fmt::format("{} {}, {} {}", subject(name), actual(catalogue, show, name), how, wanted);
}

std::string words_for(const Catalogue& catalogue, const Show&, const Per& per, double total) {
  const std::string n = plain(total, 2);
  if (per.of == "structure") return fmt::format("{} for each {}, and {} {}", per.send, per.structure.value, n, total == 1 ? "stands" : "stand");
  if (per.every_is_length) {
    const bool us = catalogue.kit.house.units == UnitSystem::us;
    const auto length = [&](double metres) { return us ? plain(metres / 0.3048, 1) + " ft" : plain(metres, 2) + " m"; };
    const std::string by = per.crossed_by ? " by " + per.crossed_by->value : per.floor ? " on " + per.floor->value : "";
    return fmt::format("{} for every {} of {}{}, and there is {}", per.send, length(per.every), per.of, by, length(total));
  }
  if (per.of == "day") return fmt::format("{} for each day", per.send);
  const std::string each = per.every == 1 ? "each" : "every " + plain(per.every, 2);
  if (per.of == "crew") return fmt::format("{} for {} of the crew of {}", per.send, each, n);
  if (per.of == "volunteers") return fmt::format("{} for {} of the {} volunteers", per.send, each, n);
  if (per.of == "audience") return fmt::format("{} for {} of an audience of {}", per.send, each, n);
  const std::string of = per.every == 1 ? per.of : plural(per.of);
  if (per.of == "hour") return fmt::format("{} for {} {}, and the show takes {}", per.send, each, of, n);
  return fmt::format("{} for {} {}, and there {} {}", per.send, each, of, total == 1 ? "is" : "are", n);
}

}  // namespace dunnage
