// SPDX-License-Identifier: MIT
// [[block]] of a layout file, and styles of type.
#pragma once

#include <string_view>

#include "model/sheet.h"
#include "read/table_reader.h"

namespace dunnage {

/// The style under `key`: a table, or its size alone ("14 pt"). What it leaves out is as in `inherited`; a
/// size without leading has the usual leading, and without floor the inherited floor, at most the size
/// itself.
TypeStyle read_style(TableReader& reader, std::string_view key, TypeStyle inherited);

/// One block with the styles it inherits.
BlockSpec read_block(TableReader& reader, const TypeStyle& type, const TypeStyle& head);

}  // namespace dunnage
