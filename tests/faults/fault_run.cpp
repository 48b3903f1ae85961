// SPDX-License-Identifier: MIT
// Every command that writes, and some that only read, with each of its system calls broken in turn: it ends well or in
// one sentence, what stood stands whole, no half file has a file's name, and the next run works.
//
//   fault_run [SECONDS [COMMAND ...]]   SECONDS 0: every call in every way; else an even sample of them
//
// A command is named by the first words of its name (faulted_command.cpp).
#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <numeric>
#include <set>

#include "../shell.h"
#include "faulted_command.h"

using namespace dunnage;
namespace fs = std::filesystem;

namespace {

const std::vector<std::string> ways = {"5", "28", "13", "kill", "dead", "full"};  // EIO, ENOSPC, EACCES
/// File systems that lack something, all through a run: exFAT, a network's, an old one.
const std::vector<std::string> lacks = {"renameat2=22,link=1,linkat=1", "flock=37", "flock=95", "flock=38",
                                        "fchown=1,fchmod=1,flistxattr=95,fsync=22"};

bool is_ours(const std::string& name) {
  return name.find(".dunnage-unfinished") != std::string::npos || name.ends_with(".before");
}
World without_ours(World world) {
  std::erase_if(world, [](const auto& entry) { return is_ours(entry.first); });
  return world;
}
bool is_reading(const std::string& call) {
  for (const char* name : {"stat", "lstat", "open ", "openat", "fopen", "read", "readdir", "pread", "fdopendir"})
    if (call.starts_with(name)) return true;
  return false;
}
bool is_clearing(const std::string& call) {
  return call.starts_with("unlink") || call.starts_with("rmdir") || call.starts_with("remove");
}
std::size_t lines(const std::string& text) {
  return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

/// The numbers of a stretch, in steps near the golden section of it.
std::vector<std::size_t> evenly(std::size_t from, std::size_t to) {
  const std::size_t count = to - from;
  std::size_t stride = count * 618 / 1000 + 1;
  while (std::gcd(stride, count) > 1) ++stride;
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < count; ++i) out.push_back(from + i * stride % count);
  return out;
}

/// One command and all that is known of it.
class Trial {
 public:
  Trial(const FaultedCommand& command, const fs::path& folder) : command_(command), folder_(folder) {
    make_world(command_, folder_);
    before_ = world_at(folder_);
    const std::vector<std::string> calls = calls_of(command_.arguments, folder_);
    order_points(calls);
    final_ = world_at(folder_);
    make_world(command_, folder_);
    const Ended whole = run_broken(command_.arguments, folder_, {});
    said_ = whole.out;
    if (whole.code != command_.code || world_at(folder_) != final_ || without_ours(final_) != final_)
      tell({}, "unbroken, it ends with " + std::to_string(whole.code) + " and says: " + whole.err);
  }

  const std::vector<std::size_t>& points() const { return points_; }
  const std::set<std::string>& told() const { return told_; }

  /// A file system that lacks something is no reason to fail.
  void lacking(const std::string& what) {
    make_world(command_, folder_);
    const Ended ended = run_broken(command_.arguments, folder_, {0, "", what, ""});
    if (ended.code != command_.code || world_at(folder_) != final_) tell({0, what, "", ""}, "it fails: " + ended.err);
    check_links({0, what, "", ""});
  }

  void point(std::size_t number) {
    const long at = static_cast<long>(number / all_ways()) + 1;
    const std::size_t way = number % all_ways();
    if (way < ways.size()) return broken({at, ways[way], "", ""});
    const std::size_t edit = way - ways.size();
    edited({at, edit % 2 ? "append" : "rename", "", command_.edited[edit / 2]});
  }

 private:
  std::size_t all_ways() const { return ways.size() + 2 * command_.edited.size(); }

  /// A call and a way of breaking it. Half of what is tried first are those from where it begins to write, and wherever
  /// one stops, what was tried lies evenly.
  void order_points(const std::vector<std::string>& calls) {
    const auto lock =
        std::find_if(calls.begin(), calls.end(), [](const auto& one) { return one.starts_with("flock"); });
    const std::size_t reads = static_cast<std::size_t>(lock - calls.begin()) * all_ways();
    const std::size_t all = calls.size() * all_ways();
    const std::vector<std::size_t> first = evenly(0, reads), second = evenly(reads, all);
    for (std::size_t i = 0; i < std::max(first.size(), second.size()); ++i) {
      if (i < second.size()) points_.push_back(second[i]);
      if (i < first.size()) points_.push_back(first[i]);
    }
  }

  void tell(const Break& how, const std::string& what) {
    told_.insert(fmt::format("{}: call {}, {} {}: {}", command_.name, how.at, how.how, how.file, what));
  }

