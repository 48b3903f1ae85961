// SPDX-License-Identifier: MIT
#include "run/folder_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>

#include "base/error.h"

namespace dunnage {
namespace {

namespace fs = std::filesystem;
constexpr const char* lock_name = ".dunnage-lock";

/// Whether the open file still stands under that name: a run that ends takes its lock away, perhaps between our opening
/// and our locking it, and a third run would then lock another file.
bool is_file(int open, const fs::path& path) {
  struct stat ours {
  }, there{};
  return ::fstat(open, &ours) == 0 && ::lstat(path.c_str(), &there) == 0 && ours.st_dev == there.st_dev &&
         ours.st_ino == there.st_ino;
}

}  // namespace

FolderLock::FolderLock(fs::path folder) : folder_(std::move(folder)) {
  if (folder_.empty()) folder_ = ".";
  make_folder();
  const fs::path lock = folder_ / lock_name;
  lock_ = ::open(lock.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0644);
  if (lock_ < 0) {
    const std::string why = std::strerror(errno);
    remove_made();
    throw WorldError("cannot write in the folder " + folder_.string() + ": " + why);
  }
  if (::flock(lock_, LOCK_EX | LOCK_NB) != 0 || !is_file(lock_, lock)) {
    ::close(lock_);
    throw WorldError("another run is writing into " + folder_.string() + "; wait until it has ended");
  }
}

FolderLock::~FolderLock() {
  std::error_code ignored;
  fs::remove(folder_ / lock_name, ignored);
  ::close(lock_);
  remove_made();
}

void FolderLock::make_folder() {
  std::error_code error;
  for (fs::path at = folder_; !at.empty() && !fs::exists(at, error); at = at.parent_path()) made_.push_back(at);
  fs::create_directories(folder_, error);
  if (fs::is_directory(folder_)) return;
  remove_made();
  throw WorldError("cannot make the folder " + folder_.string() + ": " + error.message());
}

void FolderLock::remove_made() {
  std::error_code ignored;
  for (const fs::path& made : made_) fs::remove(made, ignored);  // only where it is empty
}

}  // namespace dunnage
