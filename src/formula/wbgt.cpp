// SPDX-License-Identifier: MIT
// Wet-bulb globe temperature and its limits.
#include "formula/wbgt.h"

#include <array>
#include <cmath>

namespace dunnage {

Temperature wbgt_outdoors(Temperature natural_wet, Temperature globe, Temperature air) {
  return Temperature::celsius(0.7 * natural_wet.in_celsius() + 0.2 * globe.in_celsius() + 0.1 * air.in_celsius());
}

Temperature wbgt_indoors(Temperature natural_wet, Temperature globe) {
  return Temperature::celsius(0.7 * natural_wet.in_celsius() + 0.3 * globe.in_celsius());
}

namespace {
std::optional<Temperature> limit(Power work, double from, double slope) {
  const double watts = work / unit::watt;
  if (watts < 100 || watts > 600) return std::nullopt;
  return Temperature::celsius(from - slope * std::log10(watts));
}
}  // namespace

std::optional<Temperature> alert_limit(Power work) { return limit(work, 59.9, 14.1); }
std::optional<Temperature> exposure_limit(Power work) { return limit(work, 56.7, 11.5); }

std::optional<ScreeningLimit> screening_limit(WorkLoad load, double share) {
  // Rows: up to 25, 50, 75, 100 per cent work. Pairs: used to heat, not used to heat; 0: not allowed.
  using Row = std::array<std::array<double, 2>, 4>;
  constexpr std::array<Row, 4> kRows{{
      {{{32.5, 30.0}, {31.5, 29.0}, {30.5, 28.0}, {30.0, 27.0}}},
      {{{32.0, 29.5}, {30.0, 27.0}, {29.0, 25.5}, {28.0, 24.5}}},
      {{{31.0, 28.5}, {29.0, 26.0}, {27.5, 24.0}, {0, 0}}},
      {{{31.0, 28.0}, {28.0, 25.0}, {0, 0}, {0, 0}}},
  }};
  if (share < 0 || share > 1) return std::nullopt;
  const std::size_t row = share >= 0.75 ? 3 : share >= 0.5 ? 2 : share >= 0.25 ? 1 : 0;
  const auto& pair = kRows[row][static_cast<std::size_t>(load)];
  if (pair[0] <= 0) return std::nullopt;
  return ScreeningLimit{Temperature::celsius(pair[0]), Temperature::celsius(pair[1])};
}

}  // namespace dunnage
