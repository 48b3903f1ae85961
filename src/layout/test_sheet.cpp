// SPDX-License-Identifier: MIT
#include "layout/test_sheet.h"

#include <algorithm>
#include <cstdlib>

#include "layout/fit.h"
#include "layout/lay_out_labels.h"
#include "layout/setting.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

constexpr Paper hair_line = 0.25 * point;
constexpr int reach = 5;                        ///< millimetres of ruler on either side of an edge
constexpr double ruler_x = 0.7, ruler_y = 0.8;  ///< where along an edge its ruler stands: the words are left of it
constexpr Paper text_size = 8 * point;          ///< the floor of all paper

class Rulers {
 public:
  Rulers(Setting& setting, const Stock& stock, std::vector<Ink>& ink) : setting_(setting), stock_(stock), ink_(ink) {}

  /// Across an upright edge at `x`, about height `y`.
  void across_upright(Paper x, Paper y) {
    for (int mm = -reach; mm <= reach; ++mm) {
      const Paper at = x + mm * paper_mm;
      if (at < Paper{} || at > stock_.page_width) continue;
      line({at, y - tick(mm) / 2}, {at, y + tick(mm) / 2});
      const Paper below = y + tick(mm) / 2;
      const bool room = below + text_size * 1.3 < stock_.page_height;
      if (mm % reach == 0)
        number(mm, {at - 4 * paper_mm, room ? below : y - tick(mm) / 2 - text_size * 1.3}, Align::centre);
    }
  }
  /// Across a lying edge at `y`, about `x`.
  void across_lying(Paper x, Paper y) {
    for (int mm = -reach; mm <= reach; ++mm) {
      const Paper at = y + mm * paper_mm;
      if (at < Paper{} || at > stock_.page_height) continue;
      line({x - tick(mm) / 2, at}, {x + tick(mm) / 2, at});
      if (mm % reach == 0) number(mm, {x + tick(mm) / 2 + 1 * paper_mm, at - text_size * 0.65}, Align::left);
    }
  }

 private:
  static Paper tick(int mm) { return (mm == 0 ? 8 : mm % reach == 0 ? 6 : 3) * paper_mm; }
  void line(Spot from, Spot to) { ink_.push_back(ink::Line{from, to, hair_line, {}}); }

  void number(int mm, Spot at, Align align) {
    TypeStyle style;
    style.size = style.floor = text_size;
    style.align = align;
    const std::string said = (mm > 0 ? "+" : mm < 0 ? "\u2212" : "") + std::to_string(std::abs(mm));
    const Paper width = 8 * paper_mm;
    at.x = std::clamp(at.x, Paper{}, stock_.page_width - width);
    if (at.y < Paper{}) return;
    if (at.y + style.size > stock_.page_height) return;
    put_lines(setting_, ink_, fit_width(setting_, style, said, width), style, at, width);
  }

  Setting& setting_;
  const Stock& stock_;
  std::vector<Ink>& ink_;
};

void put_words(Setting& setting, const Document& document, const Stock& stock, std::vector<Ink>& ink) {
  TypeStyle style;
  style.size = 11 * point;
  style.floor = text_size;
  style.fit = Fit::shrink;
  const Paper edge = 1.5 * paper_mm, clear = 6 * paper_mm;
  const Box room{stock.left + edge, stock.top + edge, stock.label_width * ruler_x - edge - clear,
                 stock.label_height * ruler_y - edge - clear};
  const auto& words = std::get<block::Paragraph>(document.sections.front().blocks.front().content);
  setting.at_block(document.sections.front().blocks.front().id, {});
  put_lines(setting, ink, fit_box(setting, style, words.text, room.w, room.h), style, {room.x, room.y}, room.w);
}

}  // namespace

Pages test_sheet(const Document& document, const Stock& stock, const Faces& faces,
                 std::vector<LayoutProblem>& problems) {
  Setting setting(faces, document, problems, stock.dpi);
  Page page{stock.page_width, stock.page_height, {}, "1", on_one_line(document.title)};
  for (int place = 0; place < labels_on_page(stock); ++place) {
    const int column = place % stock.across, row = place / stock.across;
    const Box label{stock.left + stock.pitch_x * column, stock.top + stock.pitch_y * row, stock.label_width,
                    stock.label_height};
    page.ink.push_back(ink::Rect{label, hair_line});
  }
  Rulers rulers(setting, stock, page.ink);
  const Paper right = stock.left + stock.label_width, bottom = stock.top + stock.label_height;
  const Paper x = stock.left + stock.label_width * ruler_x, y = stock.top + stock.label_height * ruler_y;
  rulers.across_upright(stock.left, y);
  rulers.across_upright(right, y);
  rulers.across_lying(x, stock.top);
  rulers.across_lying(x, bottom);
  put_words(setting, document, stock, page.ink);
  return {on_one_line(document.title), document.language, {std::move(page)}, true};
}

}  // namespace dunnage
