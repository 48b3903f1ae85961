// SPDX-License-Identifier: MIT
// A text as TOML spells it: used by what reads cells and by what writes kits.
#pragma once

#include <string>
#include <string_view>

namespace dunnage {

/// In double quotes on one line; quotes, backslashes and control signs escaped (TOML 1.0.0, basic strings).
std::string toml_quoted(std::string_view text);

}  // namespace dunnage
