// SPDX-License-Identifier: MIT
// Setting of plan views.
#include "layout/set_plan_view.h"

#include <algorithm>
#include <cmath>

#include "layout/picture_ink.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

constexpr Paper plan_gap = 1.5 * paper_mm;
constexpr Paper leg_side = 4 * paper_mm;  ///< side of a leg's square
constexpr Paper least_drawing = 12 * paper_mm;

/// A name in bold with its lines below, which stand and fall together.
struct Words {
  std::vector<Label> parts;
  Paper width, height;
};

class PlanDrawing {
 public:
  PlanDrawing(Setting& setting, const BlockSpec& spec, const picture::PlanView& plan, const Box& box,
              std::vector<Ink>& ink)
      : setting_(setting), spec_(spec), plan_(plan), box_(box), ink_(ink) {}

  void draw() {
    set_words();
    const Label caption = label(setting_, spec_.type, plan_.caption, box_.w);
    if (!plan_.caption.empty())
      put_label(setting_, ink_, caption, {box_.x + (box_.w - caption.width) / 2, box_.y + box_.h - caption.height});
    room_ = {box_.x, box_.y, box_.w, box_.h - caption.height - plan_gap};
    share_sides();
    while (!sides_fit() && shorten()) {
    }
    scale();
    if (scale_ <= 0) {
      setting_.problem(plan_.caption, "is a plan without room between its words");
      return;
    }
    north();
    for (std::size_t i = 0; i < plan_.lines.size(); ++i) line(plan_.lines[i]);
    wall_names();
    if (plan_.mast) put_disc(ink_, spot({}), 1.6 * paper_mm, 1.25 * point, 1);
    for (const bool left : {true, false}) side(left);
    for (const picture::Stand& stand : plan_.stands) put_state(ink_, stand.state, spot(stand.at), leg_side);
  }

 private:
  void set_words() {
    const Paper most = box_.w * 0.33;
    for (const picture::Stand& stand : plan_.stands) {
      Words words;
      words.parts.push_back(label(setting_, spec_.head, stand.name, most));
      for (const std::string& text : stand.lines) words.parts.push_back(label(setting_, spec_.type, text, most));
      for (const Label& part : words.parts) {
        words.width = std::max(words.width, part.width);
        words.height += part.height;
      }
      words_.push_back(std::move(words));
    }
  }

  /// Each to the side it stands on; what stands in the middle goes where fewer are. From the top down, and of
  /// two at one height the inner one outside, so that the lines that lead to them do not cross.
  void share_sides() {
    std::vector<std::size_t> middle;
    for (std::size_t i = 0; i < plan_.stands.size(); ++i) {
      const Length x = plan_.stands[i].at.x;
      if (std::abs(x.si()) < 1e-6)
        middle.push_back(i);
      else
        (x < Length{} ? left_ : right_).push_back(i);
    }
    for (const std::size_t i : middle) (right_.size() <= left_.size() ? right_ : left_).push_back(i);
    for (auto* side : {&left_, &right_})
      std::stable_sort(side->begin(), side->end(), [&](std::size_t a, std::size_t b) {
        const picture::GroundSpot p = plan_.stands[a].at, q = plan_.stands[b].at;
        if (std::abs((p.y - q.y).si()) > 1e-6) return p.y > q.y;
        const bool inner = std::abs(p.x.si()) < std::abs(q.x.si());
        return p.y > Length{} ? inner : !inner && std::abs(p.x.si()) > std::abs(q.x.si());
      });
  }

  bool sides_fit() const {
    for (const auto* side : {&left_, &right_}) {
      Paper height;
      for (const std::size_t i : *side) height += words_[i].height + plan_gap;
      if (height - plan_gap > room_.h) return false;
    }
    return true;
  }

  /// Drops the last line of those that have most: names stay, and the table that goes with a plan says the
  /// rest.
  bool shorten() {
    std::size_t most = 1;
    for (const Words& words : words_) most = std::max(most, words.parts.size());
    if (most == 1) return false;
    for (Words& words : words_) {
      if (words.parts.size() < most) continue;
      words.height = words.height - words.parts.back().height;
      words.parts.pop_back();
    }
    return true;
  }

  Paper widest(const std::vector<std::size_t>& side) const {
    Paper width;
    for (const std::size_t i : side) width = std::max(width, words_[i].width);
    return side.empty() ? width : width + plan_gap * 3;
  }

  void scale() {
    Length half_w = Length::from_si(1e-6), half_h = half_w;
    const auto take = [&](picture::GroundSpot s) {
      half_w = std::max(half_w, Length::from_si(std::abs(s.x.si())));
      half_h = std::max(half_h, Length::from_si(std::abs(s.y.si())));
    };
    for (const picture::GroundLine& l : plan_.lines) {
      take(l.from);
      take(l.to);
    }
    for (const picture::Stand& stand : plan_.stands) take(stand.at);
    const Paper left = widest(left_), right = widest(right_);
    const Paper top = plan_.up.empty() ? Paper{} : leading_at(spec_.head, spec_.head.size) + plan_gap;
    inner_ = {room_.x + left + leg_side, room_.y + top + leg_side / 2, room_.w - left - right - leg_side * 2,
              room_.h - top - leg_side};
    if (inner_.w < least_drawing || inner_.h < least_drawing) return;
    scale_ = std::min(inner_.w.si() / (half_w.si() * 2), inner_.h.si() / (half_h.si() * 2));
    middle_ = {inner_.x + inner_.w / 2, inner_.y + inner_.h / 2};
  }

