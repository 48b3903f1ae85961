// SPDX-License-Identifier: MIT
// A document in words becomes pages.
#pragma once

#include <vector>

#include "font/faces.h"
#include "layout/layout_problem.h"
#include "model/document.h"
#include "model/page.h"
#include "model/sheet.h"

namespace dunnage {

/// Gives `sink` pages of `page_width` x `page_height` (given upright; the layout turns them where it is landscape).
/// Each section begins a page, or a card where the layout has several on a sheet, and numbers its own. What cannot be
/// set as asked is added to `problems`; the pages are then not fit to print. Throws WorldError when a font file is
/// damaged. Besides one section's words and a few pages nothing is held, however many pages there are. Pages of the
/// longest section.
int lay_out(const Document& document, const Layout& layout, Paper page_width, Paper page_height, const Faces& faces,
            std::vector<LayoutProblem>& problems, PageSink& sink);
/// The same, with all pages kept.
Pages lay_out(const Document& document, const Layout& layout, Paper page_width, Paper page_height, const Faces& faces,
              std::vector<LayoutProblem>& problems);

}  // namespace dunnage
