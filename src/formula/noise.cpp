// SPDX-License-Identifier: MIT
// Noise dose.
#include "formula/noise.h"

#include <array>
#include <cmath>

#include "base/slack.h"

namespace dunnage {

using namespace unit;

Duration osha_time(Sound level) { return 8 / std::pow(2.0, (level / decibel_a - 90) / 5) * hour; }

std::optional<Duration> osha_permitted(Sound level) {
  struct Row {
    double level, hours;
  };
  constexpr std::array<Row, 9> kG16{
      {{90, 8}, {92, 6}, {95, 4}, {97, 3}, {100, 2}, {102, 1.5}, {105, 1}, {110, 0.5}, {115, 0.25}}};
  const double db = level / decibel_a;
  if (db < 90) return 24.0 * hour;
  for (const Row& row : kG16)
    if (!exceeds(db, row.level)) return row.hours * hour;
  return std::nullopt;
}

double osha_dose(const std::vector<HeardFor>& heard, Sound from) {
  double dose = 0;
  for (const auto& [level, time] : heard)
    if (level >= from) dose += 100 * (time / osha_time(level));
  return dose;
}

Sound osha_average(double dose) { return (16.61 * std::log10(dose / 100) + 90) * decibel_a; }

Duration niosh_time(Sound level) { return 480 / std::pow(2.0, (level / decibel_a - 85) / 3) * minute; }

std::optional<double> niosh_dose(const std::vector<HeardFor>& heard) {
  double dose = 0;
  for (const auto& [level, time] : heard) {
    if (exceeds(level / decibel_a, 115.0)) return std::nullopt;
    dose += 100 * (time / niosh_time(level));
  }
  return dose;
}

Sound niosh_average(double dose) { return (10 * std::log10(dose / 100) + 85) * decibel_a; }

Sound daily_exposure(const std::vector<HeardFor>& heard) {
  double energy = 0;
  for (const auto& [level, time] : heard) energy += time / hour * std::pow(10.0, level / decibel_a / 10);
  return 10 * std::log10(energy / 8) * decibel_a;
}

Sound level_at(Sound level, Length measured_at, Length wanted_at) {
  return level - 20 * std::log10(wanted_at / measured_at) * decibel_a;
}

}  // namespace dunnage
