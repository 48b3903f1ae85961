// SPDX-License-Identifier: MIT
// Days are counted by the calendar of <chrono>, which asks no clock.
#include "model/kit.h"

#include <fmt/format.h>

#include <chrono>

namespace dunnage {

std::string Date::iso() const { return fmt::format("{:04}-{:02}-{:02}", year, month, day); }

long Date::days() const {
  const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                                         std::chrono::day{static_cast<unsigned>(day)}};
  return std::chrono::sys_days{date}.time_since_epoch().count();
}

}  // namespace dunnage
