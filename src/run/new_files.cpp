// SPDX-License-Identifier: MIT
#include "run/new_files.h"

#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fstream>

#include "base/error.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

namespace fs = std::filesystem;
constexpr const char* temporary_ending = ".dunnage-new";

fs::path temporary(const fs::path& path) { return path.string() + temporary_ending; }

void write_temporary(const fs::path& path, const std::string& bytes) {
  std::error_code error;
  if (!path.parent_path().empty()) fs::create_directories(path.parent_path(), error);
  if (error) throw WorldError("cannot make the folder " + path.parent_path().string() + ": " + error.message());
  std::ofstream out(temporary(path), std::ios::binary | std::ios::trunc);
  out << bytes;
  out.close();
  if (!out) throw WorldError("cannot write " + path.string() + ": " + std::strerror(errno));
}

bool stands(const fs::path& path) {
  std::error_code ignored;
  return fs::exists(fs::symlink_status(path, ignored));
}

}  // namespace

void clear_unfinished(const std::vector<fs::path>& files, std::ostream& err) {
  std::error_code ignored;
  // A file is put in place as a second name of its temporary: while both stand, the run had not ended.
  const auto placed = [&](const fs::path& path) { return fs::equivalent(path, temporary(path), ignored); };
  const bool ended =
      std::any_of(files.begin(), files.end(), [&](const fs::path& path) { return stands(path) && !placed(path); });
  for (const fs::path& path : files) {
    if (!stands(temporary(path))) continue;
    if (!ended && placed(path)) fs::remove(path, ignored);
    if (fs::remove(temporary(path), ignored))
      err << on_screen("removed {}, left by a run that was cut short\n", temporary(path).string());
    fs::remove(path.parent_path(), ignored);  // only where it is empty
  }
}

void write_new_files(const std::vector<std::pair<fs::path, std::string>>& files) {
  for (const auto& [path, bytes] : files)
    if (fs::exists(fs::symlink_status(path)))
      throw UsageError(path.string() + " is there already; nothing was written");
  std::vector<fs::path> placed;
  std::string failed;
  try {
    for (const auto& [path, bytes] : files) write_temporary(path, bytes);
    // A link does not replace what another program put there meanwhile, as a rename would.
    for (const auto& [path, bytes] : files) {
      if (::link(temporary(path).c_str(), path.c_str()) != 0)
        throw WorldError("cannot put " + path.string() + " in place: " + std::strerror(errno));
      placed.push_back(path);
    }
  } catch (const WorldError& e) {
    failed = e.what();
  }
  std::error_code ignored;
  for (const auto& [path, bytes] : files) fs::remove(temporary(path), ignored);
  if (failed.empty()) return;
  for (const fs::path& path : placed) fs::remove(path, ignored);
  throw WorldError(failed);
}

}  // namespace dunnage
