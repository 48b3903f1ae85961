// SPDX-License-Identifier: MIT
// Pages to the bytes of a PDF. The page contents are written here; the PDF library gives structure and fonts.
#pragma once

#include <string>
#include <vector>

#include "export/sealed_pages.h"
#include "font/faces.h"
#include "model/page.h"

namespace dunnage {

/// Who made a file, as its Creator says.
inline constexpr const char* paper_creator = "dunnage";

struct PdfOptions {
  std::string title;     ///< of the file; empty: the first document's
  bool compress = true;  ///< off only to read the file by eye
};

/// One PDF of all pages; they give their contents away. The same pages give the same bytes. Only the faces that the
/// pages use are embedded, cut down to the glyphs used. Asserts that every character of every text is in the face named
/// (`Faces::pieces` sees to it), and that there is a page at all. Throws WorldError when a font file is missing or
/// damaged or the PDF library fails.
std::string pdf_bytes(SealedPages& pages, const Faces& faces, const std::string& title = {});

/// The same of pages that were kept, one document after the other.
std::string pdf_bytes(const std::vector<Pages>& documents, const Faces& faces, const PdfOptions& options = {});

}  // namespace dunnage
