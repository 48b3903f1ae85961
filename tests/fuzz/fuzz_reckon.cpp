// SPDX-License-Identifier: MIT
// Arguments of `dunnage reckon`, one a line, through the command line itself.
#include <cassert>
#include <sstream>

#include "run/run.h"

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, std::size_t size) {
  if (size > 2000) return -1;
  std::vector<std::string> arguments{"reckon"};
  std::istringstream lines(std::string(reinterpret_cast<const char*>(data), size));
  // No argument of a process holds a zero byte.
  for (std::string line; std::getline(lines, line);) arguments.push_back(line.substr(0, line.find('\0')));
  std::ostringstream out, err;
  const int code = dunnage::run(arguments, SHARE_DIR, out, err);
  assert(code == 0 || code == 1);
  assert(code == 0 || !err.str().empty());
  return 0;
}
