// SPDX-License-Identifier: MIT
// The version, which is part of each page's revision. CMakeLists.txt says the same (a test).
#pragma once

namespace dunnage {
inline constexpr const char* version = "0.1.0";
}  // namespace dunnage
