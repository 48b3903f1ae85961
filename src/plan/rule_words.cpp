// SPDX-License-Identifier: MIT
#include "plan/rule_words.h"

#include <algorithm>
#include <cassert>

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
    case Measure::duration:
      return plain(n / 3600, 2) + " h";
    case Measure::speed:
      return us ? plain(n / 0.44704, 1) + " mph" : plain(n, 1) + " m/s";
    case Measure::temperature:
      return us ? plain(Temperature::kelvin(n).in_fahrenheit(), 1) + " F"
                : plain(Temperature::kelvin(n).in_celsius(), 1) + " C";
    default:
      return plain(n, 2);
  }
}

/// What a condition asks for: "indoor or outdoor".
Sentence listed(const Catalogue& catalogue, const Condition& condition) {
  Sentence out;
  for (const Value& value : condition.values) {
    const double* n = std::get_if<double>(&value);
    const std::string* text = std::get_if<std::string>(&value);
    const std::string one = n ? with_unit(catalogue, condition.fact, *n) : text ? *text : std::string();
    out = out.empty() ? Sentence(one) : said("{} or {}", out, one);
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
std::vector<std::string> met(const Condition& condition, const std::optional<FactValue>& fact) {
  std::vector<std::string> out;
  for (const Value& value : condition.values)
    if (fact && has_word(*fact, value)) out.push_back(std::get<std::string>(value));
  return out;
}

Sentence with_and(const std::vector<std::string>& words) {
  Sentence out;
  for (const std::string& word : words) out = out.empty() ? Sentence(word) : said("{} and {}", out, word);
  return out;
}

Sentence actual(const Catalogue& catalogue, const Show& show, const std::string& name) {
  const auto value = fact(catalogue, show, name);
  if (!value) return said("not stated");
  if (const double* n = std::get_if<double>(&*value)) return with_unit(catalogue, name, *n);
  const auto* words = std::get_if<std::vector<std::string>>(&*value);
  return words && !words->empty() ? Sentence(words->front()) : said("not stated");
}

/// "the audience is 180", "inputs number 20".
Sentence stated(const std::string& fact, const Sentence& is) {
  if (fact == "setting") return said("the setting is {}", is);
  if (fact == "floor") return said("the floor is {}", is);
  if (fact == "console") return said("the console is {}", is);
  if (fact == "crew") return said("the crew is {}", is);
  if (fact == "audience") return said("the audience is {}", is);
  if (fact == "inputs") return said("inputs number {}", is);
  if (fact == "mixes") return said("mixes number {}", is);
  if (fact == "runs") return said("runs number {}", is);
  if (fact == "hours") return said("the show takes {}", is);
  if (fact == "volunteers") return said("volunteers number {}", is);
  if (fact == "gust") return said("the forecast gust is {}", is);
  if (fact == "wind") return said("the forecast wind is {}", is);
  if (fact == "temperature") return said("the forecast temperature is {}", is);
  assert(fact == "rain");
  return said("the chance of rain is {}", is);
}

Sentence setting_words(const std::string& setting) {
  if (setting == "indoor") return said("the show is indoors");
  return setting == "outdoor" ? said("the show is outdoors") : stated("setting", said("not stated"));
}

bool asks_yes(const Condition& condition) {
  return !condition.values.empty() && std::holds_alternative<bool>(condition.values.front()) &&
         std::get<bool>(condition.values.front());
}

Sentence daylight_words(bool dark) { return dark ? said("it is after dark") : said("it is by daylight"); }

/// What a `per` counts one of, and many of.
Sentence counted_words(const std::string& of, bool one) {
  if (of == "input") return one ? said("input") : said("inputs");
  if (of == "mix") return one ? said("mix") : said("mixes");
  if (of == "hour") return one ? said("hour") : said("hours");
  if (of == "crossing") return one ? said("crossing") : said("crossings");
  return one ? said("run") : said("runs");
}

/// "1 for every 10 m of run on grass, and there is 60 m".
Sentence length_words(const Catalogue& catalogue, const Per& per, double total) {
  const bool us = catalogue.kit.house.units == UnitSystem::us;
  const auto length = [&](double metres) { return us ? plain(metres / 0.3048, 1) + " ft" : plain(metres, 2) + " m"; };
  Sentence of = counted_words(per.of, true);
  if (per.crossed_by)
    of = per.crossed_by->value == "wheels" ? said("{} by wheels", of) : said("{} by feet", of);
  else if (per.floor)
    of = said("{} on {}", of, per.floor->value);
  return said("{} for every {} of {}, and there is {}", per.send, length(per.every), of, length(total));
}

}  // namespace

Sentence words_for(const Catalogue& catalogue, const Show& show, const Condition& condition) {
  const std::string& name = condition.fact;
  if (name == "after_dark") return daylight_words(asks_yes(condition));
  const std::vector<std::string> has = met(condition, fact(catalogue, show, name));
  if (name == "setting") return setting_words(has.empty() ? std::string() : has.front());
  if (name == "with") return said("the show is with {}", with_and(has));
  if (name == "structure") return said("a {} stands", with_and(has));
  if (name == "source")
    return has.size() == 1 ? said("{} is on the input list", has.front())
                           : said("{} are on the input list", with_and(has));
  const Sentence out = stated(name, actual(catalogue, show, name));
  if (condition.kind == Condition::Kind::any_of) return out;
  const Sentence bound = listed(catalogue, condition);
  return condition.kind == Condition::Kind::from ? said("{} (from {})", out, bound) : said("{} (up to {})", out, bound);
}

Sentence words_against(const Catalogue& catalogue, const Show& show, const Condition& condition) {
  const std::string& name = condition.fact;
  const Sentence wanted = listed(catalogue, condition);
  if (name == "after_dark") return daylight_words(!asks_yes(condition));
  if (name == "setting") return setting_words(actual(catalogue, show, name).english());
  if (name == "with") return said("the show is not with {}", wanted);
  if (name == "structure") return said("no {} stands", wanted);
  if (name == "source") return said("no {} is on the input list", wanted);
  const Sentence is = stated(name, actual(catalogue, show, name));
  if (condition.kind == Condition::Kind::from) return said("{}, under {}", is, wanted);
  return condition.kind == Condition::Kind::to ? said("{}, over {}", is, wanted) : said("{}, not {}", is, wanted);
}

Sentence words_for(const Catalogue& catalogue, const Show&, const Per& per, double total) {
  const std::string n = plain(total, 2);
  const std::string& structure = per.structure.value;
  if (per.of == "structure")
    return total == 1 ? said("{} for each {}, and {} stands", per.send, structure, n)
                      : said("{} for each {}, and {} stand", per.send, structure, n);
  if (per.every_is_length) return length_words(catalogue, per, total);
  if (per.of == "day") return said("{} for each day", per.send);
  const Sentence each = per.every == 1 ? said("each") : said("every {}", plain(per.every, 2));
  if (per.of == "crew") return said("{} for {} of the crew of {}", per.send, each, n);
  if (per.of == "volunteers") return said("{} for {} of the {} volunteers", per.send, each, n);
  if (per.of == "audience") return said("{} for {} of an audience of {}", per.send, each, n);
  const Sentence of = counted_words(per.of, per.every == 1);
  if (per.of == "hour") return said("{} for {} {}, and the show takes {}", per.send, each, of, n);
  return total == 1 ? said("{} for {} {}, and there is {}", per.send, each, of, n)
                    : said("{} for {} {}, and there are {}", per.send, each, of, n);
}

}  // namespace dunnage
