// SPDX-License-Identifier: MIT
// The keys of a file as a JSON Schema, so that an editor completes them and marks mistakes while one types.
#pragma once

#include <string>
#include <vector>

#include "model/key.h"

namespace dunnage {

/// JSON Schema, draft 7 (json-schema.org, 2018), of a file with these keys at its top. Quantities are texts: that
/// their units are right is told by the reader alone. Ends with a line end.
std::string schema_json(const std::string& title, const std::vector<Key>& keys);

}  // namespace dunnage
