// SPDX-License-Identifier: MIT
// The keys of a file, learned from the room that reads it: there is no second list that could fall behind.
#pragma once

#include <vector>

#include "model/key.h"
#include "read/table_reader.h"

namespace dunnage {

/// What `fill` asks for: sections and entries are entered once, and the answers to "is it there" are tried both
/// ways. In the order asked; keys asked for on either way stand once.
std::vector<Key> learn_keys(const TableReader::Fill& fill);

}  // namespace dunnage
