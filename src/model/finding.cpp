// SPDX-License-Identifier: MIT
// The words of an outcome. No sheet says "pass" or "safe".
#include "model/finding.h"

namespace dunnage {

const char* name(Outcome outcome) {
  switch (outcome) {
    case Outcome::within:
      return "within limit";
    case Outcome::over:
      return "over limit";
    case Outcome::not_checked:
      return "not checked";
    case Outcome::does_not_apply:
      return "does not apply";
  }
  return "";
}

}  // namespace dunnage
