// SPDX-License-Identifier: MIT
// How JSON is spelled: indented, and with every sign that a terminal would obey, or that nobody sees, as its escape.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

namespace dunnage {

/// Ends with a line end. Reads back as the same values (RFC 8259, section 7: a sign as its UTF-16 escapes).
std::string json_text(const nlohmann::ordered_json& value);

}  // namespace dunnage
