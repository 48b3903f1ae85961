// SPDX-License-Identifier: MIT
#include "document/wind_signs.h"

namespace dunnage {

const std::vector<WindSign>& wind_signs() {
  constexpr auto ms = unit::metre_per_second;
  static const std::vector<WindSign> signs = {
      {2, "wind.force-2", 1.6 * ms, 3.3 * ms},   {3, "wind.force-3", 3.4 * ms, 5.4 * ms},
      {4, "wind.force-4", 5.5 * ms, 7.9 * ms},   {5, "wind.force-5", 8.0 * ms, 10.7 * ms},
      {6, "wind.force-6", 10.8 * ms, 13.8 * ms}, {7, "wind.force-7", 13.9 * ms, 17.1 * ms},
      {8, "wind.force-8", 17.2 * ms, 20.7 * ms}};
  return signs;
}

}  // namespace dunnage
