// SPDX-License-Identifier: MIT
// `dunnage label --since`: which units need a new label since another copy of the kit.
#pragma once

#include <filesystem>
#include <optional>
#include <ostream>
#include <string>
#include <vector>

#include "run/commands.h"
#include "run/load_show.h"

namespace dunnage {

/// Those of `units` whose label is new or says something else than in the kit of `before`, each a line in `told`.
/// Nothing where that kit cannot be read, which is told on `desk.err`.
std::optional<std::vector<int>> changed_labels(const Catalogue& now, const std::vector<int>& units,
                                               const std::filesystem::path& before, std::string& told, Desk& desk);

}  // namespace dunnage
