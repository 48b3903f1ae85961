// SPDX-License-Identifier: MIT
// The list is the program's own, staged with the fonts: a fault in it is a broken installation, told in one
// sentence.
#include "read/faces_file.h"

#include <toml++/toml.h>

#include <algorithm>

#include "base/error.h"
#include "base/file_bytes.h"
#include "read/toml_depth.h"

namespace dunnage {
namespace {

FaceFile read_face(const toml::table& entry, const std::filesystem::path& folder, const std::string& list) {
  const auto role = entry["role"].value<std::string>(), file = entry["file"].value<std::string>();
  if (!role || !file) throw WorldError(list + ": a face has no role or no file");
  FaceFile face{*role, folder / *file, {}};
  if (const toml::array* fallback = entry["fallback"].as_array())
    for (const toml::node& name : *fallback) face.fallback.push_back(name.value_or(std::string()));
  return face;
}

void check_roles(const std::vector<FaceFile>& faces, const std::string& list) {
  const auto count = [&](const std::string& role) { return std::ranges::count(faces, role, &FaceFile::role); };
  for (const FaceFile& face : faces) {
    if (count(face.role) > 1) throw WorldError(list + ": the role \"" + face.role + "\" is given twice");
    for (const std::string& role : face.fallback)
      if (count(role) == 0)
        throw WorldError(list + ": \"" + face.role + "\" falls back to \"" + role + "\", which is no role");
  }
}

}  // namespace

std::vector<FaceFile> read_faces(const std::filesystem::path& folder) {
  const std::filesystem::path path = folder / "faces.toml";
  const std::string list = path.string();
  constexpr std::size_t most = 1024 * 1024;
  const FileBytes read = file_bytes(path, most);
  if (read.fault != FileBytes::Fault::none || too_deep(read.bytes, 8, 8))
    throw WorldError(list + (read.fault == FileBytes::Fault::not_there ? " is missing" : " cannot be read") +
                     ": build the program again, which stages the fonts");
  std::vector<FaceFile> faces;
  try {
    const toml::table table = toml::parse(std::string_view(read.bytes), list);
    if (const toml::array* entries = table["face"].as_array())
      for (const toml::node& entry : *entries)
        if (entry.is_table()) faces.push_back(read_face(*entry.as_table(), folder, list));
  } catch (const toml::parse_error& fault) {
    throw WorldError(list + ": " + std::string(fault.description()));
  }
  if (faces.empty()) throw WorldError(list + " lists no face");
  check_roles(faces, list);
  return faces;
}

}  // namespace dunnage
