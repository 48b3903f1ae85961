// SPDX-License-Identifier: MIT
// A picture in unit size becomes ink in the box where it is wanted.
#pragma once

#include <algorithm>
#include <vector>

#include "model/page.h"
#include "symbol/marks.h"

namespace dunnage {

/// The figure as large as fits into `box` with its proportions kept, in the middle of it.
inline std::vector<Ink> drawn(const Figure& figure, const Box& box) {
  const Paper unit = std::min(box.h, box.w / figure.width);
  const Paper left = box.x + (box.w - unit * figure.width) / 2;
  const Paper top = box.y + (box.h - unit) / 2;
  const auto spot = [&](double x, double y) { return Spot{left + unit * x, top + unit * y}; };
  std::vector<Ink> inks;
  for (const Figure::Path& path : figure.paths) {
    ink::Outline outline;
    outline.stroke = unit * path.stroke;
    outline.grey = path.grey;
    for (const Figure::Step& s : path.steps)
      outline.steps.push_back(
          {static_cast<ink::Outline::Step::Kind>(s.kind), spot(s.ax, s.ay), spot(s.bx, s.by), spot(s.cx, s.cy)});
    inks.push_back(std::move(outline));
  }
  return inks;
}

}  // namespace dunnage
