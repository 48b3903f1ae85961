// SPDX-License-Identifier: MIT
// The table of facts, and each fact read off a show.
#include "model/facts.h"

#include <algorithm>

namespace dunnage {

namespace {

using Type = FactKind::Type;

template <class T>
std::optional<FactValue> number(const Maybe<T>& typed) {
  if (!typed) return std::nullopt;
  return FactValue(static_cast<double>(typed->value));
}
template <class Q>
std::optional<FactValue> quantity(const Maybe<Q>& typed) {
  if (!typed) return std::nullopt;
  return FactValue(typed->value.si());
}
std::optional<FactValue> words(const Maybe<std::string>& typed) {
  if (!typed) return std::nullopt;
  return FactValue(std::vector<std::string>{typed->value});
}
FactValue words(const std::vector<Text>& list) {
  std::vector<std::string> out;
  for (const Text& word : list) out.push_back(word.value);
  return out;
}

FactValue structures(const Catalogue& catalogue, const Show& show) {
  std::vector<std::string> out;
  for (const Use& use : show.uses) {
    out.push_back(use.structure.value);
    if (const Structure* s = catalogue.structure(use.structure.value)) out.emplace_back(word(s->kind));
  }
  return out;
}

FactValue sources(const Show& show) {
  std::vector<std::string> out;
  for (const Input& input : show.inputs) out.push_back(input.source.value);
  return out;
}

std::optional<FactValue> forecast_fact(const Show& show, std::string_view name) {
  if (!show.forecast) return std::nullopt;
  const Forecast& f = *show.forecast;
  if (name == "gust") return quantity(f.gust);
  if (name == "wind") return quantity(f.wind);
  if (name == "temperature") return quantity(f.temperature);
  if (name == "rain") return number(f.rain);
  return std::nullopt;
}

}  // namespace

std::string_view word(StructureKind kind) {
  switch (kind) {
    case StructureKind::canopy:
      return "canopy";
    case StructureKind::tower:
      return "tower";
    case StructureKind::light_tree:
      return "light-tree";
    case StructureKind::banner:
      return "banner";
    case StructureKind::screen:
      return "screen";
  }
  return "";
}

const std::vector<FactKind>& fact_kinds() {
  static const std::vector<FactKind> kinds = {
      {"setting", Type::words, {}, "[show] setting = \"indoor\" or \"outdoor\""},
      {"floor", Type::words, {}, "[show] floor = \"grass\""},
      {"after_dark", Type::yes_no, {}, "[show] after_dark = false"},
      {"crew", Type::number, {}, "[show] crew = 4"},
      {"volunteers", Type::number, {}, "[show] volunteers = 6"},
      {"audience", Type::number, {}, "[show] audience = 300"},
      {"hours", Type::quantity, Measure::duration, "[show] hours = \"5 h\""},
      {"console", Type::words, {}, "[show] console = \"console-digital\""},
      {"with", Type::words, {}, "[show] with = []"},
      {"inputs", Type::number, {}, "[[input]]"},
      {"mixes", Type::number, {}, "[[mix]]"},
      {"runs", Type::number, {}, "[[run]]"},
      {"structure", Type::words, {}, "[[use]]"},
      {"source", Type::words, {}, "[[input]]"},
      {"gust", Type::quantity, Measure::speed, "[forecast] gust = \"20 mph\""},
      {"wind", Type::quantity, Measure::speed, "[forecast] wind = \"10 mph\""},
      {"temperature", Type::quantity, Measure::temperature, "[forecast] temperature = \"75 F\""},
      {"rain", Type::number, {}, "[forecast] rain = 20"},
  };
  return kinds;
}

const FactKind* fact_kind(std::string_view name) {
  const auto& kinds = fact_kinds();
  const auto at = std::find_if(kinds.begin(), kinds.end(), [&](const FactKind& k) { return k.name == name; });
  return at == kinds.end() ? nullptr : &*at;
}

std::optional<FactValue> fact(const Catalogue& catalogue, const Show& show, std::string_view name) {
  if (name == "setting") return words(show.setting);
  if (name == "floor") return words(show.floor);
  if (name == "after_dark") return show.after_dark ? std::optional<FactValue>(show.after_dark->value) : std::nullopt;
  if (name == "crew") return number(show.crew);
  if (name == "volunteers") return number(show.volunteers);
  if (name == "audience") return number(show.audience);
  if (name == "hours") return quantity(show.hours);
  if (name == "console") return words(show.console);
  if (name == "with") return words(show.with);
  if (name == "inputs") return FactValue(static_cast<double>(show.inputs.size()));
  if (name == "mixes") return FactValue(static_cast<double>(show.mixes.size()));
  if (name == "runs") return FactValue(static_cast<double>(show.runs.size()));
  if (name == "structure") return structures(catalogue, show);
  if (name == "source") return sources(show);
  return forecast_fact(show, name);
}

}  // namespace dunnage
