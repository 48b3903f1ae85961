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
  Sheet sheet{
      layout.landscape ? std::max(width, height) : width, layout.landscape ? std::min(width, height) : height, {}, {}};
  const Paper inner_w = sheet.width - layout.margin_left - layout.margin_right;
  const Paper inner_h = sheet.height - layout.margin_top - layout.margin_bottom;
  const Paper w = (inner_w - layout.gutter * (layout.across - 1)) / layout.across;
  const Paper h = (inner_h - layout.gutter * (layout.down - 1)) / layout.down;
  for (int row = 0; row < layout.down; ++row)
    for (int column = 0; column < layout.across; ++column)
      sheet.cards.push_back(
          {layout.margin_left + (w + layout.gutter) * column, layout.margin_top + (h + layout.gutter) * row, w, h});
  if (!layout.cut_marks) return sheet;
  const auto cut = [&](Spot from, Spot to) { sheet.cuts.push_back(ink::Line{from, to, 0.5 * point, 2 * paper_mm}); };
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

/// Puts sections on sheets, card by card; a sheet is given away as soon as its last card is full.
class Composer {
 public:
  Composer(Setting& setting, const Layout& layout, Sheet sheet, PageSink& sink)
      : setting_(setting), layout_(layout), sheet_(std::move(sheet)), sink_(sink) {}

  void add(const Section& section) {
    setting_.at_section(section.recipient);
    tell_unplaced(setting_, layout_, section);
    const Box& card = sheet_.cards.front();
    const Furniture furniture(setting_, layout_, section, card.w);
    const Paper top = furniture.head_height();
    const Paper room = card.h - top - furniture.foot_height();
    if (!enough(room) || too_many()) return;
    std::vector<Ink> areas;  // stand on the section's first card
    set_areas(setting_, layout_, section, {{}, top, card.w, room}, areas);
    std::vector<Place> places;
    const std::vector<std::string> oversized = flow_section(section, room, [&](std::vector<Ink> ink) {
      if (too_many()) return;
      const Box& place = next_card(places.empty() ? section.recipient : std::string());
      add_moved(page_.ink, std::exchange(areas, {}), place.x, place.y);
      add_moved(page_.ink, std::move(ink), place.x, place.y + top);
      furniture.put(page_.ink, place);
      places.push_back({count_ - 1, card_});
    });
    setting_.at_block({}, {layout_.file, 1, 1, 1});
    for (const std::string& begins : oversized)
      setting_.problem(begins, begins.empty() ? "something is taller than a page and cannot be parted"
                                              : "begins something taller than a page that cannot be parted");
    put_numbers(furniture, places);
    longest_ = std::max(longest_, static_cast<int>(places.size()));
  }

  int longest() const { return longest_; }
  void finish() {
    if (count_ > given_.size()) give_page();
  }

 private:
  struct Place {
    std::size_t page, card;
  };

  /// Blocks that flow, below the areas of the first card.
  std::vector<std::string> flow_section(const Section& section, Paper room, Flow::Take take) {
    Flow flow(room, room, std::move(take));
    Strip white;
    white.height = room * areas_reach(layout_, section);
    if (white.height > Paper{}) flow.add(std::move(white));
    Galley galley;
    galley.spill = [&](Strip strip) { flow.add(std::move(strip)); };
    set_section(setting_, layout_, section, sheet_.cards.front().w, galley);
    for (Strip& strip : galley.strips) flow.add(std::move(strip));
    return flow.finish();
  }

  bool enough(Paper room) {
    if (room > 20 * paper_mm) return true;
    setting_.problem({}, "head, foot and margins leave " + plain(room / paper_mm, 1) + " mm of the page");
    return false;
  }

  /// What is beyond the limit is told once and not kept.
  bool too_many() {
    if (count_ < most_pages) return false;
    setting_.problem({}, "takes more than " + std::to_string(most_pages) + " pages, and one run prints no more");
    return true;
  }

  const Box& next_card(const std::string& recipient) {
    if (count_ == 0 || ++card_ == sheet_.cards.size()) {
      finish();
      card_ = 0;
      page_ = {sheet_.width, sheet_.height, sheet_.cuts, std::to_string(++count_), {}};
    }
    if (!recipient.empty() && page_.bookmark.empty()) page_.bookmark = on_one_line(recipient);
    return sheet_.cards[card_];
  }

  void give_page() {
    if (count_ == 1 && page_.bookmark.empty()) page_.bookmark = on_one_line(setting_.document.title);
    given_.push_back(sink_.add(std::move(page_)));
  }

  void put_numbers(const Furniture& furniture, const std::vector<Place>& places) {
    const auto total = static_cast<int>(places.size());
    for (int number = 1; number <= total; ++number) {
      const Place& place = places[static_cast<std::size_t>(number - 1)];
      std::vector<Ink> words;
      furniture.put_number(words, sheet_.cards[place.card], number, total);
      if (place.page < given_.size())
        sink_.add_words(given_[place.page], std::move(words));
      else
        add_moved(page_.ink, std::move(words), {}, {});
    }
  }

  Setting& setting_;
  const Layout& layout_;
  Sheet sheet_;
  PageSink& sink_;
  Page page_;                         ///< being filled
  std::size_t count_ = 0, card_ = 0;  ///< pages begun; the card of the last
  std::vector<std::size_t> given_;    ///< by page: what the sink calls it
  int longest_ = 0;                   ///< pages of the longest section
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

int lay_out(const Document& document, const Layout& layout, Paper page_width, Paper page_height, const Faces& faces,
            std::vector<LayoutProblem>& problems, PageSink& sink) {
  sink.begin(on_one_line(document.title), document.language, holds_scale(document));
  Setting setting(faces, document, problems);
  Composer composer(setting, layout, sheet_of(layout, page_width, page_height), sink);
  for (const Section& section : document.sections) composer.add(section);
  composer.finish();
  return composer.longest();
}

Pages lay_out(const Document& document, const Layout& layout, Paper page_width, Paper page_height, const Faces& faces,
              std::vector<LayoutProblem>& problems) {
  KeptPages kept;
  kept.pages.longest = lay_out(document, layout, page_width, page_height, faces, problems, kept);
  return std::move(kept.pages);
}

}  // namespace dunnage
