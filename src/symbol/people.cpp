// SPDX-License-Identifier: MIT
// Pictures of people moving and lifting: how many is what must be seen first, so they stand apart.
#include "symbol/people.h"

#include <cassert>

#include "symbol/brush.h"

namespace dunnage {
namespace {

/// Someone seen from the side at `x`, facing right (`way` 1) or left (-1), arms at `hands`.
void worker(Brush& b, double x, int way, Point hands, bool walking) {
  const double lean = 0.03 * way;
  b.disc(x + lean, 0.125, 0.105);
  b.line({{x, 0.36}, {x - lean, 0.60}}, 0.19);
  b.line({{x + lean, 0.345}, hands}, 0.085);
  const double stride = walking ? 0.15 : 0.065;
  b.line({{x - lean, 0.60}, {x - lean - stride, 0.945}}, 0.10);
  b.line({{x - lean, 0.60}, {x - lean + stride, 0.945}}, 0.10);
}

void wheels(Brush& b, double left, double right, double y) {
  for (double x : {left, right}) {
    b.disc(x, y, 0.075);
    b.disc(x, y, 0.028, 1);
  }
}

}  // namespace

/// One: beside the box. Two: one at each end. Three and four: two at an end, one behind the other.
Figure lift_by(int people) {
  assert(people >= 1 && people <= 4);
  const int left = (people + 1) / 2, right = people / 2;
  const double step = 0.33, box = people == 1 ? 0.42 : 0.60;
  const double first = 0.16, box_from = first + step * (left - 1) + 0.25, box_to = box_from + box;
  const double width = right == 0 ? box_to + 0.03 : box_to + 0.25 + step * (right - 1) + 0.16;
  Brush b(width);
  for (int i = 0; i < left; ++i) worker(b, first + step * i, 1, {box_from + 0.02, 0.56}, false);
  for (int i = 0; i < right; ++i) worker(b, box_to + 0.25 + step * i, -1, {box_to - 0.02, 0.56}, false);
  b.rect(box_from, 0.42, box, 0.30);
  const double middle = (box_from + box_to) / 2;
  b.arrow({middle, 0.34}, {middle, 0.02}, 0.10, 0.24);
  return b.take();
}

/// One pushes; the second, for a ramp, holds at the front.
Figure roll_by(int people) {
  assert(people == 1 || people == 2);
  const double from = 0.52, to = from + 0.58;
  Brush b(people == 1 ? to + 0.03 : to + 0.52);
  worker(b, 0.24, 1, {from + 0.02, 0.42}, true);
  if (people == 2) worker(b, to + 0.28, -1, {to - 0.02, 0.42}, true);
  b.rect(from, 0.34, to - from, 0.49);
  wheels(b, from + 0.11, to - 0.11, 0.90);
  b.arrow({from + 0.10, 0.58}, {to - 0.08, 0.58}, 0.11, 0.27, 1);
  return b.take();
}

Figure carry_figure() {
  Brush b;
  worker(b, 0.34, 1, {0.60, 0.56}, true);
  b.rect(0.54, 0.40, 0.42, 0.30);
  return b.take();
}

/// A wheeled case going up a slope.
Figure ramp_figure() {
  Brush b(1.2);
  b.polygon({{0.03, 0.97}, {1.17, 0.97}, {1.17, 0.60}});
  b.polygon({{0.40, 0.33}, {0.83, 0.19}, {0.97, 0.53}, {0.53, 0.675}});
  b.disc(0.60, 0.70, 0.07).disc(0.60, 0.70, 0.026, 1).disc(0.90, 0.60, 0.07).disc(0.90, 0.60, 0.026, 1);
  b.arrow({0.05, 0.62}, {0.36, 0.52}, 0.10, 0.24);
  return b.take();
}

/// Not by hand: someone lifting, in the ring and bar of a prohibition (ISO 7010: the bar falls to the right,
/// here between the box and the head).
Figure aid_figure() {
  Brush person;
  worker(person, 0.72, -1, {0.40, 0.58}, false);
  person.rect(0.02, 0.44, 0.44, 0.34);
  Brush b;
  b.picture(person.take(), {0.19, 0.16}, 0.68);
  b.ring(0.50, 0.50, 0.455, 0.085);
  b.bar({0.185, 0.185}, {0.815, 0.815}, 0.065);
  return b.take();
}

}  // namespace dunnage
