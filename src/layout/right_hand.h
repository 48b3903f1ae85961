// SPDX-License-Identifier: MIT
// Printing on both sides: what one person takes away begins on a sheet of its own.
#pragma once

#include "model/page.h"

namespace dunnage {

/// Puts empty pages between, so that each part (a page with a bookmark begins one) stands on a right-hand page, and one
/// at the end where the number of pages is odd. `cards`: every page on the right hand, since cards are cut apart and
/// one must not stand on the back of another.
void begin_on_right_hand(Pages& pages, bool cards);

}  // namespace dunnage