  Spot spot(picture::GroundSpot at) const {
    return {middle_.x + Paper::from_si(at.x.si() * scale_), middle_.y - Paper::from_si(at.y.si() * scale_)};
  }

  /// An arrow to what lies at the top, above the drawing.
  void north() {
    if (plan_.up.empty()) return;
    const Label words = label(setting_, spec_.head, plan_.up, inner_.w);
    const Paper top = room_.y, x = middle_.x;
    put_label(setting_, ink_, words, {x + plan_gap, top});
    put_polygon(ink_,
                {{x, top + plan_gap / 2},
                 {x - plan_gap, top + words.height - plan_gap / 2},
                 {x, top + words.height - plan_gap},
                 {x + plan_gap * 0.6, top + words.height - plan_gap / 2}},
                {}, 0);
  }

  void line(const picture::GroundLine& l) {
    const Spot a = spot(l.from), b = spot(l.to);
    switch (l.kind) {
      case picture::GroundLine::Kind::edge:
        put_path(ink_, {a, b}, 1 * point, picture::Pattern::solid);
        break;
      case picture::GroundLine::Kind::ridge:
        put_path(ink_, {a, b}, 0.5 * point, picture::Pattern::dots);
        break;
      case picture::GroundLine::Kind::wall:
        put_path(ink_, {a, b}, 4.5 * point, picture::Pattern::solid);
        break;
    }
  }

  /// The word of a wall stands inside, at its middle.
  void wall_names() {
    std::size_t n = 0;
    for (const picture::GroundLine& l : plan_.lines) {
      if (l.kind != picture::GroundLine::Kind::wall || n >= plan_.walls.size()) continue;
      const Label words = label(setting_, spec_.type, plan_.walls[n++], inner_.w * 0.7);
      const Spot a = spot(l.from), b = spot(l.to);
      Spot at{(a.x + b.x) / 2 - words.width / 2, (a.y + b.y) / 2 - words.height / 2};
      const Paper off_x = (words.width / 2 + plan_gap * 1.5), off_y = words.height / 2 + plan_gap;
      if (std::abs((a.x - b.x).si()) > std::abs((a.y - b.y).si()))
        at.y += a.y < middle_.y ? off_y : -off_y;
      else
        at.x += a.x < middle_.x ? off_x : -off_x;
      ink_.push_back(ink::Rect{{at.x - plan_gap / 3, at.y, words.width + plan_gap * 0.67, words.height}, {}, 1.0});
      put_label(setting_, ink_, words, at);
    }
  }

  /// Does another stand on the straight way from that side?
  bool hidden(std::size_t i, bool left) const {
    const picture::GroundSpot at = plan_.stands[i].at;
    return std::any_of(plan_.stands.begin(), plan_.stands.end(), [&](const picture::Stand& other) {
      return std::abs((other.at.y - at.y).si()) < 1e-6 && (left ? other.at.x < at.x : other.at.x > at.x);
    });
  }

  void side(bool left) {
    const std::vector<std::size_t>& all = left ? left_ : right_;
    std::vector<Paper> tops, heights;
    for (const std::size_t i : all) {
      tops.push_back(spot(plan_.stands[i].at).y - words_[i].height / 2);
      heights.push_back(words_[i].height);
    }
    for (std::size_t k = 1; k < tops.size(); ++k) tops[k] = std::max(tops[k], tops[k - 1]);
    if (!spread(tops, heights, plan_gap, room_.y, room_.y + room_.h))
      setting_.problem(plan_.caption, "is a plan without room for the words at its sides");
    const Paper wide = widest(all);
    for (std::size_t k = 0; k < all.size(); ++k) {
      const Words& words = words_[all[k]];
      const Spot to = spot(plan_.stands[all[k]].at);
      Paper y = tops[k];
      for (const Label& part : words.parts) {
        const Paper x = left ? room_.x + wide - plan_gap * 2 - part.width : room_.x + room_.w - wide + plan_gap * 2;
        put_label(setting_, ink_, part, {x, y});
        y += part.height;
      }
      const Paper edge = left ? room_.x + wide - plan_gap : room_.x + room_.w - wide + plan_gap;
      const Paper bottom = tops[k] + words.height;
      const Paper least = tops[k] + words.parts[0].height / 2;
      Paper level = std::clamp(to.y, least, std::max(bottom - plan_gap, least));
      if (hidden(all[k], left)) level = to.y < middle_.y ? tops[k] : bottom;  // past the one in between
      ink_.push_back(ink::Line{{edge, tops[k]}, {edge, bottom}, 0.75 * point, {}});
      ink_.push_back(ink::Line{{edge, level}, to, 0.5 * point, {}});
    }
  }

  Setting& setting_;
  const BlockSpec& spec_;
  const picture::PlanView& plan_;
  const Box box_;
  std::vector<Ink>& ink_;
  std::vector<Words> words_;
  std::vector<std::size_t> left_, right_;
  Box room_, inner_;
  Spot middle_;
  double scale_ = 0;
};

}  // namespace

void put_plan_view(Setting& setting, const BlockSpec& spec, const picture::PlanView& plan, const Box& box,
                   std::vector<Ink>& ink) {
  PlanDrawing(setting, spec, plan, box, ink).draw();
}

}  // namespace dunnage
