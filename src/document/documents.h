// SPDX-License-Identifier: MIT
// The list of all sheets. A new sheet is one file and one line here.
#pragma once

#include <string_view>
#include <vector>

#include "document/context.h"

namespace dunnage {

struct DocumentKind {
  std::string_view name;         ///< "pull-sheet": also its layout's file name
  std::string_view title, hand;  ///< keys of words: its title, and who holds it
  Made (*make)(const Context&);
  bool in_packet = true;  ///< made where the house names no packet
  bool apart = false;     ///< in two languages: a part in each, since it must stay on its page
};

/// In the order of the packet. The cover comes first and is made last: `Context::made` and `Context::skipped` must
/// be filled by then. Skipped::document holds the printed title.
const std::vector<DocumentKind>& document_kinds();

}  // namespace dunnage
