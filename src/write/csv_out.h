// SPDX-License-Identifier: MIT
// Rows of texts as a spreadsheet (RFC 4180: commas, quotes where needed).
#pragma once

#include <string>
#include <vector>

namespace dunnage {

/// One line a row, CRLF after each. A cell that a spreadsheet would run (it begins with = + - @ or a tab) has an
/// apostrophe before it, which `read_csv` takes away. Quoted where a cell holds a comma, a quote, a line end, or blanks
/// at an end.
std::string csv_text(const std::vector<std::vector<std::string>>& rows);

}  // namespace dunnage
