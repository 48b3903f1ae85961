// SPDX-License-Identifier: MIT
// The world around the program: arguments, streams, where the data lies, and what to say when the world fails.
#include <fcntl.h>
#include <poll.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <iostream>

#include "base/error.h"
#include "base/shown.h"
#include "run/run.h"

namespace {

/// Whether whoever read the output has gone, as `head` does.
bool reader_left() {
  pollfd out{STDOUT_FILENO, 0, 0};
  return ::poll(&out, 1, 0) == 1 && (out.revents & POLLERR) != 0;
}

/// Where a stream was closed before we began, the next file that is opened would take its number, and what we say would
/// be written into it. Nothing can be written into these, which is then told.
void hold_streams() {
  int file = 0;
  do file = ::open("/dev/null", O_RDONLY);
  while (file >= 0 && file <= STDERR_FILENO);
  ::close(file);
}

}  // namespace

int main(int argc, char** argv) {
  namespace fs = std::filesystem;
  hold_streams();
  std::signal(SIGXFSZ, SIG_IGN);  // a file that may not grow is an error to be told, as on a full disk
  std::signal(SIGPIPE, SIG_IGN);  // nor does a reader that leaves early keep us from our work
  try {
    const fs::path share = fs::read_symlink("/proc/self/exe").parent_path().parent_path() / "share" / "dunnage";
    const int code = dunnage::run({argv + 1, argv + argc}, share, std::cout, std::cerr,
                                  {isatty(STDOUT_FILENO) == 1, isatty(STDERR_FILENO) == 1});
    std::cout.flush();
    if (!std::cout && !reader_left()) throw dunnage::WorldError("the output could not be written");
    return code;
  } catch (const dunnage::WorldError& e) {
    std::cerr << "error: " << dunnage::shown(e.what()) << '\n';
  } catch (const fs::filesystem_error& e) {
    std::cerr << "error: " << dunnage::shown(e.what()) << '\n';
  } catch (const std::bad_alloc&) {
    std::cerr << "error: there is not enough memory\n";
  } catch (const std::exception& e) {
    std::cerr << "error: " << dunnage::shown(e.what()) << '\n';
  }
  return 3;
}
