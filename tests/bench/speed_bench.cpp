// SPDX-License-Identifier: MIT
// How fast the whole program is, files in to files on disk, against programs that only draw. All figures of one table
// come from one run on one machine; CPU seconds are user and system together, of the fastest of the runs.
// bench_speed PROGRAM FLOORS_FOLDER FONTS PROJECT WORK_FOLDER [PART ...]; without a part, all.
#include <fcntl.h>
#include <spawn.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <vector>

#include "bench_words.h"
#include "bench_world.h"

using namespace dunnage::bench;
namespace fs = std::filesystem;

namespace {

struct Cost {
  double cpu = 0, megabytes = 0;
};

struct Bench {
  std::string program, floors, fonts, project;
  fs::path work;
};

double seconds(const timeval& t) { return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) * 1e-6; }

/// One run of a command, its words thrown away. Exit codes above 2 stop the bench.
Cost run_once(const std::vector<std::string>& command) {
  std::vector<char*> arguments;
  for (const std::string& word : command) arguments.push_back(const_cast<char*>(word.c_str()));
  arguments.push_back(nullptr);
  posix_spawn_file_actions_t quiet;
  posix_spawn_file_actions_init(&quiet);
  posix_spawn_file_actions_addopen(&quiet, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
  pid_t child = 0;
  const int failed = posix_spawn(&child, arguments[0], &quiet, nullptr, arguments.data(), environ);
  posix_spawn_file_actions_destroy(&quiet);
  int status = 0;
  rusage used{};
  if (failed != 0 || wait4(child, &status, 0, &used) < 0 || !WIFEXITED(status) || WEXITSTATUS(status) > 2)
    throw std::runtime_error("this command failed: " + fmt::format("{}", fmt::join(command, " ")));
  return {seconds(used.ru_utime) + seconds(used.ru_stime), static_cast<double>(used.ru_maxrss) / 1024};
}

Cost run(const std::vector<std::string>& command, int times) {
  Cost best = run_once(command);
  for (int i = 1; i < times; ++i) {
    const Cost again = run_once(command);
    best = {std::min(best.cpu, again.cpu), std::min(best.megabytes, again.megabytes)};
  }
  return best;
}

double size_of(const fs::path& place) {
  if (!fs::is_directory(place)) return static_cast<double>(fs::file_size(place)) / 1e6;
  double sum = 0;
  for (const auto& entry : fs::directory_iterator(place)) sum += size_of(entry.path());
  return sum;
}

void line(const std::string& what, const Cost& cost, const std::string& file, const std::string& says) {
  fmt::print("{:<34} {:>8.3f} {:>8.1f} {:>9}  {}\n", what, cost.cpu, cost.megabytes, file, says);
  std::fflush(stdout);
}
void line(const std::string& what, const Cost& cost, const fs::path& file, const std::string& says) {
  line(what, cost, fmt::format("{:.2f}", size_of(file)), says);
}

/// The program against its floor. `held` is what is there whatever the number of pages: the input, read and worked
/// out; where it can be had, faces and layouts, too.
void against(const std::string& name, const Cost& ours, const Cost& floor, const Cost& held, int pages, double target,
             const fs::path& our_file, const fs::path& floor_file) {
  line(name + ", floor", floor, floor_file, "");
  line(name + ", dunnage", ours, our_file,
       fmt::format("{:.2f} x floor (target {:.2f}); {:.1f} KB a page beyond the input (target 8)", ours.cpu / floor.cpu,
                   target, (ours.megabytes - held.megabytes) * 1024 / pages));
}

void sheets(const Bench& b) {
  const fs::path world = b.work / "w1", ours = b.work / "w1-ours", floor = b.work / "w1-floor.pdf";
  write_sheet_world(world, 2000, 32);
  const std::string show = (world / "show.toml").string();
  const Cost drawn = run({b.floors + "/floor_sheets", b.fonts, "2000", floor.string()}, 3);
  const Cost printed = run({b.program, "print", show, "--only", "pull-sheet", "--out", ours.string()}, 3);
  against("W1, 2,000 pull sheets", printed, drawn,
          run({b.program, "print", show, "--only", "cover", "--out", (b.work / "w1-cover").string()}, 1), 2000, 1.0,
          ours, floor);
}

void labels(const Bench& b) {
  const fs::path world = b.work / "w2", ours = b.work / "w2-ours.pdf", floor = b.work / "w2-floor.pdf";
  write_label_world(world, 10'000);
  const std::string kit = (world / "kit").string();
  const Cost drawn = run({b.floors + "/floor_labels", b.fonts, "10000", floor.string()}, 1);
  const Cost printed = run({b.program, "label", kit, "--out", ours.string()}, 3);
  against("W2, 10,000 labels", printed, drawn, run({b.program, "list", "cases", kit}, 1), 10'000, 0.25, ours, floor);
}

void packet(const Bench& b) {
  const std::string show = b.project + "/examples/outdoor-evening.toml";
  const fs::path one = b.work / "packet-one", many = b.work / "packet-many";
  const Cost single = run({b.program, "print", show, "--one-file", "--out", one.string()}, 7);
  line("outdoor packet, one file", single, one, "target 0.150");
  const Cost several = run({b.program, "print", show, "--out", many.string()}, 7);
  line("outdoor packet, separate files", several, many, "target 0.600");
  line("outdoor show, check alone", run({b.program, "check", show}, 7), std::string("-"), "target 0.025");
}

struct Point {
  double n;
  Cost cost;
};

/// The slope of the straight line through the points on logarithmic paper.
double exponent(const std::vector<Point>& points, std::size_t from) {
  double x = 0, y = 0, xx = 0, xy = 0, count = 0;
  for (std::size_t i = from; i < points.size(); ++i) {
    const double a = std::log(points[i].n), c = std::log(points[i].cost.cpu);
    x += a, y += c, xx += a * a, xy += a * c, count += 1;
  }
  return (count * xy - x * y) / (count * xx - x * x);
}

void growth(const Bench& b, const std::string& what, const std::vector<int>& sizes, void (*make)(const fs::path&, int),
            std::vector<std::string> (*command)(const Bench&, const fs::path&)) {
  std::vector<Point> points;
  for (const int n : sizes) {
    const fs::path world = b.work / "growth";
    fs::remove_all(world);
    make(world, n);
    points.push_back({static_cast<double>(n), run(command(b, world), n < 10'000 ? 3 : 1)});
    line(fmt::format("growth, {} {}", n, what), points.back().cost, std::string("-"), "");
    fs::remove_all(world);
  }
  fmt::print("{:<34} fitted exponent {:.2f} over all, {:.2f} over the last step (target 1.10)\n", "growth, " + what,
             exponent(points, 0), exponent(points, points.size() - 2));
}

void label_growth(const Bench& b) {
  growth(b, "labels", {1000, 10'000, 100'000}, write_label_world, [](const Bench& bench, const fs::path& world) {
    return std::vector<std::string>{bench.program, "label", (world / "kit").string(), "--out",
                                    (world / "l.pdf").string()};
  });
}

void kit_growth(const Bench& b) {
  const auto make = [](const fs::path& folder, int n) { write_sheet_world(folder, n, 1); };
  growth(b, "cases checked", {100, 1000, 10'000, 100'000}, make, [](const Bench& bench, const fs::path& world) {
    return std::vector<std::string>{bench.program, "check", (world / "show.toml").string()};
  });
  growth(b, "cases on pull sheets", {100, 1000, 10'000, 100'000}, make, [](const Bench& bench, const fs::path& world) {
    return std::vector<std::string>{bench.program, "print", (world / "show.toml").string(), "--only",
                                    "pull-sheet",  "--out", (world / "out").string()};
  });
}

void input_growth(const Bench& b) {
  growth(b, "inputs", {8, 16, 32, 64, 128, 256, 512}, write_input_world, [](const Bench& bench, const fs::path& world) {
    return std::vector<std::string>{bench.program, "print", (world / "show.toml").string(),
                                    "--one-file",  "--out", (world / "out").string()};
  });
}

struct Part {
  const char* name;
  void (*run)(const Bench&);
};
constexpr Part parts[] = {{"sheets", sheets},         {"labels", labels},
                          {"packet", packet},         {"label-growth", label_growth},
                          {"kit-growth", kit_growth}, {"input-growth", input_growth}};

}  // namespace

int main(int count, char** words) try {
  const std::vector<std::string> given(words + 1, words + count);
  const Bench bench{given.at(0), given.at(1), given.at(2), given.at(3), given.at(4)};
  fs::create_directories(bench.work);
  fmt::print("{:<34} {:>8} {:>8} {:>9}\n", "", "CPU s", "MB peak", "MB file");
  for (const Part& part : parts)
    if (given.size() == 5 || std::find(given.begin() + 5, given.end(), part.name) != given.end()) part.run(bench);
} catch (const std::exception& error) {
  fmt::print(stderr, "bench_speed: {}\n", error.what());
  return 1;
}
