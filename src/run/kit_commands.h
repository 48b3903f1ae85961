// SPDX-License-Identifier: MIT
// The words of the commands that make and mend a kit, count what comes home, and settle the program into a shell.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "run/options.h"

namespace CLI {
class App;
}

namespace dunnage {

struct KitTyped {
  BeginOptions begin;
  ImportOptions import;
  TallyOptions tally;
  CompleteOptions complete;
  std::string units = "metric", as = "cases";
  std::vector<std::string> columns, column_units;
};

void add_kit_commands(CLI::App& app, KitTyped& typed);
/// The options of one of these commands; nothing for another. Throws UsageError.
std::optional<Options> finish_kit_command(const std::string& command, KitTyped& typed);

}  // namespace dunnage
