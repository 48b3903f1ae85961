// SPDX-License-Identifier: MIT
#include "model/intake.h"

namespace dunnage {

std::string IntakeRow::text(const std::string& key) const {
  for (const IntakeLine& line : lines)
    if (line.key == key && !line.refused)
      if (const auto* text = std::get_if<std::string>(&line.value)) return *text;
  return {};
}

}  // namespace dunnage
