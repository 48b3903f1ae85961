// SPDX-License-Identifier: MIT
// One page as PDF drawing operators (ISO 32000-1, 8.5 and 9.4): places in whole thousandths of a point,
// so that a text may be placed from the one before and nothing drifts.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "model/page.h"

namespace dunnage {

/// By face: the characters that pages use, of U+0000 to U+FFFF.
using UsedCharacters = std::map<int, std::vector<bool>>;

/// The resource name of a face, the same on every page: "F1" for face 0.
std::string face_name(int face);

/// Adds the ink of a page of `height` to its content stream, which is at its beginning or as it was left by `q` or `Q`;
/// notes the characters in `used`. Asserts that every measure is finite and within 5 m.
void add_operators(std::string& stream, const std::vector<Ink>& ink, Paper height, UsedCharacters& used);

}  // namespace dunnage
