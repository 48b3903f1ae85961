// SPDX-License-Identifier: MIT
// One run at a time in a folder.
#pragma once

#include <filesystem>
#include <vector>

namespace dunnage {

/// Holds a folder (made if need be) against a second run until it goes out of scope; takes folders that it made and
/// that stayed empty away again. Throws WorldError where the folder cannot be made or written, or another run holds it.
/// On a network file system without `flock` it holds nothing.
class FolderLock {
 public:
  explicit FolderLock(std::filesystem::path folder);
  ~FolderLock();
  FolderLock(const FolderLock&) = delete;
  FolderLock& operator=(const FolderLock&) = delete;
  /// "." for the folder of the run.
  const std::filesystem::path& folder() const { return folder_; }

 private:
  void make_folder();
  void remove_made();

  std::filesystem::path folder_;
  std::vector<std::filesystem::path> made_;  ///< the innermost first
  int lock_ = -1;
};

}  // namespace dunnage
