// SPDX-License-Identifier: MIT
// Running words: headings, paragraphs, listings, facts, notices.
#pragma once

#include <string>

#include "layout/galley.h"
#include "layout/setting.h"

namespace dunnage {

/// One strip, kept with what follows.
void set_heading(Setting& setting, const BlockSpec& spec, const block::Heading& heading, Paper width, Galley& galley);
/// A strip a line; neither the first nor the last line of a paragraph stands alone on a page.
void set_paragraph(Setting& setting, const BlockSpec& spec, const std::string& text, Paper width, Galley& galley);
/// Bulleted lines in `across` columns, read downwards; on a further page below "ABOVE (continued)".
void set_listing(Setting& setting, const BlockSpec& spec, const block::Listing& listing, Paper width,
                 const std::string& above, Galley& galley);
/// Label and value side by side, in `across` columns, read downwards.
void set_facts(Setting& setting, const BlockSpec& spec, const block::Facts& facts, Paper width, Galley& galley);
/// Framed, with the warning sign where it has a word.
void set_notice(Setting& setting, const BlockSpec& spec, const block::Notice& notice, Paper width, Galley& galley);

}  // namespace dunnage
