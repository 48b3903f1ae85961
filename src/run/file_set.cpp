// SPDX-License-Identifier: MIT
#include "run/file_set.h"

#include <fcntl.h>
#include <stdio.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <utility>

#include "base/error.h"
#include "base/file_bytes.h"
#include "export/pdf_file.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

namespace fs = std::filesystem;
constexpr const char* stage_name = ".dunnage-unfinished";

/// Whether a run of this program made it, which its beginning says.
bool is_our_paper(const fs::path& path) {
  constexpr std::size_t beginning = 64u * 1024;
  const FileBytes first = first_bytes(path, beginning);
  if (first.fault != FileBytes::Fault::none) throw WorldError("cannot read " + path.string() + ": " + first.why);
  const std::string& bytes = first.bytes;
  return bytes.starts_with("%PDF-") && bytes.find("/Creator (" + std::string(paper_creator) + ")") != std::string::npos;
}

/// The file system, not the disk, is what fails: it knows no such way of renaming.
bool unknown_here() { return errno == EINVAL || errno == ENOSYS || errno == ENOTSUP; }

void refuse_inside_stage(const fs::path& path) {
  if (std::find(path.begin(), path.end(), stage_name) != path.end())
    throw UsageError(path.string() + " is where this program keeps unfinished files; choose another name");
}

bool has(int folder, const fs::path& name, const std::string& bytes) {
  const Descriptor file(::openat(folder, name.c_str(), O_RDONLY | O_CLOEXEC));
  if (!file.open()) fail("cannot read", name);
  return read_whole(file, name) == bytes;
}

std::string staged(std::size_t i) { return std::to_string(i + 1); }

}  // namespace

void refuse_to_replace(const fs::path& target, const Sources& sources) {
  if (standing(target) != fs::file_type::regular) return;
  std::error_code ignored;
  for (const SourceFile& source : sources.files())
    if (fs::equivalent(target, source.name, ignored))
      throw UsageError(target.string() +
                       " is one of the files that were read, and a PDF would take its place; choose another name");
  if (!is_our_paper(target))
    throw UsageError(target.string() +
                     " is there already and was not printed by this program; choose another name, or remove it");
}

FileSet::FileSet(fs::path folder, std::ostream& err) : err_(err), lock_((refuse_inside_stage(folder), folder)) {
  stage_path_ = lock_.folder() / stage_name;
  clear_left();
}

FileSet::~FileSet() {
  take_back();
  clear_stage();
}

void FileSet::clear_left() {
  if (standing(stage_path_) == fs::file_type::not_found) return;
  const Descriptor left(::open(stage_path_.c_str(), O_RDONLY | O_DIRECTORY | O_NOFOLLOW | O_CLOEXEC));
  std::error_code error;
  std::vector<std::string> names;
  for (fs::directory_iterator at(stage_path_, error), end; !error && at != end; at.increment(error))
    names.push_back(at->path().filename().string());
  const bool ours = left.open() && !error && std::all_of(names.begin(), names.end(), [](const std::string& name) {
                      return name.find_first_not_of("0123456789") == std::string::npos;
                    });
  if (ours)
    for (const std::string& name : names) ::unlinkat(left.number(), name.c_str(), 0);
  if (!ours || ::rmdir(stage_path_.c_str()) != 0)
    throw WorldError(stage_path_.string() + " is in the way: move it elsewhere");
  err_ << on_screen("removed {}, left by a run that was cut short\n", stage_path_.string());
}

void FileSet::add(File file) {
  refuse_inside_stage(file.target);
  files_.push_back(std::move(file));
}

void FileSet::add_paper(const std::string& name, std::string bytes) {
  add({Kind::paper, lock_.folder() / name, std::move(bytes)});
}

void FileSet::add_new(const std::string& name, std::string bytes) {
  add({Kind::fresh, lock_.folder() / name, std::move(bytes)});
}

void FileSet::add_change(const std::string& name, std::string before, std::string after) {
  add({Kind::change, lock_.folder() / name, std::move(after), std::move(before)});
}

void FileSet::commit() {
  for (const File& file : files_) {
    const fs::file_type type = standing(file.target);
    if (file.kind == Kind::fresh && type != fs::file_type::not_found)
      throw UsageError(file.target.string() + " is there already; nothing was written");
    if (file.kind == Kind::paper && type != fs::file_type::not_found && type != fs::file_type::regular)
      throw WorldError(file.target.string() + " is a folder, a link or a device; remove it or choose another folder");
  }
  try {
    open_stage();
    for (std::size_t i = 0; i < files_.size(); ++i) stage(i);
    for (const bool in_place : {true, false})
      for (std::size_t i = 0; i < files_.size(); ++i)
        if (files_[i].in_place == in_place) place(i);
  } catch (const WorldError& e) {
    if (take_back()) throw;
    throw WorldError("some files are new and some old; run it again. " + std::string(e.what()));
  }
  std::set<fs::path> folders;
  for (const File& file : files_) folders.insert(file.target.parent_path());
  for (const fs::path& made : lock_.made()) folders.insert(made.parent_path());
  clear_stage();
  files_.clear();
  sync_folders(folders);
}

