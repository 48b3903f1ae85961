// SPDX-License-Identifier: MIT
// The kit's sections as rows of texts, for a spreadsheet: what goes out comes back the same.
#pragma once

#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "read/kit_file.h"

namespace dunnage {

/// Heads, then one row a [[section]] ("case", "item", "unit"), in order of the files. A text stands as it is, all
/// else as TOML on one line. Columns: the keys that any of them has, in the reader's order; `names` by language.
std::vector<std::vector<std::string>> section_rows(const std::vector<NamedText>& files, const std::string& section,
                                                   Sources& sources, Diagnostics& diagnostics);

}  // namespace dunnage
