// SPDX-License-Identifier: MIT
// Setting of charts.
#include "layout/set_chart.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "base/unit.h"
#include "layout/picture_ink.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

constexpr Paper chart_gap = 1 * paper_mm;
constexpr Paper tick = 1.5 * paper_mm;
constexpr Paper least_plot = 20 * paper_mm;  ///< a smaller one shows nothing
constexpr Paper fine = 0.75 * point, heavy = 2 * point;

/// A flag on the mast of an upright: all to the right, or all to the left, of their lines.
struct Flag {
  Label words;
  Paper x;
  std::size_t lane = 0;  ///< rows above the plot, the lowest first
};

class ChartDrawing {
 public:
  ChartDrawing(Setting& setting, const BlockSpec& spec, const picture::Chart& chart, const Box& box,
               std::vector<Ink>& ink)
      : setting_(setting), spec_(spec), chart_(chart), box_(box), ink_(ink) {}

  void draw() {
    measure();
    if (plot_.w < least_plot || plot_.h < least_plot) {
      setting_.problem(chart_.up.title, "is a chart without room for its curves: " + plain(plot_.w / paper_mm, 1) +
                                            " x " + plain(plot_.h / paper_mm, 1) + " mm");
      return;
    }
    hatch();
    axes();
    uprights();
    for (const picture::Curve& curve : chart_.curves) put_path(ink_, points_of(curve), heavy, curve.pattern);
    dots();
    side_names();
  }

 private:
  Paper x_of(double value) const { return plot_.x + plot_.w * (value / chart_.across.end); }
  Paper y_of(double value) const { return plot_.y + plot_.h * (1 - value / chart_.up.end); }
  static std::string figure(const picture::Axis& axis, double value) { return plain(value, axis.decimals); }
  /// Where the axis has a mark and a figure.
  static std::vector<double> marks(const picture::Axis& axis) {
    std::vector<double> out;
    const int steps = static_cast<int>(axis.end / axis.step + 1e-9);
    for (int i = 0; i <= steps; ++i) out.push_back(axis.step * i);
    return out;
  }

  /// Room for words on all sides first; what is left is the plot.
  void measure() {
    up_title_ = label(setting_, spec_.type, chart_.up.title, box_.w);
    across_title_ = label(setting_, spec_.type, chart_.across.title, box_.w);
    Paper figures;
    for (const double v : marks(chart_.up))
      figures = std::max(figures, label(setting_, spec_.type, figure(chart_.up, v), box_.w).width);
    for (const picture::Curve& curve : chart_.curves)
      names_.push_back(label(setting_, spec_.head, curve.name, box_.w * 0.22));
    if (chart_.floor) names_.push_back(label(setting_, spec_.type, chart_.floor_name, box_.w * 0.22));
    Paper names;
    for (const Label& name : names_) names = std::max(names, name.width + chart_gap * 2);
    plot_.x = box_.x + figures + tick + chart_gap;
    plot_.w = box_.x + box_.w - names - plot_.x;
    hang_flags();
    const Paper lane = flags_.empty() ? Paper{} : lane_height() * static_cast<double>(lanes_);
    const Paper line = leading_at(spec_.type, spec_.type.size);
    const bool over_figures = flags_.empty() ||  // then the title is
                              std::any_of(flags_.begin(), flags_.end(), [&](const Flag& f) { return f.x < plot_.x; });
    above_ = over_figures ? line / 2 : chart_gap / 2;  // half of the topmost figure stands above the plot
    plot_.y = box_.y + up_title_.height + lane + above_ + chart_gap / 2;
    plot_.h = box_.y + box_.h - across_title_.height - line - tick - plot_.y;
  }

  Paper lane_height() const {
    Paper height;
    for (const Flag& flag : flags_) height = std::max(height, flag.words.height);
    return height;
  }

