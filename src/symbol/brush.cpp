// SPDX-License-Identifier: MIT
// Circles are four cubic curves; the constant puts them within 0.03% of round (common practice, no source).
#include "symbol/brush.h"

#include <cmath>

namespace dunnage {

namespace {
constexpr double kRound = 0.5522847498;
}

Brush& Brush::begin(Point at, double stroke, double grey) {
  figure_.paths.push_back({{{Figure::Step::Kind::move, at.first, at.second}}, stroke, grey});
  return *this;
}

Brush& Brush::to(Point at) {
  path().steps.push_back({Figure::Step::Kind::line, at.first, at.second});
  return *this;
}

Brush& Brush::curve(Point b1, Point b2, Point end) {
  path().steps.push_back({Figure::Step::Kind::curve, b1.first, b1.second, b2.first, b2.second, end.first, end.second});
  return *this;
}

Brush& Brush::close() {
  path().steps.push_back({Figure::Step::Kind::close});
  return *this;
}

Brush& Brush::line(std::initializer_list<Point> spots, double thickness, double grey) {
  begin(*spots.begin(), thickness, grey);
  for (auto at = spots.begin() + 1; at != spots.end(); ++at) to(*at);
  return *this;
}

Brush& Brush::closed(std::initializer_list<Point> spots, double thickness, double grey) {
  return line(spots, thickness, grey).close();
}

Brush& Brush::polygon(std::initializer_list<Point> corners, double grey) { return closed(corners, 0, grey); }

Brush& Brush::rect(double x, double y, double w, double h, double grey) {
  return polygon({{x, y}, {x + w, y}, {x + w, y + h}, {x, y + h}}, grey);
}

Brush& Brush::ring(double x, double y, double radius, double thickness, double grey) {
  const double k = kRound * radius, r = radius;
  return begin({x + r, y}, thickness, grey)
      .curve({x + r, y + k}, {x + k, y + r}, {x, y + r})
      .curve({x - k, y + r}, {x - r, y + k}, {x - r, y})
      .curve({x - r, y - k}, {x - k, y - r}, {x, y - r})
      .curve({x + k, y - r}, {x + r, y - k}, {x + r, y})
      .close();
}

Brush& Brush::disc(double x, double y, double radius, double grey) { return ring(x, y, radius, 0, grey); }

Brush& Brush::arrow(Point tail, Point tip, double shaft, double head, double grey) {
  const double dx = tip.first - tail.first, dy = tip.second - tail.second, length = std::hypot(dx, dy);
  const double ux = dx / length, uy = dy / length, back = length - 0.8 * head;
  const auto at = [&](double along, double aside) {
    return Point{tail.first + ux * along - uy * aside, tail.second + uy * along + ux * aside};
  };
  return polygon({at(0, shaft / 2), at(back, shaft / 2), at(back, head / 2), at(length, 0), at(back, -head / 2),
                  at(back, -shaft / 2), at(0, -shaft / 2)},
                 grey);
}

Brush& Brush::bar(Point from, Point end, double thickness) {
  return line({from, end}, thickness * 1.9, 1).line({from, end}, thickness);
}

Brush& Brush::picture(const Figure& other, Point at, double height) {
  for (Figure::Path copy : other.paths) {
    copy.stroke *= height;
    for (Figure::Step& s : copy.steps) {
      s.ax = at.first + s.ax * height, s.ay = at.second + s.ay * height;
      s.bx = at.first + s.bx * height, s.by = at.second + s.by * height;
      s.cx = at.first + s.cx * height, s.cy = at.second + s.cy * height;
    }
    figure_.paths.push_back(std::move(copy));
  }
  return *this;
}

}  // namespace dunnage
