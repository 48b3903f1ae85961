// SPDX-License-Identifier: MIT
// A small picture as outlines, before it has a place or a size on paper.
#pragma once

#include <vector>

namespace dunnage {

/// A picture `width` wide and 1 high, from the top left, y downwards.
struct Figure {
  struct Step {
    enum class Kind { move, line, curve, close } kind = Kind::move;
    double ax = 0, ay = 0, bx = 0, by = 0, cx = 0, cy = 0;  ///< move, line: a; curve: cubic through b to c
  };
  struct Path {
    std::vector<Step> steps;
    double stroke = 0;  ///< thickness, round ends; zero: filled, even-odd
    double grey = 0;    ///< 0 black, 1 white (to cut into what is below)
  };
  std::vector<Path> paths;
  double width = 1;
};

}  // namespace dunnage
