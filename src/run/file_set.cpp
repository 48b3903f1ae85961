// SPDX-License-Identifier: MIT
#include "run/file_set.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <string_view>

#include "base/error.h"
#include "base/file_bytes.h"
#include "export/pdf_file.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

namespace fs = std::filesystem;
constexpr const char* temporary_ending = ".dunnage-part";

[[noreturn]] void fail(const std::string& what, const fs::path& path) {
  throw WorldError(what + " " + path.string() + ": " + std::strerror(errno));
}

void write_synced(const fs::path& path, const std::string& bytes) {
  const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC | O_NOFOLLOW, 0644);
  if (file < 0) fail("cannot write", path);
  std::size_t done = 0;
  while (done < bytes.size()) {
    const ssize_t n = ::write(file, bytes.data() + done, bytes.size() - done);
    if (n < 0 && errno == EINTR) continue;
    if (n <= 0) {
      const int error = errno;
      ::close(file);
      errno = error;
      fail("cannot write", path);
    }
    done += static_cast<std::size_t>(n);
  }
  const bool synced = ::fsync(file) == 0;
  if (::close(file) != 0 || !synced) fail("cannot write", path);
}

/// Whether a run of this program made it, which its beginning says.
bool is_our_paper(const fs::path& path) {
  constexpr std::size_t beginning = 64u * 1024;
  const std::string bytes = first_bytes(path, beginning).bytes;
  return bytes.starts_with("%PDF-") && bytes.find("/Creator (" + std::string(paper_creator) + ")") != std::string::npos;
}

}  // namespace

void refuse_to_replace(const fs::path& target, const Sources& sources) {
  std::error_code ignored;
  if (!fs::is_regular_file(fs::symlink_status(target, ignored))) return;
  for (const SourceFile& source : sources.files())
    if (fs::equivalent(target, source.name, ignored))
      throw UsageError(target.string() +
                       " is one of the files that were read, and a PDF would take its place; choose another name");
  if (!is_our_paper(target))
    throw UsageError(target.string() +
                     " is there already and was not printed by this program; choose another name, or remove it");
}

FileSet::FileSet(fs::path folder) : lock_(std::move(folder)), folder_(lock_.folder()) { clear_temporaries(); }

FileSet::~FileSet() {
  std::error_code ignored;
  for (const File& file : files_) fs::remove(folder_ / (file.name + temporary_ending), ignored);
}

void FileSet::clear_temporaries() {
  std::vector<fs::path> left;
  for (const auto& entry : fs::directory_iterator(folder_)) {
    const std::string name = entry.path().filename().string();
    const std::string ending = temporary_ending;
    if (name.size() > ending.size() && name.compare(name.size() - ending.size(), ending.size(), ending) == 0)
      left.push_back(entry.path());
  }
  for (const fs::path& path : left) {
    std::error_code ignored;
    if (fs::remove(path, ignored)) removed_.push_back(path.filename().string());
  }
}

void FileSet::tell_removed(std::ostream& err) const {
  for (const std::string& name : removed_) err << on_screen("removed {}, left by a run that was cut short\n", name);
}

void FileSet::add(std::string name, std::string bytes) { files_.push_back({std::move(name), std::move(bytes)}); }

void FileSet::commit() {
  for (const File& file : files_) {
    const fs::path target = folder_ / file.name;
    if (fs::is_symlink(target) || (fs::exists(target) && !fs::is_regular_file(target)))
      throw WorldError(target.string() + " is a folder, a link or a device; remove it or choose another folder");
    write_synced(folder_ / (file.name + temporary_ending), file.bytes);
  }
  for (const File& file : files_) {
    const fs::path target = folder_ / file.name;
    if (::rename((folder_ / (file.name + temporary_ending)).c_str(), target.c_str()) != 0)
      fail("some files of this packet are new and some old; print again. Cannot put in place", target);
  }
  const int folder = ::open(folder_.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (folder >= 0) {
    ::fsync(folder);
    ::close(folder);
  }
}

}  // namespace dunnage
