// SPDX-License-Identifier: MIT
// All that a document may be written from. A document computes nothing that another could contradict.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "model/catalogue.h"
#include "model/document.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/scan.h"
#include "model/show.h"

namespace dunnage {

/// Why a sheet was not made: it would help nobody. Printed on the cover.
struct Skipped {
  std::string document, reason;
};

struct Context {
  const Catalogue& catalogue;
  const Show& show;
  const Plan& plan;
  const Findings& findings;
  const Words& words;
  UnitSystem units = UnitSystem::metric;
  std::string meter;              ///< of the house, or of `units` where the house has none
  std::string revision;           ///< of this packet
  std::string only_team;          ///< empty: everyone
  std::vector<std::string> made;  ///< titles of the sheets of this packet, for the cover
  std::vector<Skipped> skipped;   ///< for the cover
  const Tally* tally = nullptr;   ///< what was scanned, for the return sheet; null: nothing was
};

using Made = std::variant<Document, Skipped>;

}  // namespace dunnage
