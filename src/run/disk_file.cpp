// SPDX-License-Identifier: MIT
#include "run/disk_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <sys/xattr.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <map>
#include <optional>
#include <utility>

#include "base/error.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

namespace fs = std::filesystem;
using Attributes = std::map<std::string, std::string>;

/// Nothing where they cannot be read; none where the file system has none.
std::optional<Attributes> attributes_of(const Descriptor& file) {
  Attributes out;
  std::string names(65536, '\0');  // the most that Linux gives
  const ssize_t size = ::flistxattr(file.number(), names.data(), names.size());
  if (size < 0) return errno == ENOTSUP || errno == ENOSYS ? std::optional(out) : std::nullopt;
  for (std::size_t at = 0; at < static_cast<std::size_t>(size); at += std::strlen(names.c_str() + at) + 1) {
    const char* name = names.c_str() + at;
    std::string value(65536, '\0');
    const ssize_t length = ::fgetxattr(file.number(), name, value.data(), value.size());
    if (length < 0) return std::nullopt;
    value.resize(static_cast<std::size_t>(length));
    out[name] = std::move(value);
  }
  return out;
}

bool carry_attributes(const Descriptor& from, const Descriptor& to) {
  const auto wanted = attributes_of(from), have = attributes_of(to);
  if (!wanted || !have) return false;
  for (const auto& [name, value] : *wanted)
    if (const auto at = have->find(name); at == have->end() || at->second != value)
      if (::fsetxattr(to.number(), name.c_str(), value.data(), value.size(), 0) != 0) return false;
  for (const auto& [name, value] : *have)  // such as rights that a folder gives to what is made in it
    if (wanted->count(name) == 0 && ::fremovexattr(to.number(), name.c_str()) != 0) return false;
  return true;
}

/// A copy under a name that nothing had, gone at the end unless it is needed.
class SafeCopy {
 public:
  SafeCopy(const fs::path& path, const std::string& bytes, std::ostream& err) {
    Descriptor file;
    for (int n = 1; !file.open(); ++n) {
      path_ = path.string() + ".before" + (n > 1 ? "-" + std::to_string(n) : "");
      file = Descriptor(::open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600));
      if (!file.open() && errno != EEXIST) fail("cannot write", path_);
      if (!file.open())
        err << on_screen("note: {} may be left by a run that was cut short; hold it against {}, and remove it\n",
                         path_.string(), path.filename().string());
    }
    try {
      write_whole(file, bytes, path_);
      sync(file, path_);
    } catch (const WorldError&) {
      ::unlink(path_.c_str());
      throw;
    }
  }
  ~SafeCopy() {
    if (!needed_) ::unlink(path_.c_str());
  }
  SafeCopy(const SafeCopy&) = delete;
  SafeCopy& operator=(const SafeCopy&) = delete;
  const fs::path& keep() {
    needed_ = true;
    return path_;
  }

 private:
  fs::path path_;
  bool needed_ = false;
};

void cut_to(const Descriptor& file, std::size_t size, const fs::path& name) {
  if (::ftruncate(file.number(), static_cast<off_t>(size)) != 0) fail("cannot write", name);
}

}  // namespace

Descriptor::Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}

Descriptor& Descriptor::operator=(Descriptor&& other) noexcept {
  std::swap(number_, other.number_);
  return *this;
}

bool Descriptor::close() {
  const int number = std::exchange(number_, -1);
  return number < 0 || ::close(number) == 0;
}

void fail(const std::string& what, const fs::path& path) {
  throw WorldError(what + " " + path.string() + ": " + std::strerror(errno));
}

void changed_meanwhile(const fs::path& path) {
  throw WorldError(path.string() + " was changed by another program while this one worked; run it again");
}

fs::file_type standing(const fs::path& path) {
  std::error_code error;
  const fs::file_type type = fs::symlink_status(path, error).type();
  if (type == fs::file_type::none) throw WorldError("cannot look at " + path.string() + ": " + error.message());
  return type;
}

std::string read_whole(const Descriptor& file, const fs::path& name) {
  std::string out;
  char buffer[65536];
  for (;;) {
    const ssize_t n = ::pread(file.number(), buffer, sizeof buffer, static_cast<off_t>(out.size()));
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) fail("cannot read", name);
    if (n == 0) return out;
    out.append(buffer, static_cast<std::size_t>(n));
  }
}

void write_whole(const Descriptor& file, const std::string& bytes, const fs::path& name) {
  std::size_t done = 0;
  while (done < bytes.size()) {
    const ssize_t n = ::pwrite(file.number(), bytes.data() + done, bytes.size() - done, static_cast<off_t>(done));
    if (n < 0 && errno == EINTR) continue;
    if (n <= 0) fail("cannot write", name);
    done += static_cast<std::size_t>(n);
  }
}

void sync(const Descriptor& file, const fs::path& name, const std::string& failing) {
  if (::fsync(file.number()) != 0 && errno != EINVAL && errno != ENOSYS && errno != ENOTSUP) fail(failing, name);
}

bool carry_over(const Descriptor& from, const Descriptor& to) {
  struct stat old {
  }, now{};
  if (::fstat(from.number(), &old) != 0 || ::fstat(to.number(), &now) != 0 || old.st_nlink > 1) return false;
  if ((old.st_uid != now.st_uid || old.st_gid != now.st_gid) && ::fchown(to.number(), old.st_uid, old.st_gid) != 0)
    return false;
  if (!carry_attributes(from, to) || ::fstat(to.number(), &now) != 0) return false;
  return old.st_mode == now.st_mode || ::fchmod(to.number(), old.st_mode & 07777) == 0;
}

void rewrite_in_place(const fs::path& path, const std::string& before, const std::string& after, std::ostream& err) {
  const Descriptor file(::open(path.c_str(), O_RDWR | O_CLOEXEC));
  if (!file.open()) fail("cannot write", path);
  SafeCopy copy(path, before, err);
  if (read_whole(file, path) != before) changed_meanwhile(path);
  // The one call that writes covers all that stands there, so that no two texts are ever mixed; line ends more at the
  // end are nothing to TOML.
  std::string padded = after;
  padded.resize(std::max(before.size(), after.size()), '\n');
  try {
    write_whole(file, padded, path);
    sync(file, path);
    cut_to(file, after.size(), path);
  } catch (const WorldError& failed) {
    try {
      write_whole(file, before, path);
      cut_to(file, before.size(), path);
      sync(file, path);
    } catch (const WorldError&) {
      throw WorldError(std::string(failed.what()) + "; its text before is in " + copy.keep().string());
    }
    throw;
  }
}

}  // namespace dunnage
