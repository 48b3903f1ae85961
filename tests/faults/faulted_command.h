// SPDX-License-Identifier: MIT
// A command in a small world of its own, run with one system call broken.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace dunnage {

/// Every file and folder below a folder, by relative path: its bytes; "/" for a folder.
using World = std::map<std::string, std::string>;

struct FaultedCommand {
  std::string name;
  std::string room;  ///< source of src/run that writes; none: it only reads
  World before;
  std::vector<std::string> arguments;
  int code = 0;                                                 ///< with which it ends where nothing is broken
  std::vector<std::pair<std::string, std::string>> links = {};  ///< second names of files: file, name
  std::vector<std::string> edited = {};                         ///< what another program may save meanwhile
};

/// One of each kind.
std::vector<FaultedCommand> faulted_commands();

/// What is broken, as tests/faults/break_calls.c is told.
struct Break {
  long at = 0;
  std::string how, always, file;
};

struct Ended {
  bool killed = false;
  int code = -1;  ///< a signal, where it was not `killed`, is 1000 and its number
  std::string out, err, broken;
};

/// Runs a command in a folder.
Ended run_broken(const std::vector<std::string>& arguments, const std::filesystem::path& folder, const Break& how);
/// The calls of a whole run, each "name path".
std::vector<std::string> calls_of(const std::vector<std::string>& arguments, const std::filesystem::path& folder);

World world_at(const std::filesystem::path& folder);
void make_world(const FaultedCommand& command, const std::filesystem::path& folder);

}  // namespace dunnage
