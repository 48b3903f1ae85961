// SPDX-License-Identifier: MIT
// Pictures in words and quantities: what is to be seen, before anyone has thought of lines. The layout draws them.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "base/quantity.h"

namespace dunnage::picture {

/// Nothing is told apart by colour: a copy in black and white must read the same.
enum class Pattern { solid, dashes, dots, dash_dots };

/// An axis from zero, in the unit that `title` names.
struct Axis {
  std::string title;         ///< "gust, mph"
  double end = 1, step = 1;  ///< end > 0, step > 0
  int decimals = 0;          ///< of its figures
};
/// Points in the axes' units, from left to right. Named where it ends.
struct Curve {
  std::string name;
  Pattern pattern = Pattern::solid;
  std::vector<std::pair<double, double>> points;
};
/// A line from the bottom to the top of a chart, named above it.
struct Upright {
  double at = 0;
  std::string name;
  Pattern pattern = Pattern::solid;
  bool heavy = false;
};
/// A point in the plot, named beside it.
struct Dot {
  double x = 0, y = 0;
  std::string name;
};
/// Curves over one figure; what lies beneath `floor` is hatched and named.
struct Chart {
  Axis across, up;
  std::vector<Curve> curves;
  std::vector<Upright> uprights;
  std::optional<double> floor;
  std::string floor_name;  ///< "below 1: does not hold"
  std::vector<Dot> dots{};
};

enum class State { enough, lacking, unknown };  ///< a full square, a crossed one, an empty ring

/// From the middle of the structure: x to the right of the paper, y to its top.
struct GroundSpot {
  Length x, y;
};
struct GroundLine {
  GroundSpot from, to;
  enum class Kind { edge, ridge, wall } kind = Kind::edge;
};
/// A leg, or weights that stand somewhere. Its words stand at the side and a line leads to it.
struct Stand {
  GroundSpot at;
  std::string name;
  std::vector<std::string> lines;
  State state = State::unknown;
};
/// A structure from above, to scale.
struct PlanView {
  std::vector<GroundLine> lines;
  std::vector<Stand> stands;
  std::vector<std::string> walls;  ///< words of the wall lines, in their order
  bool mast = false;               ///< one stands in the middle
  std::string up;                  ///< what lies at the top of the paper: "N"; may be empty
  std::string caption;             ///< "10 x 10 ft, seen from above"
};

/// One circuit of a supply: from its breaker over its cable to its loads.
struct Branch {
  std::vector<std::string> breaker;  ///< first line is its name
  std::vector<std::string> cable;
  std::vector<std::string> loads;
  State state = State::unknown;
  std::string says;  ///< "within limit"
};
struct OneLine {
  std::vector<std::string> supply;  ///< first line is its name
  std::vector<Branch> branches;
};

struct FaderCell {
  std::string number, name;
};
/// Cells at the pitch of the faders, a strip a bank. What the console's pitch and bank are not known for, the layout
/// says.
struct FaderStrips {
  std::optional<Paper> pitch;
  std::optional<int> per_bank;
  std::vector<FaderCell> cells;
  std::string bank;   ///< "channels {from} to {to}"
  std::string cut;    ///< "cut here"
  std::string check;  ///< "This line measures {length}. If it does not, print at full size."
};

/// Levels of alarm, the worst first. Each is a word, a number, a shape and a hatch.
struct Level {
  enum class Shape { octagon, diamond, disc } shape = Shape::disc;
  std::string word, figure;  ///< "DOWN", "14 mph"
  std::string note;          ///< beside the figure: "gust, monitor canopy"
  std::vector<std::string> actions;
};
struct Levels {
  std::vector<Level> levels;
};

/// A box seen straight on. Lines that find no room in what is seen of it are left out, the last first.
struct ViewBox {
  Length x, y, width, height;      ///< from the left and from the bottom of the view
  std::vector<std::string> lines;  ///< what it is called by, then more; none: it stood there before, and is grey
  bool fixed = false;              ///< no cargo but part of the vehicle: hatched
};
struct ViewBar {
  Length at;
  std::string name;
};
/// A space and the boxes in it from one side, the farthest first: nearer ones cover them.
struct BoxView {
  Length width, height;
  std::vector<ViewBox> boxes;
  std::vector<ViewBar> bars;         ///< from the bottom to the top, named above
  std::string left, caption, right;  ///< beneath: what lies at either side, and what is seen
};
/// Views of one space, all to one scale.
struct BoxViews {
  std::vector<BoxView> views;
};

using Any = std::variant<Chart, PlanView, OneLine, FaderStrips, Levels, BoxViews>;

}  // namespace dunnage::picture
