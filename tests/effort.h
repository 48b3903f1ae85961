// SPDX-License-Identifier: MIT
// How often a test repeats what it does. Under sanitizers and coverage each turn takes ten to forty times as long.
#pragma once

namespace dunnage {

#ifdef __SANITIZE_ADDRESS__
constexpr unsigned effort = 10;
#else
constexpr unsigned effort = 100;
#endif

/// So many turns; a tenth of them under sanitizers.
constexpr unsigned turns(unsigned whole) { return whole * effort / 100; }

}  // namespace dunnage
