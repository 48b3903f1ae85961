// SPDX-License-Identifier: MIT
// What several shows want at once, and what a change of one show changed.
#pragma once

#include <string>
#include <vector>

#include "model/catalogue.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// One show with its plan, as shows are held against each other.
struct Planned {
  const Catalogue* catalogue = nullptr;
  const Show* show = nullptr;
  const Plan* plan = nullptr;
};

/// One unit wanted by two shows whose days overlap.
struct Clash {
  std::string code, name;
  std::size_t first = 0, second = 0;  ///< which shows
  Date from, to;                      ///< the days that both want it
  std::string instead;                ///< a unit that would do for the second, or empty
};

/// How what goes differs from before.
struct Change {
  struct Line {
    std::string code, name;
    int before = 0, now = 0;
  };                        ///< units of a case
  std::vector<Line> lines;  ///< only those that differ, in order of the kit
};

}  // namespace dunnage
