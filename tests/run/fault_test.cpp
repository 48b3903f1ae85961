// SPDX-License-Identifier: MIT
// The world at its worst: full and read-only disks, runs that are killed or that meet, damaged fonts. Each ends in one
// sentence and exit code 3, and never leaves half a file under a sheet's name.
#include <fcntl.h>
#include <signal.h>
#include <spawn.h>
#include <sys/file.h>

#include <catch2/catch.hpp>
#include <chrono>
#include <map>
#include <sstream>
#include <thread>

#include "../shell.h"
#include "program.h"

extern char** environ;

using dunnage::all_of;
using dunnage::bytes_of;
using dunnage::example;
using dunnage::Folder;
using dunnage::Said;
using dunnage::shell;
namespace fs = std::filesystem;

namespace {

const std::string show = example("outdoor-evening.toml");

bool has_part(const fs::path& folder) {
  std::error_code gone;
  return fs::exists(folder / ".dunnage-unfinished", gone);
}
std::size_t lines(const std::string& text) {
  return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

/// The program as another process, so that it can be killed.
class Process {
 public:
  explicit Process(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), PROGRAM);
    std::vector<char*> raw;
    for (std::string& one : arguments) raw.push_back(one.data());
    raw.push_back(nullptr);
    std::string prefix = dunnage::uncounted;
    std::vector<char*> environment = {prefix.data()};
    for (char** one = environ; *one; ++one) environment.push_back(*one);
    environment.push_back(nullptr);
    posix_spawn_file_actions_t quiet;
    posix_spawn_file_actions_init(&quiet);
    for (const int stream : {1, 2}) posix_spawn_file_actions_addopen(&quiet, stream, "/dev/null", O_WRONLY, 0);
    REQUIRE(posix_spawn(&id_, PROGRAM, &quiet, nullptr, raw.data(), environment.data()) == 0);
    posix_spawn_file_actions_destroy(&quiet);
  }
  ~Process() { wait(); }
  Process(const Process&) = delete;
  Process& operator=(const Process&) = delete;
  bool running() {
    if (id_ > 0 && ::waitpid(id_, &result_, WNOHANG) == id_) id_ = 0;
    return id_ > 0;
  }
  void send(int signal) {
    if (running()) ::kill(id_, signal);
  }
  int wait() {
    if (id_ > 0) ::waitpid(id_, &result_, 0);
    id_ = 0;
    return WIFEXITED(result_) ? WEXITSTATUS(result_) : -1;
  }

 private:
  pid_t id_ = 0;
  int result_ = 0;
};

/// A small disk of its own, where this may be mounted.
class Disk {
 public:
  Disk(const fs::path& at, const std::string& options) : at_(at) {
    fs::create_directories(at);
    mounted = shell("mount -t tmpfs -o " + options + " tmpfs " + at.string() + " 2>&1").status == 0;
    if (!mounted) WARN("a disk cannot be mounted here: this part is skipped");
  }
  ~Disk() {
    if (mounted) shell("umount " + at_.string());
  }
  Disk(const Disk&) = delete;
  Disk& operator=(const Disk&) = delete;
  bool mounted = false;

 private:
  fs::path at_;
};

Said said_by_print(const fs::path& out, const std::string& before = {}) {
  return shell(before + PROGRAM " print " + show + " --out " + out.string() + " 2>&1 >/dev/null");
}

/// All of a packet or none: one sentence, exit code 3, and no old file touched.
void refused(const Said& said, const std::string& why) {
  CHECK(said.status == 3);
  CHECK(lines(said.out) == 1);
  INFO(said.out);
  CHECK(said.out.find(why) != std::string::npos);
}

}  // namespace

TEST_CASE("a disk that fills leaves the old packet whole") {
  const Folder folder("full");
  const fs::path out = folder.path / "disk";
  const std::string old = "%PDF-1.7 /Creator (dunnage)";
  {
    const Disk disk(out, "size=400k");
    if (disk.mounted) {
      std::ofstream(out / "cover.pdf") << old;
      refused(said_by_print(out), "No space left on device");
      CHECK(all_of(out) == std::map<std::string, std::string>{{"cover.pdf", old}});
    }
  }
  // A limit on the size of a file fails the same way, and needs no rights.
  std::ofstream(out / "cover.pdf") << old;
  refused(said_by_print(out, "trap '' XFSZ; ulimit -f 20; export " + std::string(dunnage::uncounted) + "; "),
          "File too large");
  CHECK(all_of(out) == std::map<std::string, std::string>{{"cover.pdf", old}});
}

TEST_CASE("standard output that cannot be written is told") {
  for (const std::string& command : {"check " + show, std::string("list docs"), std::string("--help")}) {
    const Said said = shell(PROGRAM " " + command + " 2>&1 >/dev/full");
    CHECK(said.status == 3);
    CHECK(said.out == "error: the output could not be written\n");
  }
}

