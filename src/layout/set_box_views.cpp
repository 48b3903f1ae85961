// SPDX-License-Identifier: MIT
// Setting of views of boxes.
#include "layout/set_box_views.h"

#include <algorithm>
#include <cmath>

#include "base/unit.h"
#include "layout/picture_ink.h"

namespace dunnage {
namespace {

using picture::BoxView;
using picture::ViewBox;
using unit::paper_mm;
using unit::point;

constexpr Paper view_gap = 1 * paper_mm, view_between = 5 * paper_mm, between_rows = 4 * paper_mm;
constexpr Paper usual_view = 80 * paper_mm;
constexpr Paper view_wall = 1.5 * point, view_edge = 0.75 * point, load_bar = 2.5 * point;
constexpr Paper view_pad = 0.6 * paper_mm;
constexpr double stood = 0.85;  ///< grey of a box without a name: it was there before
/// More boxes than this before one, and what is seen of it is not looked for.
constexpr std::size_t most_covers = 8;

bool meet(const Box& a, const Box& b) {
  return a.x + hair < b.x + b.w && b.x + hair < a.x + a.w && a.y + hair < b.y + b.h && b.y + hair < a.y + a.h;
}

/// The largest upright rectangle of `box` that none of the boxes before it covers; empty where there is none.
Box seen_of(const Box& box, const std::vector<Box>& covers) {
  if (covers.empty()) return box;
  if (covers.size() > most_covers) return {};
  std::vector<Paper> xs{box.x, box.x + box.w}, ys{box.y, box.y + box.h};
  for (const Box& c : covers) {
    for (const Paper x : {c.x, c.x + c.w})
      if (x > box.x && x < box.x + box.w) xs.push_back(x);
    for (const Paper y : {c.y, c.y + c.h})
      if (y > box.y && y < box.y + box.h) ys.push_back(y);
  }
  std::sort(xs.begin(), xs.end());
  std::sort(ys.begin(), ys.end());
  Box best{};
  double most = 0;
  for (std::size_t i = 0; i < xs.size(); ++i)
    for (std::size_t j = i + 1; j < xs.size(); ++j)
      for (std::size_t k = 0; k < ys.size(); ++k)
        for (std::size_t l = k + 1; l < ys.size(); ++l) {
          const Box one{xs[i], ys[k], xs[j] - xs[i], ys[l] - ys[k]};
          const double area = one.w.si() * one.h.si();
          if (area <= most || std::any_of(covers.begin(), covers.end(), [&](const Box& c) { return meet(one, c); }))
            continue;
          best = one;
          most = area;
        }
  return best;
}

class ViewDrawing {
 public:
  ViewDrawing(Setting& setting, const BlockSpec& spec, const BoxView& view, double scale, Spot at,
              std::vector<Ink>& ink)
      : setting_(setting), spec_(spec), view_(view), scale_(scale), at_(at), ink_(ink) {}

  void draw() {
    std::vector<Box> boxes;
    for (const ViewBox& b : view_.boxes)
      boxes.push_back(
          {at_.x + paper(b.x), at_.y + paper(view_.height - b.y - b.height), paper(b.width), paper(b.height)});
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      const ViewBox& b = view_.boxes[i];
      ink_.push_back(ink::Rect{boxes[i], {}, b.fixed || !b.lines.empty() ? 1.0 : stood});
      if (b.fixed) put_hatch(ink_, boxes[i], 1.5 * paper_mm);
      ink_.push_back(ink::Rect{boxes[i], b.fixed ? 0.5 * point : view_edge, -1});
      std::vector<Box> covers;
      for (std::size_t j = i + 1; j < boxes.size(); ++j)
        if (meet(boxes[i], boxes[j])) covers.push_back(boxes[j]);
      name(b, seen_of(boxes[i], covers));
    }
    ink_.push_back(ink::Rect{{at_.x, at_.y, paper(view_.width), paper(view_.height)}, view_wall, -1});
    for (const picture::ViewBar& one : view_.bars) {
      const Paper x = at_.x + paper(one.at);
      put_path(ink_, {{x, at_.y}, {x, at_.y + paper(view_.height)}}, load_bar, picture::Pattern::dashes);
    }
  }

 private:
  Paper paper(Length length) const { return Paper::from_si(length.si() * scale_); }

  /// On one line or not at all, as large as the room allows and never below the floor.
  bool fits(const TypeStyle& style, const std::string& text, Paper width, Paper height, Label& out) const {
    for (TypeStyle tried = style;; tried.size = tried.size - 1 * point) {
      tried.fit = Fit::wrap;
      tried.leading = tried.size * 1.15;
      out = label(setting_, tried, text, width);
      if (out.lines.lines.size() == 1 && out.width <= width && out.height <= height) return true;
      if (tried.size - 1 * point < style.floor - 0.001 * point) return false;
    }
  }

