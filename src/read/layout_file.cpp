// SPDX-License-Identifier: MIT
// Layout files to sheets. A style that a key leaves out is inherited, so that a house changes one line to
// change all.
#include "read/layout_file.h"

#include <algorithm>
#include <map>

#include "read/block_section.h"
#include "read/key_list.h"
#include "read/table_reader.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

/// What a layout file that says nothing of type gets.
TypeStyle plain_style() {
  TypeStyle style;
  style.size = 12 * point;
  style.floor = 10 * point;
  return style;
}

void read_margins(TableReader& page, Layout& layout) {
  if (page.is_text("margin")) {
    const auto all = page.quantity<Paper>("margin", range::paper_length);
    if (all) layout.margin_top = layout.margin_right = layout.margin_bottom = layout.margin_left = all->value;
    return;
  }
  page.table("margin", "margin", [&](TableReader& margin) {
    const auto side = [&](const char* key, Paper& into) {
      if (const auto given = margin.quantity<Paper>(key, range::paper_length)) into = given->value;
    };
    side("top", layout.margin_top);
    side("right", layout.margin_right);
    side("bottom", layout.margin_bottom);
    side("left", layout.margin_left);
  });
}

void read_page(TableReader& page, Layout& layout) {
  layout.landscape = page.flag("landscape", false);
  layout.furniture = page.flag("furniture", true);
  read_margins(page, layout);
  layout.most_pages = page.count("most_pages", 1, 1000, 0);
  for (const Text& block : page.texts("omit")) layout.omit.push_back(block.value);
  page.table("cards", "[page.cards]", [&](TableReader& cards) {
    layout.across = cards.count("across", 1, 20, 1);
    layout.down = cards.count("down", 1, 40, 1);
    layout.cut_marks = cards.flag("cut_marks", false);
    if (const auto gutter = cards.quantity<Paper>("gutter", range::paper_length)) layout.gutter = gutter->value;
  });
}

/// Every block of a document is placed once.
void tell_doubles(const Layout& layout, Diagnostics& diagnostics) {
  std::map<std::string, Place> seen;
  for (const BlockSpec& block : layout.blocks) {
    std::vector<std::string> ids = block.also;
    ids.insert(ids.begin(), block.id);
    for (const std::string& id : ids) {
      if (id.empty()) continue;
      const auto [first, fresh] = seen.emplace(id, block.place);
      if (!fresh)
        diagnostics.error(block.place, "the block \"" + id + "\" is placed twice", "keep one of the two", first->second,
                          "first placed here");
    }
  }
}

void read_sections(TableReader& top, Layout& layout) {
  top.table("page", "[page]", [&](TableReader& page) { read_page(page, layout); });
  const TypeStyle type = read_style(top, "type", plain_style());
  const TypeStyle head = read_style(top, "head", type);
  layout.title = read_style(top, "title", head);
  layout.running = read_style(top, "running", type);
  top.tables("block", "[[block]]", [&](TableReader& block) { layout.blocks.push_back(read_block(block, type, head)); });
}

std::optional<Layout> layout_from(std::string name, const TomlFile& file, Diagnostics& diagnostics) {
  const std::size_t errors = diagnostics.errors();
  Layout layout;
  layout.name = std::move(name);
  layout.file = file.source;
  layout.margin_top = layout.margin_right = layout.margin_bottom = 12 * paper_mm;
  layout.margin_left = 18 * paper_mm;
  read_top(file, {}, diagnostics, [&](TableReader& top) { read_sections(top, layout); });
  tell_doubles(layout, diagnostics);
  if (diagnostics.errors() > errors) return std::nullopt;
  return layout;
}

}  // namespace

std::optional<Layout> read_layout(std::string name, std::string file, std::string text, Sources& sources,
                                  Diagnostics& diagnostics) {
  const auto parsed = parse_toml(std::move(file), std::move(text), sources, diagnostics);
  return parsed ? layout_from(std::move(name), *parsed, diagnostics) : std::nullopt;
}

std::optional<Layout> load_layout(const std::filesystem::path& path, Sources& sources, Diagnostics& diagnostics,
                                  Place named_at) {
  const auto parsed = load_toml(path, sources, diagnostics, named_at);
  return parsed ? layout_from(path.stem().string(), *parsed, diagnostics) : std::nullopt;
}

std::vector<Key> keys_of_a_layout() {
  return learn_keys([](TableReader& top) {
    Layout layout;
    read_sections(top, layout);
  });
}

}  // namespace dunnage
