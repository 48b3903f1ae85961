// SPDX-License-Identifier: MIT
// A bar that shows a long run is alive. Only for people: nothing is written where no terminal is.
#pragma once

#include <cstddef>
#include <ostream>
#include <string>

namespace dunnage {

class Progress {
 public:
  /// `total` steps will follow. Does nothing without a terminal.
  Progress(std::ostream* terminal, std::size_t total);
  ~Progress();
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;

  /// The next step begins; `what` it works on.
  void step(const std::string& what);
  /// Takes the bar off the terminal.
  void done();

 private:
  std::ostream* terminal_;
  bool shown_ = false;
  std::size_t at_ = 0;
  const std::size_t total_;
};

}  // namespace dunnage
