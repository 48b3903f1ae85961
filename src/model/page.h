// SPDX-License-Identifier: MIT
// Finished pages: few plain marks at fixed places. Lengths on paper from the top left corner; y grows downwards.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "base/quantity.h"

namespace dunnage {

struct Spot { Paper x, y; };
struct Box { Paper x, y, w, h; };

namespace ink {
/// One line of text in one face, its baseline beginning at `at`. Width as the metrics give it.
struct Words { Spot at; int face; Paper size; Paper width; std::string text; double grey = 0; };
struct Line { Spot from, to; Paper thickness; Paper dash; };            ///< dash zero: solid
struct Rect { Box box; Paper stroke; double fill = -1; };               ///< fill: grey 0 to 1; negative: none. stroke zero: none
/// A filled (even-odd) or stroked (round ends and joins) outline; curves are cubic, three spots each.
struct Outline {
  struct Step { enum class Kind { move, line, curve, close } kind; Spot a, b, c; };
  std::vector<Step> steps;
  Paper stroke;                                                          ///< zero: filled
  double grey = 0;
};
/// Square modules, dark where set; `side` modules a side, row by row from the top.
struct Modules { Spot at; Paper module; int side; std::vector<bool> dark; };
}  // namespace ink

using Ink = std::variant<ink::Words, ink::Line, ink::Rect, ink::Outline, ink::Modules>;

struct Page {
  Paper width, height;
  std::vector<Ink> ink;
  std::string label;                ///< page label, "1"
  std::string bookmark;             ///< where a section begins; empty elsewhere
};

/// Pages of one document; of a packet, where several follow each other.
struct Pages {
  std::string title, language = "en";
  std::vector<Page> pages;
  bool to_scale = false;            ///< labels: ask the viewer not to scale
  int longest = 0;                  ///< pages of the longest section
};

}  // namespace dunnage
