// SPDX-License-Identifier: MIT
// Comma-separated text into rows of cells, each with its place.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "model/kit.h"

namespace dunnage {

struct CsvRow {
  Place place;
  std::vector<Text> cells;
};

struct CsvTable {
  const SourceFile* file = nullptr;
  char delimiter = ',';
  std::string encoding;
  std::vector<CsvRow> rows;  ///< rows without any text are left out
};

/// Rows of a spreadsheet saved as text: comma, semicolon or tab, whichever makes the rows alike (a first line
/// "sep=;" says it); quotes as in RFC 4180; any line ends. `bytes` in any encoding that to_utf8 knows. A quote that
/// is never closed, and signs that were lost in the encoding, are told.
CsvTable read_csv(const std::string& name, const std::string& bytes, Sources& sources, Diagnostics& diagnostics);

/// The bytes of a file, as they are. What keeps it from being read is an error.
std::optional<std::string> load_bytes(const std::string& path, Sources& sources, Diagnostics& diagnostics);

}  // namespace dunnage
