// SPDX-License-Identifier: MIT
// The label that lives on a case for years: what it is, what it weighs, how it is moved, whose it is.
#pragma once

#include <string>
#include <vector>

#include "document/context.h"

namespace dunnage {

/// One section a unit, in the order given. `handling` by unit index. `revision` of this printing stands where the
/// case has none typed. Blocks: code, name, mass, handle, marks, contents, qr, owner, revision; contents and marks
/// are left out where there are none, or where the case withholds its contents.
Document case_labels(const Catalogue& catalogue, const std::vector<Handling>& handling, const std::vector<int>& units,
                     const Words& words, UnitSystem system, const std::string& revision);

/// What the QR of a unit's label says, lines parted by '\n': `CODE  name`; mass; move and lift; contents, each line
/// beginning with a digit; owner; phone. No other line begins with a digit.
std::string label_text(const Catalogue& catalogue, const Handling& handling, int unit, const Words& words,
                       UnitSystem system, const std::string& revision);

/// What belongs in a case, a line each: "6 x Dynamic vocal mic".
std::vector<std::string> content_lines(const Catalogue& catalogue, const Case& box, const Words& words);

/// Labels of all units that the plan pulls.
Made case_label(const Context& context);

/// What a test sheet for a label stock says.
Document label_test(const House& house, const Words& words);

}  // namespace dunnage
