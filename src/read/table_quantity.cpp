// SPDX-License-Identifier: MIT
// The quantities of a table: text with units, held against their ranges.
#include <fmt/format.h>

#include <cmath>

#include "read/table_reader.h"

namespace dunnage {

void TableReader::no_unit(const Node& node, std::string_view key, const Range& range) {
  const double value = node.value<double>().value_or(0);
  if (!std::isfinite(value)) {
    error(at(node), in_quotes(key) + " is no number",
          std::string("write ") + name(range.measure) + " and unit in quotes");
    return;
  }
  std::string_view metric, us;
  for (const UnitName& unit : unit_names()) {
    if (unit.measure != range.measure) continue;
    std::string_view& first = unit.system == UnitSystem::us ? us : metric;
    if (first.empty()) first = unit.symbol;
  }
  const std::string typed = plain(value, 6);
  std::string hint = fmt::format("write the unit too, in quotes: {} = \"{} {}\"", key, typed, metric);
  if (!us.empty()) hint += fmt::format(" or \"{} {}\"", typed, us);
  error(at(node), fmt::format("\"{}\" is a number without a unit", key), hint);
}

bool TableReader::in_range(Place place, std::string_view key, double si, const Range& range) {
  if (within(range, si)) return true;
  error(place, fmt::format("\"{}\" is out of range", key), fmt::format("{}: {}", range.name, dunnage::words(range)));
  return false;
}

std::optional<Sourced<double>> TableReader::quantity_of(const Node& node, std::string_view key, const Range& range) {
  if (node.is_number()) {
    no_unit(node, key, range);
    return std::nullopt;
  }
  const auto text = text_of(node, key);
  if (!text) return std::nullopt;
  const ParsedQuantity parsed = parse_quantity(text->value, range.measure);
  if (!parsed.si) {
    error(text->place, parsed.problem.cause, parsed.problem.hint);
    return std::nullopt;
  }
  if (!in_range(text->place, key, *parsed.si, range)) return std::nullopt;
  return Sourced<double>{*parsed.si, text->place};
}

std::optional<Sourced<double>> TableReader::si(std::string_view key, const Range& range) {
  const Node* node = find(key, name(range.measure));
  return node ? quantity_of(*node, key, range) : std::nullopt;
}

std::optional<Sourced<TableReader::Measured>> TableReader::measured(std::string_view key,
                                                                    std::initializer_list<const Range*> ranges) {
  std::string kinds;
  for (const Range* range : ranges) kinds += (kinds.empty() ? "" : " or ") + std::string(name(range->measure));
  const Node* node = find(key, kinds);
  if (!node) return std::nullopt;
  const Range* chosen = *ranges.begin();
  if (const auto* text = node->as_string()) {
    for (const Range* range : ranges)
      if (parse_quantity(text->get(), range->measure).si) chosen = range;
  }
  const auto found = quantity_of(*node, key, *chosen);
  if (!found) return std::nullopt;
  return Sourced<Measured>{{chosen, found->value}, found->place};
}

std::vector<Sourced<double>> TableReader::quantities_or_one(std::string_view key, const Range& range) {
  std::vector<Sourced<double>> out;
  each(key, true, name(range.measure), [&](const Node& node) {
    if (auto found = quantity_of(node, key, range)) out.push_back(*found);
  });
  return out;
}

std::optional<Sourced<std::vector<Length>>> TableReader::lengths(std::string_view key, std::size_t count,
                                                                 const Range& range) {
  const Node* node = find(key, "lengths");
  if (!node) return std::nullopt;
  const auto text = text_of(*node, key);
  if (!text) return std::nullopt;
  const ParsedLengths parsed = parse_lengths(text->value, count);
  if (!parsed.problem.cause.empty()) {
    error(text->place, parsed.problem.cause, parsed.problem.hint);
    return std::nullopt;
  }
  for (const Length length : parsed.lengths)
    if (!in_range(text->place, key, length.si(), range)) return std::nullopt;
  return Sourced<std::vector<Length>>{parsed.lengths, text->place};
}

Maybe<Size> TableReader::size(std::string_view key, const Range& range) {
  const auto found = lengths(key, 3, range);
  if (!found) return std::nullopt;
  return Sourced<Size>{{found->value[0], found->value[1], found->value[2]}, found->place};
}

}  // namespace dunnage