  void broken(const Break& how) {
    make_world(command_, folder_);
    const Ended ended = run_broken(command_.arguments, folder_, how);
    const World after = world_at(folder_);
    const bool sudden = how.how == "kill" || how.how == "dead" || how.how == "full";
    whole(how, ended, after);
    if (!ended.killed) ending(how, ended, after, sudden);
    if (!sudden && !is_clearing(ended.broken) && without_ours(after) != after)
      tell(how, "something is left behind at " + ended.broken);
    if (after != before_) next(how, after);
  }

  /// Each file is old or new.
  void whole(const Break& how, const Ended& ended, const World& after) {
    for (const auto& [name, bytes] : before_)
      if (after.count(name) == 0) tell(how, name + " is gone");
    for (const auto& [name, bytes] : after) {
      if (is_ours(name)) continue;
      const auto old = before_.find(name), now = final_.find(name);
      const auto padded = [&](const std::string& text) {
        return (ended.killed || how.how == "dead") && bytes.starts_with(text) &&
               bytes.find_first_not_of('\n', text.size()) == std::string::npos;
      };
      const bool is_old = old != before_.end() && old->second == bytes;
      const bool is_new = now != final_.end() && (now->second == bytes || padded(now->second));
      if (!is_old && !is_new) tell(how, name + " is neither old nor new, at " + ended.broken);
    }
    check_links(how);
  }

  void check_links(const Break& how) {
    for (const auto& [file, name] : command_.links)
      if (!fs::equivalent(folder_ / file, folder_ / name)) tell(how, file + " has lost its second name");
  }

  void ending(const Break& how, const Ended& ended, const World& after, bool sudden) {
    World left = without_ours(after);
    if (sudden)  // a folder that it made cannot be taken away again
      std::erase_if(left, [&](const auto& entry) { return entry.second == "/" && before_.count(entry.first) == 0; });
    const bool unchanged = left == before_, done = without_ours(after) == final_;
    if (ended.code == command_.code) {
      if (!done || ended.out != said_) tell(how, "it ends well, and has not done its work, at " + ended.broken);
    } else if (ended.code == 3) {
      if (lines(ended.err) != 1 || !ended.err.starts_with("error: ")) tell(how, "no single sentence: " + ended.err);
      if (!sudden && !unchanged && !done) tell(how, "some new, some old, at " + ended.broken);
    } else if (ended.code == 1) {  // a text of the user's that cannot be read is told with its place
      // Where all fails from the closing of one file on, the next that is read is told.
      const bool reading = is_reading(ended.broken) || (how.how == "dead" && ended.broken.starts_with("close"));
      if (!reading || ended.err.find("error: ") == std::string::npos || !unchanged)
        tell(how, "it ends with 1 at " + ended.broken + ": " + ended.err);
    } else {
      tell(how, fmt::format("it ends with {} at {}: {}", ended.code, ended.broken, ended.err));
    }
  }

  /// What the next run makes of what this one left; each such world is tried once.
  void next(const Break& how, const World& after) {
    if (!seen_.insert(after).second) return;
    const bool done = without_ours(after) == final_;
    const Ended ended = run_broken(command_.arguments, folder_, {});
    World now = world_at(folder_);
    std::erase_if(now, [](const auto& entry) { return entry.first.ends_with(".before"); });
    for (auto& [name, bytes] : now)  // to a text, line ends at its end are nothing
      while (name.ends_with(".toml") && bytes.ends_with("\n\n") && bytes.size() > final_[name].size()) bytes.pop_back();
    const bool there_already = done && ended.code == 1;
    if ((ended.code != command_.code && !there_already) || now != final_)
      tell(how, fmt::format("the next run ends with {}: {}", ended.code, ended.err));
    keep_edited(how, after);
  }

  /// What a person changes after a run was cut short stays, even where the next run finds nothing to do.
  void keep_edited(const Break& how, const World& after) {
    FaultedCommand left = command_;
    left.before = after;
    left.links.clear();
    make_world(left, folder_);
    for (const auto& [name, bytes] : after)
      if (name.ends_with(".toml")) std::ofstream(folder_ / name, std::ios::app) << "# edited\n";
    std::vector<std::string> no_sheet = command_.arguments;
    std::replace(no_sheet.begin(), no_sheet.end(), std::string("lists/gear.csv"), std::string("lists/none.csv"));
    for (const auto& arguments : {no_sheet, command_.arguments}) {
      run_broken(arguments, folder_, {});
      for (const auto& [name, bytes] : world_at(folder_))
        if (name.ends_with(".toml") && after.count(name) && bytes.find("# edited\n") == std::string::npos)
          tell(how, name + " was edited, and the next run took that away");
    }
  }

  /// Another program saves a file at that call.
  void edited(const Break& how) {
    make_world(command_, folder_);
    const Ended ended = run_broken(command_.arguments, folder_, how);
    const bool window = !command_.links.empty() &&
                        (ended.broken == "pwrite " || ended.broken == "fsync " || ended.broken == "ftruncate ");
    if (window) return;  // a file that must stay that very file can be had by two at once
    const World after = world_at(folder_);
    const std::string bytes = after.count(how.file) ? after.at(how.file) : "";
    const bool kept = bytes == before_.at(how.file) + "# edited\n" || bytes == final_.at(how.file) + "# edited\n";
    if (!kept) tell(how, "what was saved meanwhile is lost at " + ended.broken);
    if (ended.code != command_.code && (ended.code != 3 || lines(ended.err) != 1))
      tell(how, fmt::format("it ends with {}: {}", ended.code, ended.err));
    if (without_ours(after) != after) tell(how, "something is left behind at " + ended.broken);
  }