  /// Names of the uprights in lanes above the plot: each stands beside its own line and clear of every other.
  void hang_flags() {
    std::vector<const picture::Upright*> order;
    for (const picture::Upright& upright : chart_.uprights) order.push_back(&upright);
    std::stable_sort(order.begin(), order.end(), [](const auto* a, const auto* b) { return a->at < b->at; });
    flags_.clear();
    for (const picture::Upright* upright : order)
      flags_.push_back({label(setting_, spec_.head, upright->name, box_.w), {}, 0});
    order_ = order;
    const auto reach = [&](bool right) {
      Paper over;  // how far a flag reaches beyond the box
      for (std::size_t i = 0; i < flags_.size(); ++i) {
        const Paper x = x_of(order[i]->at), w = flags_[i].words.width + chart_gap;
        over = std::max(over, right ? x + w - box_.x - box_.w : box_.x - (x - w));
      }
      return over;
    };
    right_ = reach(true) <= Paper{} || reach(false) > Paper{};
    for (int tries = 0; right_ && reach(true) > Paper{} && tries < 40; ++tries) plot_.w = plot_.w * 0.95;
    lanes_ = 0;
    const std::size_t count = flags_.size();
    for (std::size_t step = 0; step < count; ++step) place_flag(right_ ? count - 1 - step : step, step);
  }

  /// Flags are placed against the way they fly, so that a mast only ever passes flags already placed.
  void place_flag(std::size_t i, std::size_t placed) {
    Flag& flag = flags_[i];
    const Paper mast = x_of(order_[i]->at);
    flag.x = right_ ? mast + chart_gap : mast - chart_gap - flag.words.width;
    for (std::size_t step = 0; step < placed; ++step) {
      const std::size_t j = right_ ? flags_.size() - 1 - step : step;
      const Flag& other = flags_[j];
      const Paper other_mast = x_of(order_[j]->at);
      const bool meets =
          flag.x < other.x + other.words.width + chart_gap && other.x < flag.x + flag.words.width + chart_gap;
      const bool crossed = other_mast > flag.x - chart_gap && other_mast < flag.x + flag.words.width + chart_gap;
      if (meets || crossed) flag.lane = std::max(flag.lane, other.lane + 1);
    }
    lanes_ = std::max(lanes_, flag.lane + 1);
  }

  void hatch() {
    if (!chart_.floor) return;
    const Paper top = y_of(*chart_.floor);
    put_hatch(ink_, {plot_.x, top, plot_.w, plot_.y + plot_.h - top}, 2 * paper_mm);
    ink_.push_back(ink::Line{{plot_.x, top}, {plot_.x + plot_.w, top}, 1 * point, {}});
  }

  void axes() {
    const Paper bottom = plot_.y + plot_.h;
    ink_.push_back(ink::Line{{plot_.x, plot_.y}, {plot_.x, bottom}, fine, {}});
    ink_.push_back(ink::Line{{plot_.x, bottom}, {plot_.x + plot_.w, bottom}, fine, {}});
    Paper clear = box_.x;
    for (const double v : marks(chart_.across)) {
      const Paper x = x_of(v);
      ink_.push_back(ink::Line{{x, bottom}, {x, bottom + tick}, fine, {}});
      const Label words = label(setting_, spec_.type, figure(chart_.across, v), box_.w);
      if (x - words.width / 2 < clear) continue;
      put_label(setting_, ink_, words, {x - words.width / 2, bottom + tick});
      clear = x + words.width / 2 + chart_gap * 2;
    }
    for (const double v : marks(chart_.up)) {
      const Paper y = y_of(v);
      ink_.push_back(ink::Line{{plot_.x - tick, y}, {plot_.x, y}, fine, {}});
      const Label words = label(setting_, spec_.type, figure(chart_.up, v), box_.w);
      put_label(setting_, ink_, words, {plot_.x - tick - chart_gap - words.width, y - words.height / 2});
    }
    put_label(setting_, ink_, up_title_, {box_.x, box_.y});
    put_label(setting_, ink_, across_title_,
              {plot_.x + (plot_.w - across_title_.width) / 2, box_.y + box_.h - across_title_.height});
  }

  void uprights() {
    const Paper bottom = plot_.y + plot_.h, lane = lane_height();
    for (std::size_t i = 0; i < flags_.size(); ++i) {
      const picture::Upright& upright = *order_[i];
      const Paper x = x_of(upright.at), top = plot_.y - above_ - lane * static_cast<double>(flags_[i].lane + 1);
      put_path(ink_, {{x, bottom}, {x, top + lane * 0.25}}, upright.heavy ? heavy : 1.25 * point, upright.pattern);
      put_label(setting_, ink_, flags_[i].words, {flags_[i].x, top});
    }
  }

