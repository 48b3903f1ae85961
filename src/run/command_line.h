// SPDX-License-Identifier: MIT
// Arguments to options: the only room that includes the command line library.
#pragma once

#include <string>
#include <vector>

#include "run/options.h"

namespace dunnage {

/// What the arguments (without the program's name) ask for. Throws UsageError with one clear message, the
/// nearest right word included, when they are wrong.
Options read_command_line(const std::vector<std::string>& arguments);

}  // namespace dunnage
