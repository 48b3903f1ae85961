// SPDX-License-Identifier: MIT
// Which sheets a packet holds, and each in words, in one language or in two.
#pragma once

#include <string>
#include <vector>

#include "document/documents.h"
#include "model/sheet.h"
#include "run/options.h"

namespace dunnage {

struct Sheet {
  const DocumentKind* kind = nullptr;
  Layout layout;
  Document document;
  std::size_t pages = 0;  ///< none until it is laid out
  int longest = 0;        ///< pages of the longest section
};

/// Of all that can be printed.
std::vector<std::string> sheet_names();
/// The sheets to make: those asked for, else the house's packet, both in the order typed, else all that belong to one.
/// Throws UsageError for a name that no sheet has.
std::vector<const DocumentKind*> sheets_asked_for(const PrintOptions& options, const House& house);
/// The sheets in the language of `contexts`, one or two that differ in their words alone; `layouts` are those of the
/// kinds and are moved from. Sheets that would help nobody are left out and stand in `skipped` of the first context.
std::vector<Sheet> make_sheets(const std::vector<const DocumentKind*>& kinds, std::vector<Layout>& layouts,
                               std::vector<Context>& contexts);

}  // namespace dunnage
