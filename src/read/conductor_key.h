// SPDX-License-Identifier: MIT
// "12 AWG" or "2.5 mm2": a size of conductor, which is no plain quantity.
#pragma once

#include "read/table_reader.h"

namespace dunnage {

/// The key "conductor" of a cable; a size that no table has is told.
Maybe<Conductor> read_conductor(TableReader& section);

}  // namespace dunnage
