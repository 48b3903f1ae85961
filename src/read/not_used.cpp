// SPDX-License-Identifier: MIT
// The table. A line goes as its sheet comes.
#include "read/not_used.h"

#include <algorithm>
#include <iterator>

namespace dunnage {
namespace {

constexpr std::string_view not_used_yet[] = {"[[vehicle]]", "[[supply]]", "[[circuit]]", "[[load]]"};

}  // namespace

void note_not_used(std::string_view section, const Place& first, Diagnostics& diagnostics) {
  if (!first.known()) return;
  if (std::find(std::begin(not_used_yet), std::end(not_used_yet), section) == std::end(not_used_yet)) return;
  diagnostics.note(first, std::string(section) + " is read but not used yet");
}

}  // namespace dunnage
