// SPDX-License-Identifier: MIT
// A TOML value on one line, spelled one way, so that a value that goes out to a spreadsheet comes back the same.
#pragma once

#include <toml++/toml.h>

#include <optional>
#include <string>
#include <string_view>

namespace dunnage {

/// The value that `text` spells, spelled our way; nothing where it is no TOML value.
std::optional<std::string> inline_toml(std::string_view text);

/// A parsed value, spelled our way; keys of tables in the order typed.
std::string inline_text(const toml::node& node);

}  // namespace dunnage
