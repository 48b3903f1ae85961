// SPDX-License-Identifier: MIT
// One vehicle on its wheels at one moment: what rests where, which plate that is above, and what nobody typed. The
// rules about vehicles and about their loads both ask here.
#pragma once

#include <optional>
#include <vector>

#include "formula/vehicle_load.h"
#include "model/catalogue.h"
#include "model/finding.h"

namespace dunnage {

/// What is in its cargo space.
struct Aboard {
  Mass mass;
  std::vector<PlacedMass> pieces;  ///< behind the bulkhead; only those whose place is known
  bool placed = true;              ///< all of them are
};

/// What a van pulls.
struct Hitched {
  int trailers = 0;
  std::optional<Mass> tongue, total;  ///< of the one trailer; absent: not known
  std::vector<Sentence> missing{};    ///< what is not known of it
};

/// Fills in the weights of a stage. A figure is absent where something that it needs is not known, and a hitch that
/// nobody typed is not at the rear axle.
void weigh(const Vehicle& vehicle, const Aboard& aboard, const Hitched& hitched, LoadStage& stage);

/// Each plate that the stage is above, the tongue outside its window, a front axle that hardly steers: with what to do
/// about it, without a full stop. What is not known counts as nothing here, so that what is known may still be too
/// much.
std::vector<Sentence> above_plates(const Vehicle& vehicle, const LoadStage& stage, UnitSystem units);

/// What nobody typed, so that something was not held against its plate. Of axles and tongue only where all has a place.
std::vector<Sentence> not_typed(const Vehicle& vehicle, const Hitched& hitched, bool placed);

/// "At departure: {}.", "After the gate: {}."
Sentence at_stage(const LoadStage& stage, const Sentence& what);

/// The lesser of two limits, where both are known.
std::optional<Mass> lesser(const std::optional<Mass>& a, const std::optional<Mass>& b);

}  // namespace dunnage
