// SPDX-License-Identifier: MIT
// `dunnage label --since`: which units need a new label since another copy of the kit.
#pragma once

#include <filesystem>
#include <optional>
#include <vector>

#include "run/commands.h"
#include "run/load_show.h"

namespace dunnage {

/// Those of `units` whose label is new or says something else than in the kit of `before`, each told on `out`. Nothing
/// where that kit cannot be read.
std::optional<std::vector<int>> changed_labels(const Catalogue& now, const std::vector<int>& units,
                                               const std::filesystem::path& before, Desk& desk);

}  // namespace dunnage
