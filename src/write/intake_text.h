// SPDX-License-Identifier: MIT
// A spreadsheet that was read, as a file of the kit: one key a line, so that a message about a line is about a cell.
#pragma once

#include <string>
#include <vector>

#include "model/intake.h"

namespace dunnage {

/// What stands on one line: -1 where it is of no row, or of the row as a whole.
struct LineOrigin {
  int row = -1;
  int line = -1;
};

struct IntakeText {
  std::string text;
  std::vector<LineOrigin> lines;  ///< by line number less one
};

/// What was refused stands as a comment, and so does what has no key.
IntakeText intake_text(const Intake& intake);

}  // namespace dunnage
