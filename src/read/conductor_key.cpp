// SPDX-License-Identifier: MIT
// Gauges by name, cross-sections by number.
#include "read/conductor_key.h"

#include <algorithm>
#include <array>

namespace dunnage {
namespace {

constexpr std::array<std::string_view, 15> gauges{"18", "16", "14", "12",  "10",  "8",   "6",  "4",
                                                  "3",  "2",  "1",  "1/0", "2/0", "3/0", "4/0"};

/// "12" of "12 AWG"; empty where it is no gauge.
std::string_view gauge_of(std::string_view text) {
  constexpr std::string_view ending = "AWG";
  if (!text.ends_with(ending)) return {};
  text.remove_suffix(ending.size());
  while (text.ends_with(' ')) text.remove_suffix(1);
  return std::find(gauges.begin(), gauges.end(), text) == gauges.end() ? std::string_view() : text;
}

}  // namespace

Maybe<Conductor> read_conductor(TableReader& section) {
  const Maybe<std::string> typed = section.maybe_text("conductor");
  if (!typed) return std::nullopt;
  if (const std::string_view gauge = gauge_of(typed->value); !gauge.empty())
    return Sourced<Conductor>{{std::string(gauge), {}}, typed->place};
  const ParsedQuantity parsed = parse_quantity(typed->value, Measure::area);
  if (parsed.si && within(range::cable_area, *parsed.si))
    return Sourced<Conductor>{{{}, Area::from_si(*parsed.si)}, typed->place};
  section.error(typed->place, in_quotes(typed->value) + " is no size of conductor",
                "write a gauge, \"12 AWG\" (18 to 4/0), or a cross-section, \"2.5 mm2\"");
  return std::nullopt;
}

}  // namespace dunnage
