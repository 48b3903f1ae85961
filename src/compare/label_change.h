// SPDX-License-Identifier: MIT
// Which cases need a new label since another copy of the kit.
#pragma once

#include <string>
#include <vector>

#include "model/catalogue.h"
#include "model/finding.h"

namespace dunnage {

struct LabelChange {
  int unit = -1;     ///< of the kit as it is now
  std::string what;  ///< "new", or what differs on the label: "mass, contents"
};

/// Units that are new, or whose label says something else: name, mass, handling, marks, contents, stack, revision
/// typed, or whose it is. `handling` by unit of each kit. In order of unit.
std::vector<LabelChange> label_changes(const Catalogue& now, const std::vector<Handling>& handling,
                                       const Catalogue& before, const std::vector<Handling>& handling_before);

}  // namespace dunnage
