// SPDX-License-Identifier: MIT
// What was scanned going out, loaded and coming back, held against what the plan sends.
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "model/kit.h"

namespace dunnage {

enum class Stage { out, loaded, back };
inline const char* name(Stage stage) {
  return stage == Stage::out ? "out" : stage == Stage::loaded ? "loaded" : "back";
}

/// One thing read in a list of scans.
struct Scan {
  Stage stage = Stage::out;
  std::string list;   ///< the file's name without ending: whose list it is, or which vehicle's
  std::string typed;  ///< the code as it stands there
  int unit = -1;      ///< of the catalogue; -1: no unit bears that code
  std::string time;   ///< as typed beside it; may be empty
  std::string note;   ///< what else was typed: damage
  Place place;
};

/// Where a unit was seen.
struct Seen {
  Stage stage = Stage::out;
  std::string list, time;
  Place place;
};

struct MissingUnit {
  int unit = -1;
  std::optional<Seen> last;  ///< absent: never seen
  std::string pulled_by;     ///< the list it was pulled in, else the plan's team; may be empty
  int like = -1;             ///< never seen, but this one of the same case was, which the plan did not send
};
/// A code that no unit has. `nearest` is offered, never taken.
struct UnknownCode {
  std::string typed, nearest;
  std::vector<std::string> units;  ///< where it is the code of a case of several: which one?
  Place place;
};

struct Tally {
  Stage stage = Stage::out;            ///< the latest that a list was given for: what is missing is missing there
  std::vector<int> expected, present;  ///< unit indices in order
  std::vector<MissingUnit> missing;    ///< in order of unit
  std::vector<Seen> extra_seen;        ///< beside `extra`: where
  std::vector<int> extra;              ///< seen, and not in the plan
  std::vector<std::pair<int, std::vector<Seen>>> twice;  ///< in two lists of one stage
  std::vector<UnknownCode> unclear;                      ///< near to a code, or a case of several
  std::vector<UnknownCode> not_ours;                     ///< near to nothing
  std::vector<Scan> notes;                               ///< scans with a note
  std::size_t scans = 0;

  bool is_present(int unit) const { return std::binary_search(present.begin(), present.end(), unit); }
  /// Something is missing, or a code that may be one of the missing is not clear.
  bool open() const { return !missing.empty() || !unclear.empty(); }
};

}  // namespace dunnage
