// SPDX-License-Identifier: MIT
// Setting of sections.
#include "layout/set_section.h"

#include <algorithm>
#include <utility>

#include "layout/set_area.h"
#include "layout/set_block.h"

namespace dunnage {
namespace {

constexpr Paper gutter = 5 * unit::paper_mm;  ///< between two side by side

bool has(const Section& section, const BlockSpec& spec) {
  return std::any_of(section.blocks.begin(), section.blocks.end(),
                     [&](const Block& block) { return places(spec, block.id); });
}

class Setter {
 public:
  Setter(Setting& setting, const Section& section) : setting_(setting), section_(section) {}

  void set(const BlockSpec& spec, Paper width, Galley& galley) {
    for (const Block& block : section_.blocks) {
      if (!places(spec, block.id)) continue;
      setting_.at_block(block.id, spec.place);
      set_block(setting_, spec, block, width, above_, galley);
      const auto* heading = std::get_if<block::Heading>(&block.content);
      above_ = heading ? heading->text : std::string();
    }
  }

  void set_pair(const BlockSpec& left, const BlockSpec& right, Paper width, Galley& galley) {
    const Paper right_width = width * right.beside - gutter / 2, left_width = width - right_width - gutter;
    Galley one, two;
    set(left, left_width, one);
    set(right, right_width, two);
    Strip pair = framed(std::move(one), left_width, {}, {});
    Strip other = framed(std::move(two), right_width, {}, {});
    add_moved(pair.ink, std::move(other.ink), left_width + gutter, {});
    pair.height = std::max(pair.height, other.height);
    pair.before = left.space_before;
    pair.keep_next = right.keep_with_next;
    galley.strips.push_back(std::move(pair));
  }

 private:
  Setting& setting_;
  const Section& section_;
  std::string above_;
};

}  // namespace

void set_section(Setting& setting, const Layout& layout, const Section& section, Paper width, Galley& galley) {
  Setter setter(setting, section);
  std::vector<const BlockSpec*> flowing;
  for (const BlockSpec& spec : layout.blocks)
    if (!spec.area && has(section, spec)) flowing.push_back(&spec);
  for (std::size_t i = 0; i < flowing.size(); ++i) {
    const bool pair = i + 1 < flowing.size() && flowing[i + 1]->beside > 0 && flowing[i]->beside <= 0;
    if (!pair) {
      setter.set(*flowing[i], width, galley);
      continue;
    }
    setter.set_pair(*flowing[i], *flowing[i + 1], width, galley);
    ++i;
  }
}

}  // namespace dunnage
