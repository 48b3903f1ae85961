// SPDX-License-Identifier: MIT
// One quantity in another unit.
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <cmath>

#include "reckon/answers.h"

namespace dunnage {

void answer_unit(const Inputs& in, Answer& out, Problems& problems) {
  const std::string value = in.word("value", ""), to = in.word("to", "");
  std::vector<std::string> fitting;
  for (const UnitName& unit : unit_names()) {
    const auto si = parse_quantity(value, unit.measure).si;
    if (si && unit.symbol == to) {
      out.value = (*si - unit.offset) / unit.factor;
      if (!(std::abs(out.value) < 1e15))
        problems.push_back(fmt::format("value: \"{}\" is too much to be said in {}", value, to));
      out.unit = to;
      return;
    }
    if (si) fitting.emplace_back(unit.symbol);
  }
  if (fitting.empty())
    problems.push_back(fmt::format("value: \"{}\" is no quantity with a known unit", value));
  else
    problems.push_back(
        fmt::format("to: \"{}\" does not fit; {} can be said in {}", to, value, fmt::join(fitting, ", ")));
}

}  // namespace dunnage
