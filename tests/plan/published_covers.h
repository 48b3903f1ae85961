// SPDX-License-Identifier: MIT
// Covers whose optimum is known: each turned into the text of a kit (a column is a case whose mass is its cost, a row
// an item) and of a show (each item wanted as often as its row asks), then read and planned as any other.
//   scp: OR-Library set covering, J. E. Beasley; Balas & Ho 1980; Beasley, EJOR 31 (1987) 85-93.
//   multicover: weighted multi-cover models, optima proved by two general solvers.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "model/plan.h"

namespace dunnage {

struct PublishedCover {
  std::string name;
  std::filesystem::path file;
  int times = 1;     ///< how often each row is covered; 0: as the file says
  long optimum = 0;  ///< kg
};

/// In order of name; none where the folder is not there.
std::vector<PublishedCover> published_covers(const std::filesystem::path& folder);
Plan plan_published(const PublishedCover& cover, double effort, Diagnostics& diagnostics);

}  // namespace dunnage
