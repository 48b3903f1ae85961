// SPDX-License-Identifier: MIT
// The wind as it is seen without a meter.
#pragma once

#include <vector>

#include "base/quantity.h"

namespace dunnage {

/// One step of the wind scale on land. The steps are means over ten minutes at 10 m in the open.
struct WindSign {
  int force = 0;
  const char* words;  ///< key of what is seen
  Speed from, to;     ///< mean
  /// The gusts that go with the step's strongest mean in open ground, half as much again and a little more.
  Speed gusts() const { return to * gust_over_mean; }
  static constexpr double gust_over_mean = 1.53;  ///< 3 s gust over hourly mean (Durst curve, ASCE 7 commentary)
};

/// Forces 2 to 8. Speeds: the WMO's scale in m/s. What is seen: the same scale for land, from memory.
const std::vector<WindSign>& wind_signs();

}  // namespace dunnage
