// SPDX-License-Identifier: MIT
// The handling marks, after the descriptions in ISO 780:2015 (names and meaning), drawn by us.
#include "symbol/marks.h"

#include <cassert>

#include "symbol/brush.h"
#include "symbol/people.h"

namespace dunnage {
namespace {

Figure this_way_up() {
  return Brush()
      .arrow({0.26, 0.80}, {0.26, 0.03}, 0.17, 0.44)
      .arrow({0.74, 0.80}, {0.74, 0.03}, 0.17, 0.44)
      .rect(0.03, 0.87, 0.94, 0.10)
      .take();
}

/// A stemmed glass with a crack from its rim.
Figure fragile() {
  Brush b;
  b.begin({0.20, 0.03})
      .to({0.80, 0.03})
      .curve({0.84, 0.36}, {0.72, 0.53}, {0.56, 0.57})
      .to({0.56, 0.84})
      .curve({0.60, 0.88}, {0.74, 0.89}, {0.76, 0.97})
      .to({0.24, 0.97})
      .curve({0.26, 0.89}, {0.40, 0.88}, {0.44, 0.84})
      .to({0.44, 0.57})
      .curve({0.28, 0.53}, {0.16, 0.36}, {0.20, 0.03})
      .close();
  b.polygon({{0.50, 0.00}, {0.64, 0.00}, {0.58, 0.14}, {0.68, 0.20}, {0.48, 0.42}, {0.55, 0.24}, {0.44, 0.18}}, 1);
  return b.take();
}

void drop(Brush& b, double x, double y) {
  b.begin({x, y})
      .curve({x + 0.02, y + 0.06}, {x + 0.055, y + 0.09}, {x + 0.055, y + 0.125})
      .curve({x + 0.055, y + 0.20}, {x - 0.055, y + 0.20}, {x - 0.055, y + 0.125})
      .curve({x - 0.055, y + 0.09}, {x - 0.02, y + 0.06}, {x, y})
      .close();
}

Figure keep_dry() {
  Brush b;
  for (const auto& [x, y] :
       {Point{0.10, 0.10}, Point{0.30, 0.00}, Point{0.52, 0.00}, Point{0.74, 0.00}, Point{0.91, 0.10}})
    drop(b, x, y);
  b.begin({0.03, 0.66})
      .curve({0.06, 0.36}, {0.28, 0.24}, {0.50, 0.24})
      .curve({0.72, 0.24}, {0.94, 0.36}, {0.97, 0.66})
      .curve({0.90, 0.57}, {0.76, 0.57}, {0.68, 0.66})
      .curve({0.61, 0.57}, {0.39, 0.57}, {0.32, 0.66})
      .curve({0.24, 0.57}, {0.10, 0.57}, {0.03, 0.66})
      .close();
  b.begin({0.50, 0.60}, 0.07).to({0.50, 0.86}).curve({0.50, 0.98}, {0.70, 0.98}, {0.70, 0.85});
  return b.take();
}

/// The sun above a roof, the goods in its shade.
Figure keep_cool() {
  Brush b;
  b.disc(0.50, 0.245, 0.11);
  for (const auto& [from, to] :
       {std::pair{Point{0.31, 0.245}, Point{0.18, 0.245}}, std::pair{Point{0.69, 0.245}, Point{0.82, 0.245}},
        std::pair{Point{0.366, 0.111}, Point{0.29, 0.035}}, std::pair{Point{0.634, 0.111}, Point{0.71, 0.035}},
        std::pair{Point{0.50, 0.055}, Point{0.50, 0.03}}})
    b.line({from, to}, 0.055);
  b.line({{0.06, 0.71}, {0.50, 0.46}, {0.94, 0.71}}, 0.10);
  b.rect(0.27, 0.71, 0.46, 0.26);
  return b.take();
}

/// A sack truck with a box on it, crossed out.
Figure no_hand_truck() {
  Brush b;
  b.line({{0.14, 0.06}, {0.32, 0.06}, {0.32, 0.80}, {0.94, 0.80}}, 0.10);
  b.rect(0.43, 0.27, 0.46, 0.44);
  b.disc(0.30, 0.84, 0.135).disc(0.30, 0.84, 0.05, 1);
  b.bar({0.06, 0.12}, {0.96, 0.66}, 0.07).bar({0.96, 0.12}, {0.06, 0.66}, 0.07);
  return b.take();
}

/// A box that must carry nothing: what would stand on it is crossed out.
Figure no_stack() {
  return Brush()
      .rect(0.12, 0.62, 0.76, 0.35)
      .closed({{0.20, 0.07}, {0.80, 0.07}, {0.80, 0.50}, {0.20, 0.50}}, 0.075)
      .line({{0.20, 0.07}, {0.80, 0.50}}, 0.075)
      .line({{0.20, 0.50}, {0.80, 0.07}}, 0.075)
      .take();
}

/// A weight with a ring to lift it by and "kg" on it.
Figure heavy() {
  Brush b;
  b.ring(0.50, 0.155, 0.10, 0.075);
  b.polygon({{0.28, 0.27}, {0.72, 0.27}, {0.96, 0.97}, {0.04, 0.97}});
  b.line({{0.30, 0.46}, {0.30, 0.78}}, 0.07, 1).line({{0.44, 0.56}, {0.31, 0.68}, {0.45, 0.78}}, 0.07, 1);
  b.ring(0.615, 0.67, 0.085, 0.065, 1);
  b.begin({0.70, 0.57}, 0.065, 1).to({0.70, 0.82}).curve({0.70, 0.93}, {0.56, 0.92}, {0.545, 0.86});
  return b.take();
}

Figure warning() {
  Brush b;
  b.closed({{0.50, 0.10}, {0.94, 0.90}, {0.06, 0.90}}, 0.10);
  b.polygon({{0.44, 0.34}, {0.56, 0.34}, {0.535, 0.64}, {0.465, 0.64}});
  b.disc(0.50, 0.745, 0.055);
  return b.take();
}

}  // namespace

Figure figure(Sign sign) {
  switch (sign) {
    case Sign::this_way_up:
      return this_way_up();
    case Sign::fragile:
      return fragile();
    case Sign::keep_dry:
      return keep_dry();
    case Sign::keep_cool:
      return keep_cool();
    case Sign::no_hand_truck:
      return no_hand_truck();
    case Sign::no_stack:
      return no_stack();
    case Sign::heavy:
      return heavy();
    case Sign::warning:
      return warning();
    case Sign::carry:
      return carry_figure();
    case Sign::ramp:
      return ramp_figure();
    case Sign::aid:
      return aid_figure();
  }
  assert(false && "no such sign");
  return {};
}

}  // namespace dunnage
