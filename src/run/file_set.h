// SPDX-License-Identifier: MIT
// The one place where files are written: all of a run or none. They are written and synced under names of our own in a
// folder of our own first, and put in their places when all of them are whole.
#pragma once

#include <filesystem>
#include <ostream>
#include <set>
#include <string>
#include <vector>

#include "base/source.h"
#include "run/disk_file.h"
#include "run/folder_lock.h"

namespace dunnage {

/// Throws UsageError where a PDF of that name would take the place of a file that this run read, or of anything that
/// this program did not print. A folder, a link or a device is left to FileSet.
void refuse_to_replace(const std::filesystem::path& target, const Sources& sources);

/// Holds its folder (made if need be) against a second run until it goes out of scope. What a killed run left is
/// removed, and named on `err`: that is never more than our own folder of unfinished files. Throws WorldError where the
/// folder cannot be made or written, or another run holds it; UsageError where it lies in such a folder.
class FileSet {
 public:
  FileSet(std::filesystem::path folder, std::ostream& err);
  ~FileSet();
  FileSet(const FileSet&) = delete;
  FileSet& operator=(const FileSet&) = delete;

  /// Takes the bytes of one file to be. `name` is relative to the folder. A PDF takes the place of a plain file;
  void add_paper(const std::string& name, std::string bytes);
  /// a new file stands where nothing did, its folder made if need be;
  void add_new(const std::string& name, std::string bytes);
  /// a change is made where the file still has the bytes `before`, and keeps its owner, rights, extended attributes and
  /// further names.
  void add_change(const std::string& name, std::string before, std::string after);

  /// Writes all. On failure no file has changed and none is new, but where the message says otherwise: the file system
  /// cannot exchange two names, or fails once more.
  void commit();

 private:
  enum class Kind { paper, fresh, change };
  /// How it came to stand in its place, and so how it is taken back.
  enum class Placed { no, moved, exchanged, replaced, rewritten };
  struct File {
    Kind kind;
    std::filesystem::path target;
    std::string bytes, before = {};
    bool in_place = false;
    Placed placed = Placed::no;
  };

  void add(File file);
  void clear_left();
  void open_stage();
  void stage(std::size_t i);
  void place(std::size_t i);
  bool exchange(std::size_t i);
  bool rename(std::size_t i, unsigned how);
  bool take_back();
  void clear_stage();
  static void sync_folders(const std::set<std::filesystem::path>& folders);

  std::ostream& err_;
  FolderLock lock_;
  std::filesystem::path stage_path_;
  bool staging_ = false;  ///< that folder is there
  Descriptor stage_;
  std::vector<File> files_;
};

}  // namespace dunnage