void FileSet::open_stage() {
  if (::mkdir(stage_path_.c_str(), 0700) != 0) fail("cannot write in the folder", lock_.folder());
  staging_ = true;
  stage_ = Descriptor(::open(stage_path_.c_str(), O_RDONLY | O_DIRECTORY | O_NOFOLLOW | O_CLOEXEC));
  if (!stage_.open()) fail("cannot write in the folder", lock_.folder());
}

/// Writes the bytes under a number, and decides whether that file can take the place of the old one.
void FileSet::stage(std::size_t i) {
  File& file = files_[i];
  Descriptor out(::openat(stage_.number(), staged(i).c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
  if (!out.open()) fail("cannot write", file.target);
  write_whole(out, file.bytes, file.target);
  if (file.kind == Kind::fresh) lock_.make(file.target.parent_path());
  if (file.kind == Kind::change) {
    const Descriptor old(::open(file.target.c_str(), O_RDONLY | O_CLOEXEC));
    if (!old.open()) fail("cannot read", file.target);
    if (read_whole(old, file.target) != file.before) changed_meanwhile(file.target);
    file.in_place = standing(file.target) == fs::file_type::symlink || !carry_over(old, out);
  }
  sync(out, file.target);
  if (!out.close()) fail("cannot write", file.target);
}

void FileSet::place(std::size_t i) {
  File& file = files_[i];
  if (file.in_place) {
    rewrite_in_place(file.target, file.before, file.bytes, err_);
    file.placed = Placed::rewritten;
    return;
  }
  if (file.kind != Kind::fresh && exchange(i)) return;
  const bool there = standing(file.target) != fs::file_type::not_found;
  if (file.kind == Kind::fresh || !there) {
    if (rename(i, RENAME_NOREPLACE)) {
      file.placed = Placed::moved;
      return;
    }
    if (there) errno = EEXIST;
    if (there || !unknown_here()) fail("cannot put in place", file.target);
  }
  // The file system knows nothing but to replace: between our look and this call somebody may be quick.
  if (file.kind == Kind::change && !has(AT_FDCWD, file.target, file.before)) changed_meanwhile(file.target);
  if (!rename(i, 0)) fail("cannot put in place", file.target);
  file.placed = there ? Placed::replaced : Placed::moved;
}

/// False where nothing stands there or the file system cannot exchange two names.
bool FileSet::exchange(std::size_t i) {
  File& file = files_[i];
  if (!rename(i, RENAME_EXCHANGE)) {
    if (errno != ENOENT && !unknown_here()) fail("cannot put in place", file.target);
    return false;
  }
  file.placed = Placed::exchanged;
  // Now that nobody can change it any more under its name, it is seen what went.
  if (file.kind == Kind::change && !has(stage_.number(), staged(i), file.before)) changed_meanwhile(file.target);
  return true;
}

bool FileSet::rename(std::size_t i, unsigned how) {
  const std::string from = staged(i);
  const char* to = files_[i].target.c_str();
  return how == 0 ? ::renameat(stage_.number(), from.c_str(), AT_FDCWD, to) == 0
                  : ::renameat2(stage_.number(), from.c_str(), AT_FDCWD, to, how) == 0;
}

/// Undoes what place() did, the last first. False where some new file stays.
bool FileSet::take_back() {
  bool all = true;
  for (std::size_t i = files_.size(); i-- > 0;) {
    File& file = files_[i];
    const Placed placed = std::exchange(file.placed, Placed::no);
    if (placed == Placed::exchanged) all = rename(i, RENAME_EXCHANGE) && all;
    if (placed == Placed::moved)
      all = ::renameat(AT_FDCWD, file.target.c_str(), stage_.number(), staged(i).c_str()) == 0 && all;
    if (placed == Placed::replaced) all = false;
    if (placed == Placed::rewritten) try {
        rewrite_in_place(file.target, file.bytes, file.before, err_);
      } catch (const WorldError&) {
        all = false;
      }
  }
  return all;
}

void FileSet::clear_stage() {
  if (!std::exchange(staging_, false)) return;
  if (stage_.open())
    for (std::size_t i = 0; i < files_.size(); ++i) ::unlinkat(stage_.number(), staged(i).c_str(), 0);
  stage_.close();
  ::rmdir(stage_path_.c_str());
}

/// Folders, so that the new names are on the disk, too.
void FileSet::sync_folders(const std::set<fs::path>& folders) {
  for (const fs::path& folder : folders) {
    const Descriptor open(::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (open.open()) sync(open, folder, "all is written, but the disk may not keep what is in");
  }
}

}  // namespace dunnage
