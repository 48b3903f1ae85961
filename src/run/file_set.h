// SPDX-License-Identifier: MIT
// A packet's files, all or none: temporaries are written and synced first, then all renamed.
#pragma once

#include <filesystem>
#include <ostream>
#include <string>
#include <vector>

#include "base/source.h"
#include "run/folder_lock.h"

namespace dunnage {

/// Throws UsageError where a PDF of that name would take the place of a file that this run read, or of anything that
/// this program did not print. A folder, a link or a device is left to FileSet.
void refuse_to_replace(const std::filesystem::path& target, const Sources& sources);

/// Holds its folder (made if need be) against a second run until it goes out of scope. Removes what a killed run left.
/// Throws WorldError where the folder cannot be made or written, or another run holds it.
class FileSet {
 public:
  explicit FileSet(std::filesystem::path folder);
  ~FileSet();
  FileSet(const FileSet&) = delete;
  FileSet& operator=(const FileSet&) = delete;

  /// Takes the bytes of one file to be. `name` has no separators.
  void add(std::string name, std::string bytes);
  /// Writes all. On failure no old file has changed, but for a failure between two renames, which the
  /// message tells.
  void commit();
  /// Names on `err` what a killed run had left and this one removed.
  void tell_removed(std::ostream& err) const;

 private:
  struct File {
    std::string name, bytes;
  };
  void clear_temporaries();
  FolderLock lock_;
  std::filesystem::path folder_;
  std::vector<File> files_;
  std::vector<std::string> removed_;
};

}  // namespace dunnage
