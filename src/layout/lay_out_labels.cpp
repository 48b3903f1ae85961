// SPDX-License-Identifier: MIT
// Labels: set once at the corner of the page, then copied to their places.
#include "layout/lay_out_labels.h"

#include <cassert>
#include <cmath>

#include "layout/galley.h"
#include "layout/set_area.h"
#include "layout/setting.h"

namespace dunnage {
namespace {

/// The top left corner of place `index`, counted by rows from 0.
Spot corner(const Stock& stock, int index) {
  const int row = index / stock.across, column = index % stock.across;
  return {stock.left + stock.pitch_x * column, stock.top + stock.pitch_y * row};
}

/// Codes are read, so their modules begin on whole dots of the printer.
void onto_dots(std::vector<Ink>& ink, int dpi) {
  const Paper dot = (1.0 / dpi) * unit::paper_in;
  for (Ink& each : ink)
    if (auto* modules = std::get_if<ink::Modules>(&each))
      modules->at = {dot * std::ceil(modules->at.x / dot - 1e-6), dot * std::ceil(modules->at.y / dot - 1e-6)};
}

/// A block without an area would have nowhere to go.
void tell_without_area(Setting& setting, const Layout& layout, const Section& section) {
  for (const BlockSpec& spec : layout.blocks) {
    if (spec.area) continue;
    for (const Block& block : section.blocks) {
      if (!places(spec, block.id)) continue;
      setting.at_block(block.id, spec.place);
      setting.problem({}, "has no area: on a label every block stands in one");
    }
  }
}

}  // namespace

int labels_on_page(const Stock& stock) { return stock.across * stock.down; }

LabelSheets::LabelSheets(const Layout& layout, const Stock& stock, int start_at, int copies, const Faces& faces,
                         std::vector<LayoutProblem>& problems, PageSink& sink)
    : layout_(layout),
      stock_(stock),
      copies_(copies),
      faces_(faces),
      problems_(problems),
      sink_(sink),
      place_(start_at - 1) {
  assert(start_at >= 1 && start_at <= labels_on_page(stock) && copies >= 1);
}

void LabelSheets::add(const Document& document) {
  if (pages_ == 0) sink_.begin(on_one_line(document.title), document.language, true);
  Setting setting(faces_, document, problems_, stock_.dpi);
  const Box inner{stock_.inner, stock_.inner, stock_.label_width - stock_.inner * 2,
                  stock_.label_height - stock_.inner * 2};
  for (const Section& section : document.sections) {
    setting.at_section(section.recipient);
    tell_unplaced(setting, layout_, section);
    tell_without_area(setting, layout_, section);
    std::vector<Ink> label;
    set_areas(setting, layout_, section, inner, label);
    for (int copy = 1; copy < copies_; ++copy) put(label, section.recipient);
    if (copies_ > 0) put(std::move(label), section.recipient);
  }
}

int LabelSheets::finish() {
  if (pages_ > 0) sink_.add(std::move(page_));
  return pages_;
}

void LabelSheets::put(std::vector<Ink> label, const std::string& whose) {
  if (pages_ == 0 || place_ == labels_on_page(stock_)) {
    if (pages_ > 0) {
      place_ = 0;
      sink_.add(std::move(page_));
    }
    page_ = {stock_.page_width, stock_.page_height, {}, std::to_string(++pages_), whose};
  }
  const Spot at = corner(stock_, place_++);
  move_ink(label, at.x, at.y);
  onto_dots(label, stock_.dpi);
  add_moved(page_.ink, std::move(label), {}, {});
}

Pages lay_out_labels(const Document& document, const Layout& layout, const Stock& stock, int start_at, int copies,
                     const Faces& faces, std::vector<LayoutProblem>& problems) {
  KeptPages kept;
  LabelSheets sheets(layout, stock, start_at, copies, faces, problems, kept);
  sheets.add(document);
  sheets.finish();
  return std::move(kept.pages);
}

}  // namespace dunnage