  FaultedCommand command_;
  fs::path folder_;
  std::vector<std::size_t> points_;
  World before_, final_;
  std::string said_;
  std::set<World> seen_;
  std::set<std::string> told_;
};

/// The rooms that write, as the sources say; each has a command here, or this is no test of all.
bool all_rooms_have_commands(const std::vector<FaultedCommand>& commands) {
  std::set<std::string> have, need;
  for (const FaultedCommand& command : commands) have.insert(command.room);
  for (const auto& entry : fs::directory_iterator(fs::path(PROJECT_DIR) / "src/run")) {
    std::ifstream in(entry.path());
    const std::string text{std::istreambuf_iterator<char>(in), {}};
    if (text.find("#include \"run/file_set.h\"") != std::string::npos && entry.path().stem() != "file_set")
      need.insert(entry.path().stem().string());
  }
  have.erase("");
  if (have != need)
    fmt::print("these rooms write: {}\nand these are tried: {}\n", fmt::join(need, " "), fmt::join(have, " "));
  return have == need;
}

/// Two runs into one folder where the system knows no lock, as from two machines: either may fail, each file is whole.
bool two_without_a_lock(const fs::path& folder) {
  const std::vector<FaultedCommand> all = faulted_commands();
  const auto print = std::find_if(all.begin(), all.end(), [](const auto& one) { return one.room == "print_packet"; });
  make_world(*print, folder);
  const auto in_units = [](const std::string& units, const std::string& out) {
    return "LD_PRELOAD=" BREAK_CALLS " BREAK_ALWAYS=flock=38 " PROGRAM
           " print show.toml --only cover,return-sheet --units " +
           units + " --out " + out + " >/dev/null 2>&1";
  };
  const std::string at = "cd " + folder.string() + "; ";
  shell(at + in_units("us", "us") + "; " + in_units("metric", "metric"));
  for (int round = 0; round < 10; ++round) {
    shell(at + in_units("us", "both") + " & " + at + in_units("metric", "both") + "; wait");
    for (const char* name : {"/cover.pdf", "/return-sheet.pdf"}) {
      const std::string bytes = bytes_of(folder / ("both" + std::string(name)));
      if (bytes == bytes_of(folder / ("us" + std::string(name)))) continue;
      if (!bytes.empty() && bytes == bytes_of(folder / ("metric" + std::string(name)))) continue;
      if (bytes.empty() && !fs::exists(folder / ("both" + std::string(name)))) continue;
      fmt::print("two runs without a lock have torn {}\n", name);
      return false;
    }
  }
  return true;
}

}  // namespace

int main(int argc, char** argv) {
  const auto begun = std::chrono::steady_clock::now();
  const double seconds = argc > 1 ? std::atof(argv[1]) : 0;
  const std::vector<std::string> named(argv + std::min(argc, 2), argv + argc);
  std::vector<FaultedCommand> commands = faulted_commands();
  bool well = all_rooms_have_commands(commands);
  std::erase_if(commands, [&](const FaultedCommand& command) {
    return !named.empty() && std::none_of(named.begin(), named.end(),
                                          [&](const std::string& one) { return command.name.starts_with(one); });
  });
  const bool memory = ::access("/dev/shm", W_OK) == 0;
  const fs::path folder =
      (memory ? fs::path("/dev/shm") : fs::temp_directory_path()) / fmt::format("dunnage-faults-{}", ::getpid());
  if (named.empty()) well = two_without_a_lock(folder / "world") && well;
  for (std::size_t i = 0; i < commands.size(); ++i) {
    const std::chrono::duration<double> so_far = std::chrono::steady_clock::now() - begun;
    const double until = so_far.count() + (seconds - so_far.count()) / static_cast<double>(commands.size() - i);
    Trial trial(commands[i], folder / "world");
    for (const std::string& what : lacks) trial.lacking(what);
    std::size_t tried = 0;
    for (; tried < trial.points().size(); ++tried) {
      const std::chrono::duration<double> gone = std::chrono::steady_clock::now() - begun;
      if (seconds > 0 && gone.count() > until && tried >= 12) break;
      trial.point(trial.points()[tried]);
    }
    fmt::print("{:<44} {:>5} of {:>5} broken calls tried, {} faults\n", commands[i].name, tried, trial.points().size(),
               trial.told().size());
    std::size_t told = 0;
    for (const std::string& one : trial.told())
      if (++told <= 40) fmt::print("  {}\n", one);
    std::fflush(stdout);
    well = well && trial.told().empty();
  }
  fs::remove_all(folder);
  return well ? 0 : 1;
}
