// SPDX-License-Identifier: MIT
// Reading key=value against what a question asks for.
#include "reckon/inputs.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cassert>
#include <charconv>
#include <cmath>

#include "base/nearest.h"

namespace dunnage {
namespace {

using Problems = std::vector<std::string>;

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

void tell(Problems& problems, const AskedKey& key, const QuantityProblem& problem) {
  problems.push_back(
      fmt::format("{}: {}{}", key.name, problem.cause, problem.hint.empty() ? "" : " (" + problem.hint + ")"));
}

std::optional<double> quantity(const AskedKey& key, const Range& range, std::string_view text, Problems& problems) {
  const ParsedQuantity parsed = parse_quantity(text, range.measure);
  if (!parsed.si) {
    tell(problems, key, parsed.problem);
    return std::nullopt;
  }
  if (within(range, *parsed.si)) return parsed.si;
  problems.push_back(fmt::format("{}: {} is outside {}", key.name, text, words(range)));
  return std::nullopt;
}

std::optional<double> number(const AskedKey& key, std::string_view text, Problems& problems) {
  std::string_view rest = trimmed(text);
  double value = 0;
  const auto [end, error] = std::from_chars(rest.data(), rest.data() + rest.size(), value);
  const std::string_view after =
      trimmed(rest.substr(error == std::errc() ? static_cast<std::size_t>(end - rest.data()) : 0));
  const bool whole = key.kind != AskedKey::Kind::whole || value == std::floor(value);
  const bool clean = after.empty() || (key.kind == AskedKey::Kind::number && (after == "%" || after == "deg"));
  if (error != std::errc() || !std::isfinite(value) || !clean || !whole) {
    problems.push_back(fmt::format("{}: \"{}\" is not a {} (for example {})", key.name, text,
                                   key.kind == AskedKey::Kind::whole ? "whole number" : "number", key.example));
    return std::nullopt;
  }
  if (value >= key.low && value <= key.high && !is_too_small(value)) return value;
  problems.push_back(fmt::format("{}: {} is outside {} to {}", key.name, text, plain(key.low, 4), plain(key.high, 4)));
  return std::nullopt;
}

void read_word(const AskedKey& key, const std::string& text, Inputs& inputs, Problems& problems) {
  if (std::find(key.choices.begin(), key.choices.end(), text) != key.choices.end()) {
    inputs.put(key.name, {text, 0, {}});
    return;
  }
  const std::string near = did_you_mean(text, key.choices);
  problems.push_back(fmt::format("{}: \"{}\" is none of {}{}", key.name, text, fmt::join(key.choices, ", "),
                                 near.empty() ? "" : "; " + near));
}

void read_sides(const AskedKey& key, const std::string& text, Inputs& inputs, Problems& problems) {
  const ParsedLengths parsed = parse_lengths(text, 2);
  if (!parsed.problem.cause.empty()) return tell(problems, key, parsed.problem);
  for (const Length side : parsed.lengths)
    if (!within(*key.range, side.si())) {
      problems.push_back(fmt::format("{}: a side is outside {}", key.name, words(*key.range)));
      return;
    }
  inputs.put(key.name, {text, 0, {{parsed.lengths[0].si(), parsed.lengths[1].si()}}});
}

void read_pair(const AskedKey& key, const std::string& text, Inputs& inputs, Problems& problems) {
  const std::string between = " " + std::string(key.joined) + " ";
  const std::size_t at = text.find(between);
  if (at == std::string::npos) {
    problems.push_back(fmt::format("{}: write it as \"{}\"", key.name, key.example));
    return;
  }
  const auto first = quantity(key, *key.range, text.substr(0, at), problems);
  const auto second = quantity(key, *key.second, text.substr(at + between.size()), problems);
  if (!first || !second) return;
  Inputs::Value value{text, 0, inputs.has(key.name) ? inputs.pairs(key.name) : decltype(value.pairs){}};
  value.pairs.emplace_back(*first, *second);
  inputs.put(key.name, std::move(value));
}

void read_value(const AskedKey& key, const std::string& text, Inputs& inputs, Problems& problems) {
  switch (key.kind) {
    case AskedKey::Kind::quantity:
      if (const auto si = quantity(key, *key.range, text, problems)) inputs.put(key.name, {text, *si, {}});
      return;
    case AskedKey::Kind::number:
    case AskedKey::Kind::whole:
      if (const auto value = number(key, text, problems)) inputs.put(key.name, {text, *value, {}});
      return;
    case AskedKey::Kind::word:
      return read_word(key, text, inputs, problems);
    case AskedKey::Kind::text:
      return inputs.put(key.name, {text, 0, {}});
    case AskedKey::Kind::sides:
      return read_sides(key, text, inputs, problems);
    case AskedKey::Kind::pair:
      return read_pair(key, text, inputs, problems);
  }
}

/// The unit that a text ends with, of a measure where metric and US differ.
const UnitName* last_unit(std::string_view text) {
  const std::size_t at = text.find_last_of("0123456789 ");
  const std::string_view symbol = at == std::string_view::npos ? text : text.substr(at + 1);
  for (const UnitName& unit : unit_names()) {
    const bool differs = unit.measure == Measure::mass || unit.measure == Measure::length ||
                         unit.measure == Measure::area || unit.measure == Measure::speed ||
                         unit.measure == Measure::temperature || unit.measure == Measure::volume;
    if (differs && unit.symbol == symbol) return &unit;
  }
  return nullptr;
}

/// A result is said in the system of the first value that shows one, a wind in the unit of a typed wind.
void choose_units(Inputs& inputs, const Typed& typed) {
  bool chosen = false, wind = false;
  for (const auto& [key, text] : typed) {
    const UnitName* unit = last_unit(trimmed(text));
    if (!unit) continue;
    if (!chosen) inputs.system = unit->system;
    chosen = true;
    if (unit->measure != Measure::speed || wind) continue;
    wind = true;
    inputs.meter = unit->symbol == "kn" ? "knots" : std::string(unit->symbol);
  }
  if (!wind && inputs.system == UnitSystem::us) inputs.meter = "mph";
}

}  // namespace

const Inputs::Value& Inputs::value(std::string_view key) const {
  const auto at = values_.find(std::string(key));
  assert(at != values_.end());
  return at->second;
}

std::pair<Length, Length> Inputs::sides(std::string_view key) const {
  const auto& [first, second] = value(key).pairs.front();
  return {Length::from_si(first), Length::from_si(second)};
}

std::vector<std::pair<double, double>> Inputs::pairs(std::string_view key) const {
  return has(key) ? value(key).pairs : std::vector<std::pair<double, double>>{};
}

Inputs read_inputs(const std::vector<AskedKey>& keys, const Typed& typed, Problems& problems) {
  Inputs inputs;
  std::vector<std::string> names;
  for (const AskedKey& key : keys) names.emplace_back(key.name);
  std::vector<std::string> seen;
  for (const auto& [name, text] : typed) {
    const auto key = std::find_if(keys.begin(), keys.end(), [&, &n = name](const AskedKey& k) { return k.name == n; });
    if (key == keys.end()) {
      const std::string near = did_you_mean(name, names);
      problems.push_back(fmt::format("unknown key \"{}\"{}", name, near.empty() ? "" : ": " + near));
      continue;
    }
    const bool again = std::find(seen.begin(), seen.end(), name) != seen.end();
    if (again && key->kind != AskedKey::Kind::pair) {
      problems.push_back(fmt::format("{}: given twice", name));
      continue;
    }
    seen.push_back(name);
    read_value(*key, text, inputs, problems);
  }
  for (const AskedKey& key : keys)
    if (key.needed && std::find(seen.begin(), seen.end(), key.name) == seen.end())
      problems.push_back(
          fmt::format("{} is needed: {}, for example {}=\"{}\"", key.name, key.says, key.name, key.example));
  choose_units(inputs, typed);
  return inputs;
}

}  // namespace dunnage
