// SPDX-License-Identifier: MIT
// Comparing with a limit: what a sum or a conversion of units leaves in the last places of a figure is no excess.
#pragma once

namespace dunnage {

/// Relative.
inline constexpr double slack = 1e-9;

/// Above the limit, and not by rounding alone; of limits below zero too.
template <class Value>
constexpr bool exceeds(Value value, Value limit) {
  return value > limit * (1 + slack) && value > limit * (1 - slack);
}
/// Below what is asked, and not by rounding alone.
template <class Value>
constexpr bool falls_short(Value value, Value least) {
  return value < least * (1 - slack) && value < least * (1 + slack);
}

}  // namespace dunnage
