// SPDX-License-Identifier: MIT
// Other people's programs judge our files: they run through the shell, and whatever they say counts.
#pragma once

#include <sys/wait.h>
#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <string>

namespace dunnage {

struct Said {
  int status = -1;
  std::string out;
};

/// Before a command that is cut short: where coverage is counted, its half-written counts would spoil those of all.
inline constexpr const char* uncounted = "GCOV_PREFIX=/tmp/dunnage-uncounted";

/// Runs a command; `out` is what it wrote (add 2>&1 to hear its complaints).
inline Said shell(const std::string& command) {
  Said said;
  std::FILE* pipe = popen(command.c_str(), "r");
  if (!pipe) return said;
  char buffer[4096];
  for (std::size_t n; (n = std::fread(buffer, 1, sizeof buffer, pipe)) > 0;) said.out.append(buffer, n);
  const int result = pclose(pipe);
  said.status = WIFEXITED(result) ? WEXITSTATUS(result) : -1;
  return said;
}

/// A whole file.
inline std::string bytes_of(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// Every file of a folder and of those in it, by name, hidden ones too.
inline std::map<std::string, std::string> all_of(const std::filesystem::path& folder) {
  std::map<std::string, std::string> out;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
    if (!entry.is_directory()) out[entry.path().filename().string()] = bytes_of(entry.path());
  return out;
}
/// A folder of its own for one test, gone at its end.
struct Folder {
  std::filesystem::path path;
  explicit Folder(const std::string& name)
      : path(std::filesystem::temp_directory_path() / ("dunnage-test-" + name + "-" + std::to_string(::getpid()))) {
    std::filesystem::remove_all(path);
    std::filesystem::create_directories(path);
  }
  ~Folder() { std::filesystem::remove_all(path); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  /// Writes a file and gives its path.
  std::string file(const std::string& name, const std::string& bytes) const {
    std::ofstream(path / name, std::ios::binary) << bytes;
    return (path / name).string();
  }
};

}  // namespace dunnage
