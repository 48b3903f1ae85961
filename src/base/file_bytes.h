// SPDX-License-Identifier: MIT
// The bytes of a file, opened once: what was asked of the open file holds for what is read, whatever its name leads to
// by then.
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>

namespace dunnage {

struct FileBytes {
  enum class Fault { none, not_there, folder, not_plain, too_large, unreadable };
  Fault fault = Fault::none;
  std::string bytes;  ///< whole where there is no fault
  std::string why;    ///< of `unreadable`: what the system says
};

/// Every byte of a plain file that has at most `most`. Of a device, a pipe or a larger file nothing is read and nothing
/// is waited for; a file that grows while it is read is too large once it is.
FileBytes file_bytes(const std::filesystem::path& path, std::size_t most);

/// The same of the first `most` bytes alone, however large the file is.
FileBytes first_bytes(const std::filesystem::path& path, std::size_t most);

}  // namespace dunnage
