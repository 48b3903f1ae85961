// SPDX-License-Identifier: MIT
// Sections to galleys, galleys to regions, regions to pages; heads and feet last, when the number of pages is
// known.
#include "layout/lay_out.h"

#include <algorithm>
#include <utility>

#include "base/unit.h"
#include "layout/flow.h"
#include "layout/furniture.h"
#include "layout/set_area.h"
#include "layout/set_section.h"
#include "layout/setting.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

/// A sheet and the cards on it: one card that fills the margins, where the layout says no more.
struct Sheet {
  Paper width, height;
  std::vector<Box> cards;
  std::vector<Ink> cuts;
};

Sheet sheet_of(const Layout& layout, Paper width, Paper height) {
  Sheet sheet{layout.landscape ? std::max(width, height) : width,
              layout.landscape ? std::min(width, height) : height,
              {},
              {}};
  const Paper inner_w = sheet.width - layout.margin_left - layout.margin_right;
  const Paper inner_h = sheet.height - layout.margin_top - layout.margin_bottom;
  const Paper w = (inner_w - layout.gutter * (layout.across - 1)) / layout.across;
  const Paper h = (inner_h - layout.gutter * (layout.down - 1)) / layout.down;
  for (int row = 0; row < layout.down; ++row)
    for (int column = 0; column < layout.across; ++column)
      sheet.cards.push_back({layout.margin_left + (w + layout.gutter) * column,
                             layout.margin_top + (h + layout.gutter) * row, w, h});
  if (!layout.cut_marks) return sheet;
  const auto cut = [&](Spot from, Spot to) {
    sheet.cuts.push_back(ink::Line{from, to, 0.5 * point, 2 * paper_mm});
  };
  for (int column = 1; column < layout.across; ++column) {
    const Paper x = layout.margin_left + (w + layout.gutter) * column - layout.gutter / 2;
    cut({x, layout.margin_top}, {x, layout.margin_top + inner_h});
  }
  for (int row = 1; row < layout.down; ++row) {
    const Paper y = layout.margin_top + (h + layout.gutter) * row - layout.gutter / 2;
    cut({layout.margin_left, y}, {layout.margin_left + inner_w, y});
  }
  return sheet;
}

/// Puts sections on sheets, card by card.
class Composer {
 public:
  Composer(Setting& setting, const Layout& layout, Sheet sheet)
      : setting_(setting), layout_(layout), sheet_(std::move(sheet)) {}

  void add(const Section& section) {
    setting_.at_section(section.recipient);
    tell_unplaced(setting_, layout_, section);
    const Box& card = sheet_.cards.front();
    const Furniture furniture(setting_, layout_, section, card.w);
    const Paper top = furniture.head_height();
    const Paper room = card.h - top - furniture.foot_height();
    if (!enough(room)) return;
    const Paper areas = room * areas_reach(layout_, section);
    Galley galley = set_section(setting_, layout_, section, card.w);
    Flowed flowed = areas > Paper{} ? flow(push_down(std::move(galley), areas), room, room)
                                    : flow(std::move(galley), room, room);
    setting_.at_block({}, {layout_.file, 1, 1, 1});
    if (flowed.oversized > 0) setting_.problem({}, "something is taller than a page and cannot be parted");
    const auto total = static_cast<int>(flowed.regions.size());
    longest_ = std::max(longest_, total);
    for (int number = 1; number <= total; ++number) {
      Page& page = next_card(number == 1 ? section : Section{});
      const Box& place = sheet_.cards[card_];
      if (number == 1)
        set_areas(setting_, layout_, section, {place.x, place.y + top, place.w, room}, page.ink);
      add_moved(page.ink, std::move(flowed.regions[static_cast<std::size_t>(number - 1)]), place.x,
                place.y + top);
      furniture.put(page.ink, place, number, total);
    }
  }

  int longest() const { return longest_; }
  std::vector<Page> pages() { return std::move(pages_); }

 private:
  /// The flow begins below the areas of a card's first page.
  static Galley push_down(Galley galley, Paper down) {
    Strip white;
    white.height = down;
    galley.strips.insert(galley.strips.begin(), std::move(white));
    return galley;
  }

  bool enough(Paper room) {
    if (room > 20 * paper_mm) return true;
    setting_.problem({}, "head, foot and margins leave " + plain(room / paper_mm, 1) + " mm of the page");
    return false;
  }

  Page& next_card(const Section& begins) {
    if (pages_.empty() || ++card_ == sheet_.cards.size()) {
      card_ = 0;
      pages_.push_back({sheet_.width, sheet_.height, sheet_.cuts, std::to_string(pages_.size() + 1), {}});
    }
    Page& page = pages_.back();
    if (!begins.recipient.empty() && page.bookmark.empty()) page.bookmark = on_one_line(begins.recipient);
    return page;
  }

  Setting& setting_;
  const Layout& layout_;
  Sheet sheet_;
  std::vector<Page> pages_;
  std::size_t card_ = 0;
  int longest_ = 0;                 ///< pages of the longest section
};

/// Strips for faders fit only at full size.
bool holds_scale(const Document& document) {
  for (const Section& section : document.sections)
    for (const Block& block : section.blocks)
      if (const auto* picture = std::get_if<block::Picture>(&block.content))
        if (std::holds_alternative<picture::FaderStrips>(picture->content)) return true;
  return false;
}

}  // namespace

Pages lay_out(const Document& document, const Layout& layout, Paper page_width, Paper page_height,
              const Faces& faces, std::vector<LayoutProblem>& problems) {
  Setting setting(faces, document, problems);
  Composer composer(setting, layout, sheet_of(layout, page_width, page_height));
  for (const Section& section : document.sections) composer.add(section);
  Pages pages{on_one_line(document.title), document.language, composer.pages(), holds_scale(document), composer.longest()};
  if (!pages.pages.empty() && pages.pages.front().bookmark.empty()) pages.pages.front().bookmark = pages.title;
  return pages;
}

}  // namespace dunnage
