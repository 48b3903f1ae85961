// SPDX-License-Identifier: MIT
// Readings of a scale from a spreadsheet: a column of codes and one of masses.
#pragma once

#include <vector>

#include "base/diagnostic.h"
#include "model/catalogue.h"
#include "model/intake.h"
#include "read/csv_head.h"

namespace dunnage {

/// One reading a row that has both. Codes are spelled as the kit spells them where only the case of letters
/// differs. What is no mass, or outside the range of a case's, is told as a warning at its cell, as
/// is a cell in a column without a head, whose row is left out; a second column of codes or masses, as a warning.
std::vector<ScaleReading> read_weights(const CsvTable& table, const Catalogue& catalogue, const ColumnWishes& wishes,
                                       Diagnostics& diagnostics);

}  // namespace dunnage
