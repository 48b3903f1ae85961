// SPDX-License-Identifier: MIT
// One vehicle's load: rows first; where they leave something out, the search.
#pragma once

#include "load/load_effort.h"
#include "load/trim.h"

namespace dunnage {

struct VehiclePlan {
  std::vector<StoodBox> boxes;  ///< `box` is a kind, in order of loading
  std::vector<int> left;        ///< by kind
  Trim trim;
  bool ways = true;  ///< everything comes in and off
  long work = 0;
  int left_out() const;
};

/// `tongue`: kg on its hitch.
VehiclePlan plan_vehicle(const Cargo& cargo, const LoadEffort& effort, double tongue);

}  // namespace dunnage
