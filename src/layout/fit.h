// SPDX-License-Identifier: MIT
// Text into the room there is: wrapped, made smaller down to its floor, refused, or cut with "+ N more".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "layout/lines.h"
#include "layout/setting.h"
#include "model/page.h"

namespace dunnage {

/// Text set in one column of any height. A word that is wider than the column makes the text smaller, down to
/// the floor, before it breaks inside. `shrink`: each paragraph on one line if the floor allows, else wrapped
/// at the floor. `refuse`: a paragraph that needs a second line is a problem. `cut` has nothing to cut and
/// wraps.
Lines fit_width(Setting& setting, const TypeStyle& style, std::string_view text, Paper width);

/// Text set in a box. `shrink` and `cut`: the largest size down to the floor at which it fits without
/// breaking inside a word; `cut` then leaves out whole lines and says how many. Anything else that does not
/// fit is a problem.
Lines fit_box(Setting& setting, const TypeStyle& style, std::string_view text, Paper width, Paper height);

/// Whether it fits there, at its floor at the worst, without breaking inside a word.
bool fits_box(Setting& setting, const TypeStyle& style, std::string_view text, Paper width, Paper height);

/// As large as the widest word allows, between size and floor, then wrapped: for heads of narrow columns.
Lines fit_words(Setting& setting, const TypeStyle& style, std::string_view text, Paper width);

/// `leading` of a style at a size: in proportion to what the style says.
Paper leading_at(const TypeStyle& style, Paper size);
/// What is said in the place of `count` lines left out.
std::string more_words(const Document& document, int count);
/// "TITLE (continued)", in each language its own words.
std::string continued_words(const Document& document, const std::string& title);

/// Draws lines in a column whose top left is `at`; capitals stand in the middle of each line's leading.
void put_lines(Setting& setting, std::vector<Ink>& ink, const Lines& lines, const TypeStyle& style, Spot at,
               Paper width);

}  // namespace dunnage
