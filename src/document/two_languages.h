// SPDX-License-Identifier: MIT
// Two languages on one sheet: the sheet is written in each, then the two are laid over each other, text by text. No
// sheet knows of it, and no run of words mixes the two.
#pragma once

#include "document/context.h"

namespace dunnage {

/// Each text of `first` with that of `second` on a line of its own below it; what both say alike stands once. A QR code
/// and what counts cut lines stay in the first language, whose name is the document's. Asserts that both were written
/// from the same things: they have the same sections, blocks, rows and cells.
Document in_two_languages(Document first, const Document& second);
/// Every section of `first`, then every section of `second`: for sheets that must stay on their page, and for pictures.
/// Head and foot stay in the first, as two lines more would cost the page; the second's title stands where a recipient
/// does, and the foot says both revisions, since a language may have to say that nobody has read it.
Document in_two_parts(Document first, const Document& second);
Skipped in_two_languages(const Skipped& first, const Skipped& second);

}  // namespace dunnage
