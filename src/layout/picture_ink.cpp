// SPDX-License-Identifier: MIT
// Dashes are drawn as pieces, so that every reader of the file shows the same pattern.
#include "layout/picture_ink.h"

#include <algorithm>
#include <cmath>

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;
using Step = ink::Outline::Step;

/// Lengths drawn and left out in turn (reference widths: dash 4-2, dot 1-1.5).
std::vector<Paper> pieces_of(picture::Pattern pattern) {
  switch (pattern) {
    case picture::Pattern::solid:
      return {};
    case picture::Pattern::dashes:
      return {4 * paper_mm, 2 * paper_mm};
    case picture::Pattern::dots:
      return {1 * paper_mm, 1.5 * paper_mm};
    case picture::Pattern::dash_dots:
      return {4 * paper_mm, 1.5 * paper_mm, 1 * paper_mm, 1.5 * paper_mm};
  }
  return {};
}

Spot between(Spot a, Spot b, double share) { return {a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share}; }

Paper distance(Spot a, Spot b) { return Paper::from_si(std::hypot((b.x - a.x).si(), (b.y - a.y).si())); }

}  // namespace

Label label(Setting& setting, const TypeStyle& style, const std::string& text, Paper most) {
  Label out{fit_width(setting, style, text, most), style, {}, {}};
  const int face = setting.face(style.face);
  for (const std::string& line : out.lines.lines)
    out.width = std::max(out.width, out.lines.size * natural_ems(setting.faces, face, line));
  out.width += 0.01 * paper_mm;  // what rounding may cost
  out.height = text.empty() ? Paper{} : out.lines.height();
  return out;
}

void put_label(Setting& setting, std::vector<Ink>& ink, const Label& label, Spot at) {
  put_lines(setting, ink, label.lines, label.style, at, label.width);
}

bool spread(std::vector<Paper>& tops, const std::vector<Paper>& heights, Paper gap, Paper from, Paper to) {
  Paper next = from;
  for (std::size_t i = 0; i < tops.size(); ++i) {
    tops[i] = std::max(tops[i], next);
    next = tops[i] + heights[i] + gap;
  }
  Paper end = to;
  for (std::size_t i = tops.size(); i-- > 0;) {
    tops[i] = std::min(tops[i], end - heights[i]);
    end = tops[i] - gap;
  }
  if (tops.empty() || tops.front() >= from - 0.001 * paper_mm) return true;
  Paper y = from;
  for (std::size_t i = 0; i < tops.size(); ++i) {
    tops[i] = y;
    y += heights[i] + gap;
  }
  return false;
}

void put_path(std::vector<Ink>& ink, const std::vector<Spot>& path, Paper thickness, picture::Pattern pattern) {
  const std::vector<Paper> pieces = pieces_of(pattern);
  if (pieces.empty()) {
    ink::Outline outline;
    for (const Spot& spot : path)
      outline.steps.push_back({outline.steps.empty() ? Step::Kind::move : Step::Kind::line, spot, {}, {}});
    outline.stroke = thickness;
    if (path.size() > 1) ink.push_back(std::move(outline));
    return;
  }
  std::size_t piece = 0;
  Paper left = pieces[0];
  for (std::size_t i = 1; i < path.size(); ++i) {
    const Paper all = distance(path[i - 1], path[i]);
    for (Paper done; done < all;) {
      const Paper step = std::min(left, all - done);
      if (piece % 2 == 0)
        ink.push_back(ink::Line{between(path[i - 1], path[i], done / all),
                                between(path[i - 1], path[i], (done + step) / all),
                                thickness,
                                {}});
      done += step;
      left = left - step;
      if (left <= 0.0001 * paper_mm) left = pieces[piece = (piece + 1) % pieces.size()];
    }
  }
}

void put_hatch(std::vector<Ink>& ink, const Box& box, Paper pitch, bool both) {
  const Paper step = pitch * std::sqrt(2.0);
  for (Paper c = step / 2; c < box.w + box.h; c += step) {
    // x + y = c from the lower left corner: cut to the box
    const Paper x0 = std::max(Paper{}, c - box.h), x1 = std::min(c, box.w);
    const Paper y0 = c - x0, y1 = c - x1;
    ink.push_back(ink::Line{{box.x + x0, box.y + y0}, {box.x + x1, box.y + y1}, 0.5 * point, {}});
    if (both)
      ink.push_back(ink::Line{{box.x + box.w - x0, box.y + y0}, {box.x + box.w - x1, box.y + y1}, 0.5 * point, {}});
  }
}

void put_polygon(std::vector<Ink>& ink, const std::vector<Spot>& corners, Paper stroke, double fill) {
  ink::Outline outline;
  for (const Spot& spot : corners)
    outline.steps.push_back({outline.steps.empty() ? Step::Kind::move : Step::Kind::line, spot, {}, {}});
  outline.steps.push_back({Step::Kind::close, {}, {}, {}});
  if (fill >= 0) {
    outline.grey = fill;
    ink.push_back(outline);
  }
  if (stroke > Paper{}) {
    outline.stroke = stroke;
    outline.grey = 0;
    ink.push_back(std::move(outline));
  }
}

void put_disc(std::vector<Ink>& ink, Spot middle, Paper radius, Paper stroke, double fill) {
  const Paper r = radius, k = radius * 0.5523;  // cubic arcs of a quarter
  const auto at = [&](Paper x, Paper y) { return Spot{middle.x + x, middle.y + y}; };
  const Paper o;
  ink::Outline outline;
  outline.steps = {{Step::Kind::move, at(r, o), {}, {}},
                   {Step::Kind::curve, at(r, k), at(k, r), at(o, r)},
                   {Step::Kind::curve, at(-k, r), at(-r, k), at(-r, o)},
                   {Step::Kind::curve, at(-r, -k), at(-k, -r), at(o, -r)},
                   {Step::Kind::curve, at(k, -r), at(r, -k), at(r, o)},
                   {Step::Kind::close, {}, {}, {}}};
  if (fill >= 0) {
    outline.grey = fill;
    ink.push_back(outline);
  }
  if (stroke > Paper{}) {
    outline.stroke = stroke;
    outline.grey = 0;
    ink.push_back(std::move(outline));
  }
}

void put_state(std::vector<Ink>& ink, picture::State state, Spot middle, Paper side) {
  const Paper half = side / 2;
  const Box box{middle.x - half, middle.y - half, side, side};
  if (state == picture::State::unknown) {
    put_disc(ink, middle, half, 1.25 * point, 1);
    return;
  }
  ink.push_back(ink::Rect{box, 1.25 * point, state == picture::State::enough ? 0.0 : 1.0});
  if (state == picture::State::enough) return;
  ink.push_back(ink::Line{{box.x, box.y}, {box.x + side, box.y + side}, 1.25 * point, {}});
  ink.push_back(ink::Line{{box.x, box.y + side}, {box.x + side, box.y}, 1.25 * point, {}});
}

}  // namespace dunnage
