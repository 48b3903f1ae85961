// SPDX-License-Identifier: MIT
// A sheet that shows how far a printer misses the labels: no two feed alike.
#pragma once

#include <string>
#include <vector>

#include "font/faces.h"
#include "layout/layout_problem.h"
#include "model/document.h"
#include "model/page.h"
#include "model/sheet.h"

namespace dunnage {

/// One page: every label's outline, and on the first label rulers across its four edges. The number where the paper
/// is really cut is the offset to ask for, on whichever edge it can be read: right and down are positive. `document`
/// gives title, language, and in its first section's first paragraph what to do.
Pages test_sheet(const Document& document, const Stock& stock, const Faces& faces,
                 std::vector<LayoutProblem>& problems);

}  // namespace dunnage
