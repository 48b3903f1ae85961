// SPDX-License-Identifier: MIT
#include "read/mistaken.h"

#include <algorithm>
#include <system_error>

#include "read/toml_file.h"

namespace dunnage {
namespace {

namespace fs = std::filesystem;

/// What a folder or file is by what stands in it; nothing is told of its mistakes.
struct Looks {
  bool show = false, kit_file = false;
  std::string kit;  ///< of a show: the folder that it names
};

Looks looks_of(const fs::path& path) {
  Looks looks;
  std::error_code error;
  if (!fs::is_regular_file(path, error)) return looks;
  Sources sources;
  Diagnostics unheard;
  const auto file = load_toml(path, sources, unheard);
  if (!file) return looks;
  looks.show = file->table.contains("show") || file->table.contains("kit");
  if (const auto kit = file->table["kit"].value<std::string>())
    looks.kit = (path.parent_path() / *kit).lexically_normal().string();
  for (const char* section : {"house", "item", "case", "unit", "structure", "vehicle"})
    looks.kit_file = looks.kit_file || (!looks.show && file->table.contains(section));
  return looks;
}

bool holds_toml(const fs::path& folder) {
  std::error_code error;
  for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
    if (at->path().extension() == ".toml") return true;
  return false;
}

/// The folder of a file as one would type it.
std::string folder_of(const fs::path& file) {
  const fs::path folder = file.parent_path();
  return folder.empty() ? "." : folder.string();
}

constexpr const char* name_a_show = "name the show's file: the one with [show] and kit = \"...\" in it";

}  // namespace

Mistaken kit_named_as_show(const fs::path& path) {
  const std::string quoted = in_quotes(path.string());
  std::error_code error;
  if (fs::is_directory(path, error) && holds_toml(path))
    return {quoted + " is a folder, as a kit is, and a show is wanted", name_a_show};
  if (looks_of(path).kit_file) return {quoted + " is a file of a kit, and a show is wanted", name_a_show};
  return {};
}

Mistaken show_named_as_kit(const fs::path& path) {
  const std::string quoted = in_quotes(path.string());
  const Looks looks = looks_of(path);
  if (looks.show)
    return {
        quoted + " is a show, and a kit is wanted",
        "name its kit's folder: " + (looks.kit.empty() ? std::string("the one that kit = \"...\" names") : looks.kit)};
  if (looks.kit_file)
    return {quoted + " is one file of a kit, and a kit is its whole folder", "name the folder: " + folder_of(path)};
  return {};
}

}  // namespace dunnage