  void name(const ViewBox& box, const Box& seen) {
    const Paper width = seen.w - view_pad * 2, height = seen.h - view_pad / 2;
    std::vector<Label> lines;
    Paper total;
    for (std::size_t i = 0; i < box.lines.size(); ++i) {
      Label line;
      if (box.lines[i].empty()) continue;
      if (!fits(i == 0 ? spec_.head : spec_.type, box.lines[i], width, height - total, line)) {
        if (i == 0) return;
        continue;
      }
      total += line.height;
      lines.push_back(std::move(line));
    }
    Paper y = seen.y + (seen.h - total) / 2;
    for (const Label& line : lines) {
      put_label(setting_, ink_, line, {seen.x + (seen.w - line.width) / 2, y});
      y += line.height;
    }
  }

  Setting& setting_;
  const BlockSpec& spec_;
  const BoxView& view_;
  const double scale_;
  const Spot at_;
  std::vector<Ink>& ink_;
};

/// Sides and what is seen, beneath; the names of bars above.
class Legend {
 public:
  Legend(Setting& setting, const BlockSpec& spec, const BoxView& view, Paper width) : setting_(setting), view_(view) {
    TypeStyle strong = spec.type;
    strong.face = spec.head.face;
    caption_ = label(setting, strong, view.caption, width);
    left_ = label(setting, spec.type, view.left, width / 2);
    right_ = label(setting, spec.type, view.right, width / 2);
    for (const picture::ViewBar& one : view.bars) bars_.push_back(label(setting, spec.type, one.name, width / 2));
    for (const Label& one : bars_) above_ = std::max(above_, one.height);
  }
  Paper above() const { return above_; }
  /// One line where all three stand beside each other, else the caption has its own.
  Paper below(Paper drawn) const {
    return view_gap / 2 + std::max(left_.height, right_.height) + (beside(drawn) ? Paper{} : caption_.height);
  }
  void put(std::vector<Ink>& ink, Spot at, Paper drawn, Paper height, double scale) const {
    const Paper y = at.y + height + view_gap / 2;
    put_label(setting_, ink, left_, {at.x, y});
    put_label(setting_, ink, right_, {at.x + drawn - right_.width, y});
    const Paper own = beside(drawn) ? Paper{} : std::max(left_.height, right_.height);
    put_label(setting_, ink, caption_, {at.x + std::max((drawn - caption_.width) / 2, Paper{}), y + own});
    Paper clear = at.x - 100 * paper_mm;
    for (std::size_t i = 0; i < bars_.size(); ++i) {
      const Paper x = std::max(at.x + Paper::from_si(view_.bars[i].at.si() * scale) - bars_[i].width / 2, clear);
      put_label(setting_, ink, bars_[i], {x, at.y - above_});
      clear = x + bars_[i].width + view_gap;
    }
  }

 private:
  bool beside(Paper drawn) const {
    const Paper side = std::max(left_.width, right_.width) + view_gap * 2;
    return caption_.width + side * 2 <= drawn;
  }
  Setting& setting_;
  const BoxView& view_;
  Label caption_, left_, right_;
  std::vector<Label> bars_;
  Paper above_;
};

double scale_of(const picture::BoxViews& all, Paper width, Paper height) {
  double scale = 1;
  for (const BoxView& view : all.views)
    scale = std::min({scale, width.si() / view.width.si(), height.si() / view.height.si()});
  return scale;
}

}  // namespace

void set_box_views(Setting& setting, const BlockSpec& spec, const picture::BoxViews& all, Paper width, Galley& galley) {
  const auto across = static_cast<std::size_t>(std::max(spec.across, 1));
  const Paper cell = (width - view_between * static_cast<double>(across - 1)) / static_cast<double>(across);
  const double scale = scale_of(all, cell, spec.height > Paper{} ? spec.height : usual_view);
  if (scale <= 0) return;
  for (std::size_t first = 0; first < all.views.size(); first += across) {
    Strip strip;
    const std::size_t last = std::min(first + across, all.views.size());
    Paper above, tall;
    std::vector<Legend> words;
    for (std::size_t i = first; i < last; ++i) {
      words.emplace_back(setting, spec, all.views[i], cell);
      above = std::max(above, words.back().above());
      tall = std::max(tall, Paper::from_si(all.views[i].height.si() * scale));
    }
    for (std::size_t i = first; i < last; ++i) {
      const BoxView& view = all.views[i];
      const Paper drawn = Paper::from_si(view.width.si() * scale), height = Paper::from_si(view.height.si() * scale);
      const Paper left = (cell + view_between) * static_cast<double>(i - first) + (cell - drawn) / 2;
      const Spot at{left, above + tall - height + view_wall / 2};
      ViewDrawing(setting, spec, view, scale, at, strip.ink).draw();
      words[i - first].put(strip.ink, at, drawn, height, scale);
      strip.height = std::max(strip.height, at.y + height + words[i - first].below(drawn));
    }
    strip.before = first > 0 ? between_rows : Paper{};
    galley.strips.push_back(std::move(strip));
  }
}

}  // namespace dunnage
