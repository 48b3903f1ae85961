// SPDX-License-Identifier: MIT
// Tables: a strip a row, so that a page may break between any two.
#pragma once

#include <string>

#include "layout/galley.h"
#include "layout/setting.h"

namespace dunnage {

/// Heads are said again where the table goes on, and the group's title, or else `above`, with "(continued)".
/// Columns stand in the layout's order; one that the layout neither places nor omits is a problem, and so are
/// columns that have no room.
void set_table(Setting& setting, const BlockSpec& spec, const block::Table& table, Paper width,
               const std::string& above, Galley& galley);

}  // namespace dunnage
