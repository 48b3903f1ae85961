// SPDX-License-Identifier: MIT
// What a layout could not do with a document. Paper that lost a word without saying so would be worse than
// none.
#pragma once

#include <string>

#include "base/source.h"

namespace dunnage {

/// Nothing is printed while there is one of these.
struct LayoutProblem {
  std::string document;  ///< "pull-sheet"
  std::string section;   ///< its recipient; may be empty
  std::string block;     ///< its id; may be empty
  std::string text;      ///< the text that is concerned; may be empty
  std::string cause;     ///< "is wider than its column"
  Place place;           ///< the line of the layout that asked for it
};

/// One sentence: `pull-sheet, Team A, block "rows": "FOH-1" is wider than its column`.
std::string sentence(const LayoutProblem& problem);

}  // namespace dunnage
