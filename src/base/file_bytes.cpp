// SPDX-License-Identifier: MIT
#include "base/file_bytes.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <system_error>

namespace dunnage {
namespace {

/// Closed when it goes.
class OpenFile {
 public:
  explicit OpenFile(const std::filesystem::path& path)  // without waiting: a pipe without a writer opens at once
      : number_(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY)) {}
  ~OpenFile() {
    if (number_ >= 0) ::close(number_);
  }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;
  int number() const { return number_; }

 private:
  int number_;
};

FileBytes unread(FileBytes::Fault fault) { return {fault, {}, {}}; }
FileBytes unreadable(int error) {
  if (error == ENOENT || error == ENOTDIR) return unread(FileBytes::Fault::not_there);
  return {FileBytes::Fault::unreadable, {}, std::generic_category().message(error)};
}

/// Reads up to `room` bytes in all into `out`; false where the disk fails, which `errno` says.
bool fill(int file, std::size_t room, std::string& out) {
  std::size_t done = out.size();
  out.resize(room);
  while (done < room) {
    const ssize_t n = ::read(file, out.data() + done, room - done);
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return false;
    if (n == 0) break;
    done += static_cast<std::size_t>(n);
  }
  out.resize(done);
  return true;
}

/// `whole`: a file that has more than `most` is too large.
FileBytes read_file(const std::filesystem::path& path, std::size_t most, bool whole) {
  const OpenFile file(path);
  struct stat is {};
  if (file.number() < 0 && errno == ENXIO) return unread(FileBytes::Fault::not_plain);  // a socket
  if (file.number() < 0 || ::fstat(file.number(), &is) != 0) return unreadable(errno);
  if (S_ISDIR(is.st_mode)) return unread(FileBytes::Fault::folder);
  if (!S_ISREG(is.st_mode)) return unread(FileBytes::Fault::not_plain);
  const auto size = static_cast<std::size_t>(std::max<off_t>(0, is.st_size));
  if (whole && size > most) return unread(FileBytes::Fault::too_large);
  const std::size_t end = whole ? most + 1 : most;
  FileBytes out;
  // One more than it should have: the end is known only when nothing more comes.
  for (std::size_t room = std::min(size + 1, end);; room = std::min(2 * room, end)) {
    if (!fill(file.number(), room, out.bytes)) return unreadable(errno);
    if (whole && out.bytes.size() > most) return unread(FileBytes::Fault::too_large);
    if (out.bytes.size() < room || room == end) return out;
  }
}

}  // namespace

FileBytes file_bytes(const std::filesystem::path& path, std::size_t most) { return read_file(path, most, true); }
FileBytes first_bytes(const std::filesystem::path& path, std::size_t most) { return read_file(path, most, false); }

}  // namespace dunnage
