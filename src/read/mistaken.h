// SPDX-License-Identifier: MIT
// A kit named where a show is wanted, and the other way round: one message with the remedy instead of many about keys.
#pragma once

#include <filesystem>
#include <string>

namespace dunnage {

/// What to say, and the remedy. An empty cause: it is not mistaken for the other.
struct Mistaken {
  std::string cause, hint;
};

/// `path` is named as a show: is it a kit's folder, or a file of a kit? Reads it, quietly.
Mistaken kit_named_as_show(const std::filesystem::path& path);
/// `path` is named as a kit: is it a show, or one file of a kit? Reads it, quietly.
Mistaken show_named_as_kit(const std::filesystem::path& path);

}  // namespace dunnage
