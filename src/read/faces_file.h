// SPDX-License-Identifier: MIT
// faces.toml: which file plays which role.
#pragma once

#include <filesystem>
#include <vector>

#include "base/face.h"

namespace dunnage {

/// The faces listed in `folder`/faces.toml, in its order, with their files in `folder`.
/// Throws WorldError when the list is missing or wrong: it belongs to the program, not to the user's text.
std::vector<FaceFile> read_faces(const std::filesystem::path& folder);

}  // namespace dunnage
