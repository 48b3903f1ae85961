// SPDX-License-Identifier: MIT
// The choice of a QR code's mask (ISO/IEC 18004, 7.8), a row of modules at a time. It is the packaged generator's own
// choice, module for module, in a small part of the time: that is nearly all it does.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

namespace dunnage {

/// One row or column of modules, dark where set; from the left or top at the lowest bit.
using ModuleRow = std::array<std::uint64_t, 3>;

/// A square of modules, a row each.
using Modules = std::vector<ModuleRow>;

/// The code under the mask with the least penalty, the first of equals. `first` is the whole code under mask 0, of
/// `version` (1 to 40) and a level of correction given as its two format bits (L 1, M 0, Q 3, H 2).
Modules best_masked(const Modules& first, int version, int level_bits);

}  // namespace dunnage
