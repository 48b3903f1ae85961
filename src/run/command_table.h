// SPDX-License-Identifier: MIT
// The command line as a table: what the manual page and the shells' completion are made from.
#pragma once

#include <string>
#include <vector>

namespace dunnage {

struct OptionWords {
  std::string name;  ///< "--out", or "SHOW" for what has its place
  std::string says;
  bool takes_value = false;
  bool needed = false;
  bool repeats = false;
};
struct CommandWords {
  std::string name, says;
  std::vector<OptionWords> options, places;
};
struct CommandTable {
  std::string about, exits;
  std::vector<CommandWords> commands;
};

/// Read off the parser itself.
CommandTable command_table();

/// Completion script for "bash", "zsh" or "fish".
std::string completion(const CommandTable& table, const std::string& shell);
/// dunnage(1) in man(7).
std::string manual_page(const CommandTable& table, const std::string& version);

}  // namespace dunnage
