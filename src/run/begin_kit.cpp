// SPDX-License-Identifier: MIT
// `dunnage begin`: a small kit and show to change into one's own.
#include <algorithm>
#include <optional>

#include "base/error.h"
#include "read/csv_text.h"
#include "run/commands.h"
#include "run/folder_lock.h"
#include "run/new_files.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

namespace fs = std::filesystem;

constexpr const char* names[] = {"kit/house.toml", "kit/items.toml", "kit/cases.toml", "show.toml"};

/// Files that a version control system hides, and empty folders, are no reason to refuse.
bool holds_something(const fs::path& folder) {
  if (!fs::exists(folder)) return false;
  if (!fs::is_directory(folder)) return true;
  const auto seen = [](const fs::directory_entry& entry) {
    const bool empty = entry.is_directory() && fs::is_empty(entry.path());
    return !empty && !entry.path().filename().string().starts_with(".");
  };
  return std::any_of(fs::directory_iterator(folder), fs::directory_iterator(), seen);
}

}  // namespace

int begin_kit(const BeginOptions& options, Desk& desk) {
  std::vector<fs::path> to_be;
  for (const char* name : names) to_be.push_back(options.folder / name);
  std::optional<FolderLock> lock;
  if (!fs::exists(options.folder) || fs::is_directory(options.folder)) lock.emplace(options.folder);
  clear_unfinished(to_be, desk.err);
  if (holds_something(options.folder))
    throw UsageError("\"" + options.folder.string() + "\" is not empty; name a new folder. Nothing was written");
  const fs::path from = desk.share / "begin" / (options.units == UnitSystem::us ? "us" : "metric");
  Sources sources;
  Diagnostics diagnostics;
  std::vector<std::pair<fs::path, std::string>> files;
  for (const char* name : names)
    if (auto text = load_bytes((from / name).string(), sources, diagnostics))
      files.emplace_back(options.folder / name, std::move(*text));
  if (diagnostics.has_errors())
    throw WorldError("the program's own files are not where they should be: " + from.string());
  write_new_files(files);
  for (const auto& [path, text] : files) desk.out << on_screen("{}\n", path.string());
  desk.out << on_screen("Next: dunnage check {}\n", (options.folder / "show.toml").string())
           << "Then change the kit to what you own, or fetch it from a spreadsheet with dunnage import.\n";
  return 0;
}

}  // namespace dunnage