TEST_CASE("a folder that may not be written is told") {
  const Folder folder("read-only");
  const fs::path out = folder.path / "disk";
  {
    const Disk disk(out, "ro");
    if (disk.mounted) {
      refused(said_by_print(out), "Read-only file system");
      refused(shell(PROGRAM " import " + example("gear.csv") + " --kit " + out.string() + " 2>&1 >/dev/null"),
              "Read-only file system");
      refused(shell(PROGRAM " begin " + (out / "new").string() + " 2>&1 >/dev/null"), "Read-only file system");
    }
  }
  // Rights do not bind the superuser before these two powers of its own are taken away.
  const std::string bound = ::geteuid() == 0 ? "setpriv --bounding-set=-dac_override,-dac_read_search " : "";
  fs::permissions(out, fs::perms::owner_read | fs::perms::owner_exec);
  refused(said_by_print(out, bound), "Permission denied");
  fs::permissions(out, fs::perms::owner_all);
}

TEST_CASE("an output that is a folder, a link or a file in the way is refused, and stays what it is") {
  const Folder folder("in-the-way");
  const fs::path out = folder.path / "out";
  fs::create_directories(out / "cover.pdf");
  refused(said_by_print(out), "is a folder, a link or a device");
  fs::remove(out / "cover.pdf");
  folder.file("elsewhere", "old");
  fs::create_symlink(folder.path / "elsewhere", out / "cover.pdf");
  refused(said_by_print(out), "is a folder, a link or a device");
  CHECK(bytes_of(folder.path / "elsewhere") == "old");
  CHECK(all_of(out).size() == 1);
  refused(said_by_print(folder.path / "elsewhere"), "cannot make the folder");
  const auto label = [&](const std::string& to) {
    return shell(PROGRAM " label " + example("kit") + " BAG-1 --out " + to + " 2>&1 >/dev/null");
  };
  refused(label(out.string()), "is a folder, a link or a device");
  refused(label(out.string() + "/"), "is a folder, a link or a device");
  refused(label("/dev/null"), "is a folder, a link or a device");
  refused(label((out / "cover.pdf").string()), "is a folder, a link or a device");
}

TEST_CASE("a PDF takes the place of a PDF alone: never of what was read, nor of another kind of file") {
  const Folder folder("of-another-kind");
  const std::string kit = (folder.path / "kit").string(), at = folder.path.string() + "/";
  fs::copy(example("kit"), kit, fs::copy_options::recursive);
  fs::copy(show, at + "show.toml");
  folder.file("scans.txt", "FLOOD-1 out\n");
  folder.file("notes.pdf", "by hand");
  folder.file("empty.pdf", "");
  folder.file("own.pdf", "%PDF-1.7\nsomebody's stage plan\n");
  const auto before = all_of(folder.path);
  const auto refuses = [&](const std::string& command, const std::string& says) {
    const Said said = shell(PROGRAM " " + command + " 2>&1 >/dev/null");
    CHECK(said.status == 1);
    CHECK(said.out == "error: " + says + "\n");
    CHECK(all_of(folder.path) == before);
  };
  const std::string tally = "tally " + at + "show.toml --out " + at + "scans.txt --sheet " + at;
  const std::string read = " is one of the files that were read, and a PDF would take its place; choose another name";
  const std::string other = " is there already and was not printed by this program; choose another name, or remove it";
  refuses("label " + kit + " --out " + kit + "/cases-site.toml", kit + "/cases-site.toml" + read);
  refuses("label " + kit + " --test-sheet --out " + at + "kit/../kit/items-general.toml",
          at + "kit/../kit/items-general.toml" + read);
  refuses(tally + "show.toml", at + "show.toml" + read);
  refuses(tally + "scans.txt", at + "scans.txt" + read);
  refuses("label " + kit + " --out " + at + "notes.pdf", at + "notes.pdf" + other);
  refuses("label " + kit + " --out " + at + "empty.pdf", at + "empty.pdf" + other);
  refuses("label " + kit + " --out " + at + "own.pdf", at + "own.pdf" + other);
  fs::create_directory(at + "paper");
  folder.file("paper/cover.pdf", "by hand");
  CHECK(said_by_print(at + "paper").out == "error: " + at + "paper/cover.pdf" + other + "\n");
  CHECK(bytes_of(at + "paper/cover.pdf") == "by hand");
}

