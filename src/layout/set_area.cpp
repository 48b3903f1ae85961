// SPDX-License-Identifier: MIT
// Setting into boxes.
#include "layout/set_area.h"

#include <algorithm>

#include "base/nearest.h"
#include "base/unit.h"
#include "base/utf8.h"
#include "layout/fit.h"
#include "layout/set_block.h"
#include "layout/set_drawing.h"
#include "layout/set_picture.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

/// One block into one box.
struct AreaSetter {
  Setting& setting;
  const BlockSpec& spec;
  const Block& block;
  Box box;
  std::vector<Ink>& ink;

  void words(const std::string& text) const {
    if (text.empty()) return;
    const Lines lines = fit_box(setting, spec.type, text, box.w, box.h);
    put_lines(setting, ink, lines, spec.type, {box.x, box.y}, box.w);
  }
  void operator()(const block::Heading& heading) const { words(heading.text); }
  void operator()(const block::Paragraph& paragraph) const { words(paragraph.text); }
  void operator()(const block::Listing& listing) const {  // no bullets: each line begins with its number of pieces
    std::string all;
    for (const std::string& line : listing.lines) all += (all.empty() ? "" : utf8::encode(first_language)) + line;
    words(all);
  }
  void operator()(const block::Qr& qr) const { put_qr(setting, spec, qr, box, ink); }
  void operator()(const block::Marks& marks) const { put_marks(setting, spec, marks, box, ink); }
  void operator()(const block::Handle& handle) const { put_handle(setting, spec, handle, box, ink); }
  void operator()(const block::Picture& picture) const { put_drawing(setting, spec, picture, box, ink); }

  template <class Other>
  void operator()(const Other&) const {
    Galley galley;
    set_block(setting, spec, block, box.w, {}, galley);
    Strip whole = dunnage::framed(std::move(galley), box.w, {}, {});
    if (whole.height > box.h + hair)
      setting.problem(first_words(whole.ink), "needs " + plain(whole.height / paper_mm, 1) + " mm and has " +
                                                  plain(box.h / paper_mm, 1) + " mm");
    add_moved(ink, std::move(whole.ink), box.x, box.y);
  }
};

}  // namespace

bool places(const BlockSpec& spec, const std::string& block_id) {
  return spec.id == block_id || std::find(spec.also.begin(), spec.also.end(), block_id) != spec.also.end();
}

void set_areas(Setting& setting, const Layout& layout, const Section& section, const Box& inner,
               std::vector<Ink>& ink) {
  for (const BlockSpec& spec : layout.blocks) {
    if (!spec.area) continue;
    Box box{inner.x + inner.w * spec.area->x, inner.y + inner.h * spec.area->y, inner.w * spec.area->w,
            inner.h * spec.area->h};
    bool taken = false;
    for (const Block& block : section.blocks) {
      if (!places(spec, block.id)) continue;
      setting.at_block(block.id, spec.place);
      if (taken) setting.problem({}, "is the second block in one area");
      taken = true;
      Box inside = box;
      if (spec.frame) {
        const Paper stroke = 0.75 * point, pad = 1.5 * paper_mm;
        ink.push_back(ink::Rect{{box.x + stroke / 2, box.y + stroke / 2, box.w - stroke, box.h - stroke}, stroke});
        inside = {box.x + pad, box.y + pad, box.w - pad * 2, box.h - pad * 2};
      }
      std::visit(AreaSetter{setting, spec, block, inside, ink}, block.content);
    }
  }
}

double areas_reach(const Layout& layout, const Section& section) {
  double reach = 0;
  for (const BlockSpec& spec : layout.blocks) {
    if (!spec.area) continue;
    for (const Block& block : section.blocks)
      if (places(spec, block.id)) reach = std::max(reach, spec.area->y + spec.area->h);
  }
  return reach;
}

void tell_unplaced(Setting& setting, const Layout& layout, const Section& section) {
  for (const Block& block : section.blocks) {
    const bool placed = std::any_of(layout.blocks.begin(), layout.blocks.end(),
                                    [&](const BlockSpec& spec) { return places(spec, block.id); });
    if (placed || std::find(layout.omit.begin(), layout.omit.end(), block.id) != layout.omit.end()) continue;
    std::vector<std::string> known;
    for (const BlockSpec& spec : layout.blocks) known.push_back(spec.id);
    const std::string meant = did_you_mean(block.id, known);
    setting.at_block(block.id, {layout.file, 1, 1, 1});
    setting.problem(
        {}, "the layout neither places this block nor leaves it out" + (meant.empty() ? std::string() : "; " + meant));
  }
}

}  // namespace dunnage
