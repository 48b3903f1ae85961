// SPDX-License-Identifier: MIT
// Water to carry.
#include "formula/water.h"

namespace dunnage {

namespace {
constexpr double kCupsAnHour = 3;
constexpr Volume kCup = 0.25 * unit::us_quart;
}  // namespace

Volume least_water(int people, Duration time) { return kCup * (kCupsAnHour * people * (time / unit::hour)); }

Volume good_water(int people, Duration time) { return 1.0 * unit::us_quart * (people * (time / unit::hour)); }

}  // namespace dunnage
