// SPDX-License-Identifier: MIT
// Rows of a spreadsheet as cases or items to be.
#pragma once

#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "model/intake.h"
#include "model/kit.h"
#include "read/csv_head.h"

namespace dunnage {

/// `section`: "case" or "item". Nothing is lost: what is not read is told as a warning at its cell and kept in words
/// beside its row; what is guessed stands in IntakeRow::guesses and in `guesses` (of the columns). Items named in a
/// column of contents that neither `kit` nor the sheet has become rows of their own, before the cases. No rows where
/// the heads could not be understood.
Intake read_rows(const CsvTable& table, const std::string& section, const Kit& kit, const ColumnWishes& wishes,
                 std::vector<std::string>& guesses, Diagnostics& diagnostics);

}  // namespace dunnage
