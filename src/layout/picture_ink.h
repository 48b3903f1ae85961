// SPDX-License-Identifier: MIT
// What all drawn pictures share: dashes, hatches, and words that know how large they are before they are put.
#pragma once

#include <string>
#include <vector>

#include "layout/fit.h"
#include "layout/setting.h"
#include "model/page.h"

namespace dunnage {

/// Words of a picture, set and measured.
struct Label {
  Lines lines;
  TypeStyle style;
  Paper width, height;
};
/// Set at the style's size, wrapped where wider than `most`; never below the style's floor.
Label label(Setting& setting, const TypeStyle& style, const std::string& text, Paper most);
/// Puts a label, its top left corner at `at`.
void put_label(Setting& setting, std::vector<Ink>& ink, const Label& label, Spot at);

/// Moves boxes of these heights, wanted at `tops` (ascending), so that they stand `gap` apart between `from`
/// and `to`. False where they have no room; they then stand from `from` on.
bool spread(std::vector<Paper>& tops, const std::vector<Paper>& heights, Paper gap, Paper from, Paper to);

/// A line of straight pieces in a pattern that a copier keeps.
void put_path(std::vector<Ink>& ink, const std::vector<Spot>& path, Paper thickness, picture::Pattern pattern);
/// Lines at 45 degrees over a box, `pitch` apart, rising to the right; `both` ways for a cross-hatch.
void put_hatch(std::vector<Ink>& ink, const Box& box, Paper pitch, bool both = false);
/// A closed outline, filled with that grey; a stroke of zero draws none.
void put_polygon(std::vector<Ink>& ink, const std::vector<Spot>& corners, Paper stroke, double fill);
void put_disc(std::vector<Ink>& ink, Spot middle, Paper radius, Paper stroke, double fill);

/// How a state looks: a full square, a crossed square, an empty ring. `side` is its width.
void put_state(std::vector<Ink>& ink, picture::State state, Spot middle, Paper side);

}  // namespace dunnage
