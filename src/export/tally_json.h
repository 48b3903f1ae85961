// SPDX-License-Identifier: MIT
// A tally for other programs.
#pragma once

#include <string>

#include "model/catalogue.h"
#include "model/scan.h"

namespace dunnage {

/// `{schema: 1, stage, scans, expected, present, missing[], extra[], twice[], unclear[], not_ours[], notes[]}`; a unit
/// is {code, name}, a place {stage, list, time, where}. Ends with a line end.
std::string tally_json(const Catalogue& catalogue, const Tally& tally);

}  // namespace dunnage
