// SPDX-License-Identifier: MIT
// Lists of scans as phones and scanners that type give them, and as people do.
#pragma once

#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "model/catalogue.h"
#include "model/scan.h"

namespace dunnage {

/// The scans of one list. Each line may have a date, a time and signs around its code, before or after. The further
/// lines of a QR text (mass, contents, owner) belong to the code above them. A line of codes alone is that many scans;
/// other words after a code, and lines that begin with "damage", "broken", "note" or "missing part", are its note.
/// Blank lines and lines that begin with # are passed over. Codes are compared without regard to the case of letters.
std::vector<Scan> read_scans(const std::string& name, const std::string& bytes, Stage stage, const Catalogue& catalogue,
                             Sources& sources, Diagnostics& diagnostics);

}  // namespace dunnage
