// SPDX-License-Identifier: MIT
// A face as the house names it: the role it plays and the file it is in. One room reads the list, another
// loads it.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace dunnage {

struct FaceFile {
  std::string role;  ///< "text", "code": what layouts call it by
  std::filesystem::path file;
  std::vector<std::string> fallback;  ///< roles asked in this order for a character that this face lacks
};

}  // namespace dunnage
