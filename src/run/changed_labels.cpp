// SPDX-License-Identifier: MIT
#include "run/changed_labels.h"

#include <fmt/format.h>

#include <algorithm>

#include "check/lifting.h"
#include "compare/label_change.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

std::vector<Handling> handling_by_unit(const Catalogue& c) {
  std::vector<Handling> out;
  for (int u = 0; u < static_cast<int>(c.units.size()); ++u)
    out.push_back(handling_of(c.case_at(u), c.mass_of(u), c.kit.house.lift));
  return out;
}

}  // namespace

std::optional<std::vector<int>> changed_labels(const Catalogue& now, const std::vector<int>& units,
                                               const std::filesystem::path& before, std::string& told, Desk& desk) {
  Loaded old(desk.share);
  if (!load_kit(before, old, desk.err)) return std::nullopt;
  std::vector<int> out;
  for (const LabelChange& change :
       label_changes(now, handling_by_unit(now), old.catalogue, handling_by_unit(old.catalogue))) {
    if (std::find(units.begin(), units.end(), change.unit) == units.end()) continue;
    told += on_screen("{:<12} {}\n", now.units[static_cast<std::size_t>(change.unit)].code, change.what);
    out.push_back(change.unit);
  }
  return out;
}

}  // namespace dunnage
