// SPDX-License-Identifier: MIT
// Vectors with their words: QR codes, handling marks, pictograms of moving and lifting. Each in a box or in a
// galley.
#pragma once

#include <vector>

#include "layout/galley.h"
#include "layout/setting.h"
#include "symbol/marks.h"

namespace dunnage {

/// A figure `height` high, its top left corner at `at`.
void put_figure(std::vector<Ink>& ink, const Figure& figure, Spot at, Paper height);

/// The code at whole printer dots, as many a module as the box holds and at least the layout's, with its
/// quiet zone inside the box. Text that is too long loses lines and says so; a box too small for the first
/// line is a problem.
void put_qr(Setting& setting, const BlockSpec& spec, const block::Qr& qr, const Box& box, std::vector<Ink>& ink);
/// Pictures in rows of `across` (1: all in one row), the word under each.
void put_marks(Setting& setting, const BlockSpec& spec, const block::Marks& marks, const Box& box,
               std::vector<Ink>& ink);
/// How it moves and how it is lifted: picture, then word; `across` 2 side by side, else one above the other.
void put_handle(Setting& setting, const BlockSpec& spec, const block::Handle& handle, const Box& box,
                std::vector<Ink>& ink);

/// In the flow `line_height` is the side of a code, the height of a row of marks with words, and of a
/// pictogram.
void set_qr(Setting& setting, const BlockSpec& spec, const block::Qr& qr, Paper width, Galley& galley);
void set_marks(Setting& setting, const BlockSpec& spec, const block::Marks& marks, Paper width, Galley& galley);
void set_handle(Setting& setting, const BlockSpec& spec, const block::Handle& handle, Paper width, Galley& galley);

}  // namespace dunnage