TEST_CASE("a run that is killed leaves every file old or new, and the next one clears up") {
  const Folder folder("killed");
  const fs::path out = folder.path / "out";
  const auto print = [&](const std::string& units) {
    return std::vector<std::string>{"print",   show,  "--only", "cover,pull-sheet,return-sheet",
                                    "--units", units, "--out",  out.string()};
  };
  REQUIRE(Process(print("us")).wait() == 2);
  const auto old = all_of(out);
  REQUIRE(Process(print("metric")).wait() == 2);
  const auto fresh = all_of(out);
  REQUIRE(old.size() == 3);
  REQUIRE(old != fresh);

  int left = 0;
  for (int round = 0; round < 16; ++round) {
    for (const auto& [name, bytes] : old) std::ofstream(out / name, std::ios::binary) << bytes;
    Process run(print("metric"));
    if (round % 2 == 0)
      while (run.running() && !has_part(out)) std::this_thread::yield();
    else
      std::this_thread::sleep_for(std::chrono::milliseconds(round * 23));
    run.send(round % 4 < 2 ? SIGKILL : SIGINT);
    run.wait();
    for (const auto& [name, bytes] : old) {
      const std::string now = bytes_of(out / name);
      CHECK((now == bytes || now == fresh.at(name)));
    }
    left += has_part(out) ? 1 : 0;
  }
  CHECK(left > 0);  // one was caught while it wrote
  fs::create_directory(out / ".dunnage-unfinished");
  std::ofstream(out / ".dunnage-unfinished/1") << "half a sheet";
  const Said next = shell(PROGRAM " print " + show + " --only cover --out " + out.string() + " 2>&1 >/dev/null");
  CHECK(next.out.find("removed " + (out / ".dunnage-unfinished").string() + ", left by a run that was cut short\n") !=
        std::string::npos);
  CHECK(all_of(out).size() == 3);
  CHECK_FALSE(has_part(out));
}

TEST_CASE("of two runs into one folder the second is refused") {
  const Folder folder("two");
  const fs::path out = folder.path / "out";
  for (int tries = 0; tries < 10; ++tries) {
    Process first({"print", show, "--out", out.string()});
    while (first.running() && !has_part(out)) std::this_thread::yield();
    first.send(SIGSTOP);
    const Said second = said_by_print(out);
    first.send(SIGCONT);
    CHECK(first.wait() == 2);
    if (second.status == 2) continue;  // the first had ended before it was stopped
    refused(second, "another run is writing into");
    CHECK(all_of(out).size() > 10);
    CHECK_FALSE(has_part(out));
    return;
  }
  FAIL("no run was stopped while it wrote");
}

namespace {

/// The program with data of its own, which may then be damaged.
struct Installed {
  explicit Installed(const fs::path& at) : share(at / "share/dunnage") {
    fs::create_directories(at / "bin");
    fs::create_directories(share);
    fs::copy_file(PROGRAM, at / "bin/dunnage");
    program = (at / "bin/dunnage").string();
    fs::create_symlink(fs::canonical(SHARE_DIR "/layouts"), share / "layouts");
    fs::copy(SHARE_DIR "/fonts", share / "fonts");
  }
  Said label(const fs::path& to) const {
    return shell(program + " label " + example("kit") + " BAG-1 --out " + to.string() + " 2>&1 >/dev/null");
  }
  fs::path share;
  std::string program;
};

}  // namespace

TEST_CASE("a font that is missing, cut short or damaged stops the run in a sentence") {
  const Folder folder("fonts");
  const Installed here(folder.path);
  const fs::path label = folder.path / "label.pdf";
  REQUIRE(here.label(label).status == 0);
  const std::string good = bytes_of(label);
  fs::path font;
  for (const auto& entry : fs::directory_iterator(here.share / "fonts"))
    if (entry.path().extension() == ".ttf" && entry.path().filename().string().find("Bold") != std::string::npos)
      font = std::max(font, entry.path());
  REQUIRE(!font.empty());
  const std::string whole = bytes_of(font);
  const auto with = [&](const std::string& bytes) {
    std::ofstream(font, std::ios::binary) << bytes;
    return here.label(label);
  };
  fs::remove(font);
  refused(here.label(label), "cannot read the font file");
  refused(with(""), "cannot read the font file");
  for (const std::string& bad :
       {std::string("not a font"), whole.substr(0, 1000), whole.substr(0, whole.size() / 2), std::string(5000, '\0')})
    refused(with(bad), "is damaged");
  // Single bytes may be anything: the run ends well or in a sentence, and what stands stays whole.
  for (std::size_t i = 0; i < 24; ++i) {
    std::string bytes = whole;
    const std::size_t at = i < 12 ? i * 23 : (bytes.size() / 13) * (i - 11) - 1;
    bytes[at] = static_cast<char>(bytes[at] ^ 0xA5);
    const Said said = with(bytes);
    INFO("byte " << at << ": " << said.out);
    CHECK((said.status == 0 || (said.status == 3 && lines(said.out) == 1)));
    if (said.status == 3) CHECK(!bytes_of(label).empty());
  }
  CHECK(with(whole).status == 0);
  CHECK(bytes_of(label) == good);
  fs::remove(here.share / "fonts/faces.toml");
  refused(here.label(label), "faces.toml is missing");
}
