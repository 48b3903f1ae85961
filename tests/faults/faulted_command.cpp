// SPDX-License-Identifier: MIT
#include "faulted_command.h"

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <fstream>
#include <sstream>
#include <stdexcept>

#include "../shell.h"

extern char** environ;

namespace dunnage {

namespace {

namespace fs = std::filesystem;

fs::path beside(const fs::path& folder, const std::string& ending) { return folder.string() + ending; }

/// A world with what a command has made in it.
World with(World world, const std::vector<std::string>& arguments) {
  const fs::path folder = fs::temp_directory_path() / ("dunnage-faults-made-" + std::to_string(::getpid()));
  make_world({"", "", world, {}}, folder);
  const Ended ended = run_broken(arguments, folder, {});
  if (ended.code != 0 && ended.code != 2) throw std::runtime_error(ended.err);
  world = world_at(folder);
  fs::remove_all(folder);
  return world;
}

World beginning() {
  World out = world_at(fs::path(PROJECT_DIR) / "examples/begin/metric");
  out["lists"] = "/";
  out["lists/gear.csv"] = "Code,Name,Form,Weight (kg)\nBOX,Box,box,12\nBAG,Bag,bag,3\n";
  out["lists/scans.txt"] = "MICS out\n";
  return out;
}

World weighing() {
  const std::string head = "[house]\nname = \"h\"\nphone = \"1\"\nunits = \"metric\"\n";
  const auto box = [](const std::string& code, const std::string& weighed) {
    return "[[case]]\ncode = \"" + code + "\"\nname = \"b\"\nform = \"bag\"\n" + weighed;
  };
  return {{"kit", "/"},
          {"kit/a.toml", head + box("BAG", "weighed = \"27.12345 kg\"\n")},
          {"kit/b.toml", "\xEF\xBB\xBF" + box("DESK", "")},
          {"scale.csv", "Code,Weight (kg)\nBAG,30\nDESK,86.5\n"}};
}

}  // namespace

std::vector<FaultedCommand> faulted_commands() {
  const World begun = beginning(), weights = weighing();
  const std::vector<std::string> sheets = {"print", "show.toml", "--out", "out"},
                                 few = {"print", "show.toml", "--only", "cover,return-sheet", "--out", "out"},
                                 packet = {"print", "show.toml", "--one-file", "--out", "out"},
                                 labels = {"label", "kit", "--out", "out/labels.pdf"},
                                 weigh = {"import", "scale.csv", "--weights", "--kit", "kit"};
  const auto us = [](std::vector<std::string> arguments) {
    arguments.insert(arguments.end(), {"--units", "us"});
    return arguments;
  };
  World standing = begun;
  standing["lists/gear.csv"] = "Code,Name,Form\nODD,Box,box\n";
  std::vector<FaultedCommand> out = {
      {"import --weights", "import_weights", weights, weigh, 0},
      {"import --weights of a file with two names", "import_weights", weights, weigh, 0},
      {"label", "print_labels", with(begun, us(labels)), labels, 0},
      {"label --test-sheet", "print_labels", begun, {"label", "kit", "--test-sheet", "--out", "l.pdf"}, 0},
      {"tally --sheet",
       "tally_show",
       begun,
       {"tally", "show.toml", "--out", "lists/scans.txt", "--sheet", "back.pdf"},
       2},
      {"list --csv", "", begun, {"list", "cases", "kit", "--csv"}, 0},
      {"check", "", begun, {"check", "show.toml"}, 0},
      {"begin", "begin_kit", {{"here", "/"}}, {"begin", "new/one"}, 0},
      {"begin in a folder that is there", "begin_kit", {{".hidden", "mine"}}, {"begin", "."}, 0},
      {"import into a new kit", "import_table", begun, {"import", "lists/gear.csv", "--kit", "ours"}, 0},
      {"import into a kit", "import_table", standing, {"import", "lists/gear.csv", "--kit", "kit"}, 0},
      {"print into a new folder", "print_packet", begun, sheets, 0},
      {"print over older sheets", "print_packet", with(begun, us(few)), few, 0},
      {"print --one-file", "print_packet", with(begun, us(packet)), packet, 0},
  };
  out[0].edited = out[1].edited = {"kit/a.toml", "kit/b.toml"};
  out[1].links = {{"kit/a.toml", "second.toml"}};
  return out;
}

World world_at(const fs::path& folder) {
  World out;
  for (const auto& entry : fs::recursive_directory_iterator(folder))
    out[entry.path().lexically_relative(folder).string()] = entry.is_directory() ? "/" : bytes_of(entry.path());
  return out;
}

void make_world(const FaultedCommand& command, const fs::path& folder) {
  fs::remove_all(folder);
  fs::create_directories(folder);
  for (const auto& [name, bytes] : command.before)  // a folder comes before what is in it
    if (bytes == "/")
      fs::create_directory(folder / name);
    else
      std::ofstream(folder / name, std::ios::binary) << bytes;
  for (const auto& [file, name] : command.links) fs::create_hard_link(folder / file, folder / name);
}

Ended run_broken(const std::vector<std::string>& arguments, const fs::path& folder, const Break& how) {
  const fs::path said = beside(folder, ".out"), err = beside(folder, ".err"), log = beside(folder, ".log");
  fs::remove(log);
  std::vector<std::string> words = {PROGRAM}, set = {"LD_PRELOAD=" BREAK_CALLS,   "BREAK_AT=" + std::to_string(how.at),
                                                     "BREAK_HOW=" + how.how,      "BREAK_ALWAYS=" + how.always,
                                                     "BREAK_LOG=" + log.string(), "BREAK_FILE=" + how.file};
  words.insert(words.end(), arguments.begin(), arguments.end());
  std::vector<char*> argv, env;
  for (std::string& word : words) argv.push_back(word.data());
  for (std::string& one : set) env.push_back(one.data());
  argv.push_back(nullptr);
  env.push_back(nullptr);
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addopen(&actions, 1, said.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0644);
  posix_spawn_file_actions_addopen(&actions, 2, err.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0644);
  posix_spawn_file_actions_addchdir_np(&actions, folder.c_str());
  pid_t id = 0;
  if (posix_spawn(&id, PROGRAM, &actions, nullptr, argv.data(), env.data()) != 0)
    throw std::runtime_error("the program cannot be started");
  posix_spawn_file_actions_destroy(&actions);
  int result = 0;
  ::waitpid(id, &result, 0);
  Ended out;
  out.killed = WIFSIGNALED(result) && WTERMSIG(result) == SIGKILL && how.how == "kill";
  out.code = WIFEXITED(result) ? WEXITSTATUS(result) : 1000 + WTERMSIG(result);
  out.out = bytes_of(said);
  out.err = bytes_of(err);
  const std::string broken = bytes_of(log);
  out.broken = broken.substr(0, broken.find('\n'));
  return out;
}

std::vector<std::string> calls_of(const std::vector<std::string>& arguments, const fs::path& folder) {
  run_broken(arguments, folder, {});
  std::istringstream log(bytes_of(beside(folder, ".log")));
  std::vector<std::string> out;
  for (std::string line; std::getline(log, line);) out.push_back(line);
  return out;
}

}  // namespace dunnage
