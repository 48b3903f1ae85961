// SPDX-License-Identifier: MIT
// Pages as plain text: what stands where, for a person to read and for tests to compare.
#pragma once

#include <string>
#include <vector>

#include "font/faces.h"
#include "model/page.h"

namespace dunnage {

/// One line an ink, in the order drawn: kind, place and size in whole tenths of a millimetre from the top
/// left, then the words with their role and size in points. Ends with a line end.
std::string page_text(const std::vector<Pages>& documents, const Faces& faces);

}  // namespace dunnage
