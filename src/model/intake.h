// SPDX-License-Identifier: MIT
// A spreadsheet on its way into a kit: each row a case or an item to be, each cell a key to be, with what was guessed.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "model/kit.h"

namespace dunnage {

/// TOML as it stands, on one line: a number, true, a list of tables.
struct RawToml {
  std::string text;
};
using IntakeValue = std::variant<std::string, std::vector<std::string>, RawToml>;

/// One key of one row. Refused: kept beside the row in words, and not as a key.
struct IntakeLine {
  std::string key;
  IntakeValue value;
  std::string column;  ///< its head, as typed
  Text cell;           ///< as typed
  bool refused = false;
};

struct IntakeRow {
  std::string section;  ///< "case" or "item"
  Place place;          ///< of the row
  std::vector<IntakeLine> lines;
  std::vector<std::string> beside;   ///< "Owner: Sorrel": cells that have no key, kept as comments
  std::vector<std::string> guesses;  ///< what was taken for granted
  bool refused = false;              ///< kept in words alone
  /// The value of a key that is a text; empty where there is none.
  std::string text(const std::string& key) const;
};

/// How one column was understood.
struct IntakeColumn {
  std::string head;
  std::string key;   ///< empty: none
  std::string unit;  ///< of its cells that have none
};

struct Intake {
  std::string file;  ///< the spreadsheet, as named
  std::string how;   ///< "semicolons, Windows-1252, decimal comma"
  std::vector<IntakeColumn> columns;
  std::vector<IntakeRow> rows;
  std::vector<std::string> above;  ///< lines above the heads, kept as comments
};

/// One reading of a scale.
struct ScaleReading {
  Text code;
  Sourced<Mass> mass;
  std::string typed;       ///< "83 lb", as the kit will have it
  std::string guess = {};  ///< what was taken for granted; empty: nothing
};

}  // namespace dunnage
