// SPDX-License-Identifier: MIT
#include "run/progress.h"

#include <fmt/format.h>

#include <algorithm>

namespace dunnage {

namespace {

constexpr std::size_t bar_width = 24;
constexpr const char* clear_line = "\r\033[K";  // ECMA-48: erase to the end of the line

}  // namespace

Progress::Progress(std::ostream* terminal, std::size_t total)
    : terminal_(terminal), total_(std::max<std::size_t>(1, total)) {}

Progress::~Progress() { done(); }

void Progress::step(const std::string& what) {
  ++at_;
  if (!terminal_) return;
  const std::size_t full = std::min(bar_width, bar_width * at_ / total_);
  *terminal_ << clear_line
             << fmt::format("[{:-<{}}] {} of {}  {}", std::string(full, '#'), bar_width, at_, total_, what)
             << std::flush;
  shown_ = true;
}

void Progress::done() {
  if (shown_) *terminal_ << clear_line << std::flush;
  shown_ = false;
}

}  // namespace dunnage
