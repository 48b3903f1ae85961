// SPDX-License-Identifier: MIT
// Which room sets which kind of block; frames and white space, which all kinds share.
#include "layout/set_block.h"

#include <utility>

#include "layout/set_drawing.h"
#include "layout/set_form.h"
#include "layout/set_picture.h"
#include "layout/set_table.h"
#include "layout/set_text.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

struct BlockSetter {
  Setting& setting;
  const BlockSpec& spec;
  Paper width;
  const std::string& above;
  Galley& galley;

  void operator()(const block::Heading& heading) const { set_heading(setting, spec, heading, width, galley); }
  void operator()(const block::Paragraph& text) const { set_paragraph(setting, spec, text.text, width, galley); }
  void operator()(const block::Listing& listing) const { set_listing(setting, spec, listing, width, above, galley); }
  void operator()(const block::Facts& facts) const { set_facts(setting, spec, facts, width, galley); }
  void operator()(const block::Table& table) const { set_table(setting, spec, table, width, above, galley); }
  void operator()(const block::Fill& fill) const { set_fill(setting, spec, fill, width, galley); }
  void operator()(const block::Notice& notice) const { set_notice(setting, spec, notice, width, galley); }
  void operator()(const block::Signature& sign) const { set_signature(setting, spec, sign, width, galley); }
  void operator()(const block::Qr& qr) const { set_qr(setting, spec, qr, width, galley); }
  void operator()(const block::Marks& marks) const { set_marks(setting, spec, marks, width, galley); }
  void operator()(const block::Handle& handle) const { set_handle(setting, spec, handle, width, galley); }
  void operator()(const block::Picture& picture) const { set_drawing(setting, spec, picture, width, galley); }
};

}  // namespace

void set_block(Setting& setting, const BlockSpec& spec, const Block& block, Paper width, const std::string& above,
               Galley& galley) {
  galley.begin_block(spec.space_before, spec.new_page);
  const bool frame = spec.frame && !std::holds_alternative<block::Notice>(block.content);
  if (frame) {
    const Paper pad = 2.5 * paper_mm;
    Galley inside;
    std::visit(BlockSetter{setting, spec, width - pad * 2, above, inside}, block.content);
    galley.strips.push_back(framed(std::move(inside), width, pad, 0.75 * point));
  } else {
    std::visit(BlockSetter{setting, spec, width, above, galley}, block.content);
  }
  const bool any = galley.end_block();
  if (any && spec.keep_with_next) galley.strips.back().keep_next = true;
}

}  // namespace dunnage
