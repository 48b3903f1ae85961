// SPDX-License-Identifier: MIT
// The world failed (disk, font, PDF library): not the user's text, not a limit, not our mistake.
#pragma once

#include <stdexcept>

namespace dunnage {

/// Caught in main alone; exit code 3. The text is one sentence that a person can act on.
struct WorldError : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// The command line is wrong; exit code 1. Thrown by rooms that read arguments.
struct UsageError : std::runtime_error {
  using std::runtime_error::runtime_error;
};

}  // namespace dunnage
