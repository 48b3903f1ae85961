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
      modules->at = {dot * std::ceil(modules->at.x / dot - 1e-6),
                     dot * std::ceil(modules->at.y / dot - 1e-6)};
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

Pages lay_out_labels(const Document& document, const Layout& layout, const Stock& stock, int start_at,
                     int copies, const Faces& faces, std::vector<LayoutProblem>& problems) {
  assert(start_at >= 1 && start_at <= labels_on_page(stock) && copies >= 1);
  Setting setting(faces, document, problems, stock.dpi);
  Pages out{on_one_line(document.title), document.language, {}, true};
  const Box inner{stock.inner, stock.inner, stock.label_width - stock.inner * 2,
                  stock.label_height - stock.inner * 2};
  int place = start_at - 1;
  for (const Section& section : document.sections) {
    setting.at_section(section.recipient);
    tell_unplaced(setting, layout, section);
    tell_without_area(setting, layout, section);
    std::vector<Ink> label;
    set_areas(setting, layout, section, inner, label);
    for (int copy = 0; copy < copies; ++copy, ++place) {
      if (out.pages.empty() || place == labels_on_page(stock)) {
        if (!out.pages.empty()) place = 0;
        out.pages.push_back({stock.page_width,
                             stock.page_height,
                             {},
                             std::to_string(out.pages.size() + 1),
                             section.recipient});
      }
      std::vector<Ink> placed = label;
      const Spot at = corner(stock, place);
      move_ink(placed, at.x, at.y);
      onto_dots(placed, stock.dpi);
      add_moved(out.pages.back().ink, std::move(placed), {}, {});
    }
  }
  return out;
}

}  // namespace dunnage
