// SPDX-License-Identifier: MIT
// Distances and times of a storm.
#include "formula/lightning.h"

namespace dunnage {

Length flash_distance(Duration flash_to_thunder) {
  return 1.0 * unit::mile * (flash_to_thunder / (5.0 * unit::second));
}

Length clearing_distance(Speed storm, Duration time_to_clear) { return shelter_distance + storm * time_to_clear; }

}  // namespace dunnage
