// SPDX-License-Identifier: MIT
// Readings of a scale into the kit's own text: only the masses change, every other byte stays.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "model/catalogue.h"
#include "model/intake.h"

namespace dunnage {

struct WeighChange {
  std::string code;
  std::string before, after;  ///< before empty: none was given
  Mass mass;                  ///< after
  Place place;                ///< in the kit
};

struct WeighEdit {
  std::map<std::string, std::string> files;  ///< new text of each file that changes, by name
  std::vector<WeighChange> changes;          ///< of cases, then of units, each in the order of the readings
  std::vector<std::string> same;             ///< codes that already have that mass
};

/// A case's own code sets its `weighed`, that of its [[unit]] where a case of one has one there; a unit's code its
/// [[unit]], added at the end of the case's file where it has none and weighs something else than the case; all units
/// of a case alike set the case's. Told: a code that the kit lacks, with the nearest; two
/// different readings of one code (neither is taken); a place where the text cannot be edited.
WeighEdit weigh_edit(const Catalogue& catalogue, const std::vector<ScaleReading>& readings, Diagnostics& diagnostics);

}  // namespace dunnage
