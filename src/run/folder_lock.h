// SPDX-License-Identifier: MIT
// One run at a time in a folder.
#pragma once

#include <filesystem>
#include <vector>

#include "run/disk_file.h"

namespace dunnage {

/// Holds a folder (made if need be) against a second run on this machine until it goes out of scope; takes folders that
/// it made and that stayed empty away again. Throws WorldError where the folder cannot be made or opened, or another
/// run holds it. Where the system knows no `flock` it holds nothing.
class FolderLock {
 public:
  explicit FolderLock(std::filesystem::path folder);
  ~FolderLock();
  FolderLock(const FolderLock&) = delete;
  FolderLock& operator=(const FolderLock&) = delete;
  /// "." for the folder of the run.
  const std::filesystem::path& folder() const { return folder_; }
  /// Makes a further folder, and those that it lies in.
  void make(const std::filesystem::path& folder);
  /// Each folder that it made, the outermost first.
  const std::vector<std::filesystem::path>& made() const { return made_; }

 private:
  void remove_made();

  std::filesystem::path folder_;
  std::vector<std::filesystem::path> made_;
  Descriptor lock_;
};

}  // namespace dunnage
