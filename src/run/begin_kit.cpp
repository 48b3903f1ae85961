// SPDX-License-Identifier: MIT
// `dunnage begin`: a small kit and show to change into one's own.
#include <fcntl.h>

#include <algorithm>
#include <optional>

#include "base/error.h"
#include "read/csv_text.h"
#include "read/kit_file.h"
#include "run/commands.h"
#include "run/file_set.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

namespace fs = std::filesystem;

constexpr const char* names[] = {"kit/house.toml", "kit/items.toml", "kit/cases.toml", "show.toml"};

/// Whether the folder holds nothing but a part of these files, byte for byte: what a run that was cut short left is
/// gone on with. What a version control system hides, and empty folders, do not count.
bool is_ours_to_fill(const fs::path& folder, const std::vector<NamedText>& files) {
  std::size_t have = 0;
  for (fs::recursive_directory_iterator at(folder), end; at != end; ++at) {
    const bool is_folder = at->is_directory() && !at->is_symlink();
    if (at->path().filename().string().starts_with(".")) {
      if (is_folder) at.disable_recursion_pending();
    } else if (!is_folder) {
      const std::string name = at->path().lexically_relative(folder).generic_string();
      const auto is_it = [&](const NamedText& file) { return file.first == name; };
      const auto file = std::find_if(files.begin(), files.end(), is_it);
      if (file == files.end() || !at->is_regular_file()) return false;
      const Descriptor there(::open(at->path().c_str(), O_RDONLY | O_CLOEXEC));
      if (!there.open()) fail("cannot read", at->path());
      if (read_whole(there, at->path()) != file->second) return false;
      ++have;
    }
  }
  return have < files.size();
}

/// The program's own beginning, by name.
std::vector<NamedText> own_files(const fs::path& from) {
  Sources sources;
  Diagnostics diagnostics;
  std::vector<NamedText> out;
  for (const char* name : names)
    if (auto text = load_bytes((from / name).string(), sources, diagnostics)) out.emplace_back(name, std::move(*text));
  if (diagnostics.has_errors())
    throw WorldError("the program's own files are not where they should be: " + from.string());
  return out;
}

}  // namespace

int begin_kit(const BeginOptions& options, Desk& desk) {
  const auto files = own_files(desk.share / "begin" / (options.units == UnitSystem::us ? "us" : "metric"));
  const fs::path folder = options.folder.empty() ? "." : options.folder;
  std::optional<FileSet> set;
  if (!fs::exists(folder) || fs::is_directory(folder)) set.emplace(folder, desk.err);
  if (!set || !is_ours_to_fill(folder, files))
    throw UsageError("\"" + options.folder.string() + "\" is not empty; name a new folder. Nothing was written");
  for (const auto& [name, text] : files)
    if (!fs::exists(folder / name)) set->add_new(name, text);
  set->commit();
  for (const auto& [name, text] : files) desk.out << on_screen("{}\n", (options.folder / name).string());
  desk.out << on_screen("Next: dunnage check {}\n", (options.folder / "show.toml").string())
           << "Then change the kit to what you own, or fetch it from a spreadsheet with dunnage import.\n";
  return 0;
}

}  // namespace dunnage
