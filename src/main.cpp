// SPDX-License-Identifier: MIT
// The world around the program: arguments, streams, where the data lies, and what to say when the world fails.
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <iostream>

#include "base/error.h"
#include "base/shown.h"
#include "run/run.h"

int main(int argc, char** argv) {
  namespace fs = std::filesystem;
  std::signal(SIGXFSZ, SIG_IGN);  // a file that may not grow is an error to be told, as on a full disk
  try {
    const fs::path share = fs::read_symlink("/proc/self/exe").parent_path().parent_path() / "share" / "dunnage";
    const int code = dunnage::run({argv + 1, argv + argc}, share, std::cout, std::cerr,
                                  {isatty(STDOUT_FILENO) == 1, isatty(STDERR_FILENO) == 1});
    std::cout.flush();
    if (!std::cout) throw dunnage::WorldError("the output could not be written");
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
