// SPDX-License-Identifier: MIT
// The folder itself is locked: a file to hold the lock would be one more thing to leave behind.
#include "run/folder_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>

#include "base/error.h"

namespace dunnage {

namespace fs = std::filesystem;

FolderLock::FolderLock(fs::path folder) : folder_(std::move(folder)) {
  if (folder_.empty()) folder_ = ".";
  make(folder_);
  try {
    lock_ = Descriptor(::open(folder_.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (!lock_.open()) fail("cannot write in the folder", folder_);
    int held = 0;
    do held = ::flock(lock_.number(), LOCK_EX | LOCK_NB);
    while (held != 0 && errno == EINTR);
    if (held != 0 && errno == EWOULDBLOCK)
      throw WorldError("another run is writing into " + folder_.string() + "; wait until it has ended");
  } catch (const WorldError&) {
    remove_made();
    throw;
  }
}

FolderLock::~FolderLock() {
  lock_.close();
  remove_made();
}

void FolderLock::make(const fs::path& folder) {
  std::vector<fs::path> missing;
  for (fs::path at = folder; !at.empty() && standing(at) == fs::file_type::not_found; at = at.parent_path())
    missing.push_back(at);
  made_.insert(made_.end(), missing.rbegin(), missing.rend());
  std::error_code error;
  fs::create_directories(folder, error);
  if (!error && fs::is_directory(folder, error)) return;
  remove_made();
  throw WorldError("cannot make the folder " + folder.string() + ": " +
                   (error ? error : std::make_error_code(std::errc::not_a_directory)).message());
}

void FolderLock::remove_made() {
  std::for_each(made_.rbegin(), made_.rend(), [](const fs::path& made) { ::rmdir(made.c_str()); });  // only where empty
}

}  // namespace dunnage
