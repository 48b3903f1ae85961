// SPDX-License-Identifier: MIT
// Strips into the regions there are: pages, or cards. The one room that breaks.
#pragma once

#include <vector>

#include "layout/galley.h"

namespace dunnage {

struct Flowed {
  std::vector<std::vector<Ink>> regions;  ///< ink from each region's own top left; at least one region
  int oversized = 0;                      ///< strips that are taller than a region and could not be parted
};

/// Fills regions of `height`, the first of `first_height`. Keeps strips together that ask for it, as long as
/// they fit on one region; a last region that would be nearly empty gets more from the one before. Linear in the number
/// of strips.
Flowed flow(Galley galley, Paper first_height, Paper height);

}  // namespace dunnage
