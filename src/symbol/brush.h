// SPDX-License-Identifier: MIT
// The few shapes that the pictures are made of.
#pragma once

#include <initializer_list>
#include <utility>

#include "symbol/outline.h"

namespace dunnage {

/// A direction and a place in a figure; y grows downwards.
using Point = std::pair<double, double>;

/// Adds shapes to a figure. Shapes drawn later cover those before; grey 1 cuts white into what is below.
class Brush {
 public:
  explicit Brush(double width = 1) { figure_.width = width; }

  Brush& polygon(std::initializer_list<Point> corners, double grey = 0);
  Brush& rect(double x, double y, double w, double h, double grey = 0);
  Brush& disc(double x, double y, double radius, double grey = 0);
  /// An open line with round ends.
  Brush& line(std::initializer_list<Point> spots, double thickness, double grey = 0);
  Brush& closed(std::initializer_list<Point> spots, double thickness, double grey = 0);
  Brush& ring(double x, double y, double radius, double thickness, double grey = 0);
  /// One path of its own making: begins at a spot, then lines and curves.
  Brush& begin(Point at, double stroke = 0, double grey = 0);
  Brush& to(Point at);
  Brush& curve(Point b1, Point b2, Point end);
  Brush& close();
  /// A solid arrow from tail to tip; the head is as wide as `head` and as long as 0.8 of it.
  Brush& arrow(Point tail, Point tip, double shaft, double head, double grey = 0);
  /// A line with a white edge that lifts it off what is below.
  Brush& bar(Point from, Point end, double thickness);
  /// Another figure, `height` high, its top left corner at `at`.
  Brush& picture(const Figure& other, Point at, double height);

  Figure take() { return std::move(figure_); }

 private:
  Figure::Path& path() { return figure_.paths.back(); }
  Figure figure_;
};

}  // namespace dunnage
