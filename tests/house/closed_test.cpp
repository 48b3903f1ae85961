// SPDX-License-Identifier: MIT
// The program is closed to the world but for what README.md lists: no network, no shell, no environment, no clock. And
// it is built so that a mistake of ours ends in a stop, not in someone else's program.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include "../shell.h"

namespace fs = std::filesystem;
using dunnage::Folder;
using dunnage::shell;

namespace {

std::string text_of(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

std::string symbols() { return shell("nm -D --undefined-only " PROGRAM " | sed 's/@.*//; s/.* //'").out; }

/// A sanitizer brings a world of its own.
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr bool plain_build = false;
#else
constexpr bool plain_build = true;
#endif

}  // namespace

TEST_CASE("nothing in src asks the environment, a shell, the network, a clock or chance") {
  const std::regex forbidden(
      "\\b(getenv|secure_getenv|setenv|environ|system|popen|exec[lv]p?e?|v?fork|posix_spawnp?|socket|connect|"
      "getaddrinfo|dlopen|"
      "setlocale|random_device|srand|rand|mt19937|gettimeofday|clock_gettime|localtime|gmtime|system_clock|steady_"
      "clock)\\s*(\\(|::|\\{)");
  for (const auto& entry : fs::recursive_directory_iterator(fs::path(PROJECT_DIR) / "src")) {
    if (entry.path().extension() != ".h" && entry.path().extension() != ".cpp") continue;
    std::istringstream in(text_of(entry.path()));
    int number = 0;
    for (std::string line; std::getline(in, line);) {
      ++number;
      const std::string code = line.substr(0, line.find("//"));
      if (code.find('(') == std::string::npos && code.find('{') == std::string::npos) continue;
      INFO(entry.path().string() << ":" << number << ": " << line);
      CHECK_FALSE(std::regex_search(code, forbidden));
    }
  }
}

TEST_CASE("files are written by one room, which the faults are tried on") {
  const std::regex writing(
      "\\b(ofstream|fopen|freopen|O_WRONLY|O_RDWR|O_CREAT|rename|renameat2?|link|linkat|unlink|unlinkat|rmdir|mkdir|"
      "truncate|ftruncate|create_directory|create_directories|create_hard_link|create_symlink|remove|remove_all|copy_"
      "file|"
      "resize_file|permissions)\\b");
  const std::set<std::string> may = {"disk_file", "file_set", "folder_lock"};
  for (const auto& entry : fs::recursive_directory_iterator(fs::path(PROJECT_DIR) / "src")) {
    if (entry.path().extension() != ".cpp" || may.count(entry.path().stem().string()) == 1) continue;
    std::istringstream in(text_of(entry.path()));
    for (std::string line; std::getline(in, line);) {
      std::string code = line.substr(0, line.find("//"));
      code = std::regex_replace(code, std::regex("\"([^\"\\\\]|\\\\.)*\"|std::remove(_if)?\\b"), "");
      INFO(entry.path().string() << ": " << line);
      CHECK_FALSE(std::regex_search(code, writing));
    }
  }
}

TEST_CASE("the program asks the system for none of these either") {
  if (!plain_build) return;
  const std::set<std::string> forbidden = {
      "secure_getenv", "setenv",      "system", "popen",   "execve",       "execvp",        "execl",  "fork",
      "vfork",         "posix_spawn", "socket", "connect", "getaddrinfo",  "gethostbyname", "dlopen", "setlocale",
      "rand",          "srand",       "random", "time",    "gettimeofday", "clock_gettime"};
  std::istringstream names(symbols());
  for (std::string name; names >> name;) {
    INFO(name);
    CHECK(forbidden.count(name) == 0);
  }
}

TEST_CASE("no thread is started: whoever starts the first adds a test run under ThreadSanitizer") {
  if (!plain_build) return;
  const std::string imported = symbols();
  CHECK(imported.find("pthread_create") == std::string::npos);
  CHECK(imported.find("_ZNSt6thread") == std::string::npos);
}

TEST_CASE("whatever the environment says, the bytes are the same") {
  const Folder folder("environment");
  const std::string print = PROGRAM " print " PROJECT_DIR "/examples/indoor-afternoon.toml --one-file --out ";
  const fs::path bare = folder.path / "bare", odd = folder.path / "odd";
  CHECK(shell("env -i " + print + bare.string() + " >/dev/null 2>&1").status % 2 == 0);
  CHECK(shell("LC_ALL=tr_TR.UTF-8 LANG=ar TZ=Asia/Kathmandu HOME=/nowhere TMPDIR=/nowhere POSIXLY_CORRECT=1 "
              "FREETYPE_PROPERTIES='truetype:interpreter-version=35' "
              "GFORTRAN_CONVERT_UNIT=big_endian GFORTRAN_UNBUFFERED_ALL=y DUNNAGE=1 COLUMNS=10 " +
              print + odd.string() + " >/dev/null 2>&1")
                .status %
            2 ==
        0);
  CHECK(!text_of(bare / "packet.pdf").empty());
  CHECK((text_of(bare / "packet.pdf") == text_of(odd / "packet.pdf")));
}

TEST_CASE("the program is built hardened") {
  if (!plain_build || !HARDENED) return;
  const std::string head = shell("readelf -hldW " PROGRAM).out;
  CHECK(head.find("DYN (Position-Independent Executable file)") != std::string::npos);
  CHECK(head.find("GNU_RELRO") != std::string::npos);
  CHECK(head.find("BIND_NOW") != std::string::npos);
  CHECK(std::regex_search(head, std::regex("GNU_STACK +0x0+ 0x0+ 0x0+ 0x0+ 0x0+ RW ")));
  const std::string imported = symbols();
  CHECK(imported.find("__stack_chk_fail") != std::string::npos);
  CHECK(std::regex_search(imported, std::regex("__(mem|str|v?snprintf|vsnprintf|fprintf|read)[a-z]*_chk")));
  CHECK(imported.find("__assert_fail") != std::string::npos);  // assertions are on
}