  /// The part of a curve that the chart shows; it enters through the top where it comes from above.
  std::vector<Spot> points_of(const picture::Curve& curve) const {
    std::vector<Spot> spots;
    for (std::size_t i = 0; i < curve.points.size(); ++i) {
      const auto [x, y] = curve.points[i];
      if (x > chart_.across.end + 1e-9) break;
      if (y > chart_.up.end) continue;
      if (spots.empty() && i > 0) {
        const auto [x0, y0] = curve.points[i - 1];
        const double share = (y0 - chart_.up.end) / (y0 - y);
        spots.push_back({x_of(x0 + (x - x0) * share), y_of(chart_.up.end)});
      }
      spots.push_back({x_of(x), y_of(std::max(0.0, y))});
    }
    return spots;
  }

  /// Each dot with its name beside it, where no other dot or name stands.
  void dots() {
    constexpr Paper radius = 1.3 * paper_mm;
    std::vector<Box> taken;
    for (const picture::Dot& dot : chart_.dots)
      taken.push_back({x_of(dot.x) - radius, y_of(dot.y) - radius, radius * 2, radius * 2});
    const auto meets = [&](const Box& a) {
      return a.x < plot_.x || a.x + a.w > plot_.x + plot_.w || a.y < plot_.y || a.y + a.h > plot_.y + plot_.h ||
             std::any_of(taken.begin(), taken.end(), [&](const Box& b) {
               return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
             });
    };
    for (const picture::Dot& dot : chart_.dots) {
      const Spot at{x_of(dot.x), y_of(dot.y)};
      put_disc(ink_, at, radius, {}, 0);
      const Label words = label(setting_, spec_.head, dot.name, box_.w * 0.4);
      const Paper right = at.x + radius + chart_gap, left = at.x - radius - chart_gap - words.width,
                  half = at.y - words.height / 2, middle = at.x - words.width / 2, above = at.y - radius - words.height,
                  below = at.y + radius;
      const Spot spots[] = {{right, half}, {left, half},  {right, above},  {right, below},
                            {left, above}, {left, below}, {middle, above}, {middle, below}};
      const auto* best = std::find_if(std::begin(spots), std::end(spots), [&](const Spot& s) {
        return !meets({s.x, s.y, words.width, words.height});
      });
      const Spot put = best == std::end(spots) ? spots[0] : *best;
      ink_.push_back(ink::Rect{{put.x, put.y + words.height * 0.1, words.width, words.height * 0.8}, {}, 1.0});
      put_label(setting_, ink_, words, put);
      taken.push_back({put.x, put.y, words.width, words.height});
    }
  }

  /// To the right of the plot, each at the height where its line ends.
  void side_names() {
    std::vector<Paper> wanted, heights;
    for (std::size_t i = 0; i < names_.size(); ++i) {
      Paper y = plot_.y + plot_.h;
      if (i < chart_.curves.size()) {
        const std::vector<Spot> spots = points_of(chart_.curves[i]);
        if (!spots.empty()) y = spots.back().y;
        wanted.push_back(y - names_[i].height);  // above its line's end
      } else {
        wanted.push_back(y - names_[i].height);
      }
    }
    std::vector<std::size_t> order(names_.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return wanted[a] < wanted[b]; });
    std::vector<Paper> tops;
    for (const std::size_t i : order) {
      tops.push_back(wanted[i]);
      heights.push_back(names_[i].height);
    }
    if (!spread(tops, heights, chart_gap, plot_.y, plot_.y + plot_.h))
      setting_.problem(chart_.up.title, "is a chart without room for the names of its curves");
    for (std::size_t k = 0; k < order.size(); ++k)
      put_label(setting_, ink_, names_[order[k]], {plot_.x + plot_.w + chart_gap * 2, tops[k]});
  }

  Setting& setting_;
  const BlockSpec& spec_;
  const picture::Chart& chart_;
  const Box box_;
  std::vector<Ink>& ink_;
  Box plot_;
  Label up_title_, across_title_;
  std::vector<Label> names_;  ///< of the curves, then of the floor
  std::vector<const picture::Upright*> order_;
  std::vector<Flag> flags_;
  std::size_t lanes_ = 0;
  bool right_ = true;
  Paper above_;  ///< white between the plot and its flags
};

}  // namespace

void put_chart(Setting& setting, const BlockSpec& spec, const picture::Chart& chart, const Box& box,
               std::vector<Ink>& ink) {
  ChartDrawing(setting, spec, chart, box, ink).draw();
}

}  // namespace dunnage
