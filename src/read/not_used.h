// SPDX-License-Identifier: MIT
// Sections that are read and checked but that no sheet prints yet, so that nothing typed is silently dropped.
#pragma once

#include <string_view>

#include "base/diagnostic.h"

namespace dunnage {

/// A note at `first` (where the first such section stands) if `section` is in the table of not_used.cpp.
/// Nothing when the section was not typed.
void note_not_used(std::string_view section, const Place& first, Diagnostics& diagnostics);

}  // namespace dunnage
