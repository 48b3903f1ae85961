// SPDX-License-Identifier: MIT
// Files where none was: all or none, and never over anything that stands.
#pragma once

#include <filesystem>
#include <ostream>
#include <string>
#include <utility>
#include <vector>

namespace dunnage {

/// Writes files that do not exist yet, making folders as needed. Throws UsageError, before anything is written, where
/// one exists; WorldError where the disk fails, and what was put in place is taken away again.
void write_new_files(const std::vector<std::pair<std::filesystem::path, std::string>>& files);

/// Takes away what a killed run left of these files, and names it on `err`. Files that it had finished stay.
void clear_unfinished(const std::vector<std::filesystem::path>& files, std::ostream& err);

}  // namespace dunnage
