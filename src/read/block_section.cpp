// SPDX-License-Identifier: MIT
// Blocks, columns and styles, key by key as model/sheet.h has them.
#include "read/block_section.h"

#include <algorithm>
#include <cmath>

namespace dunnage {
namespace {

const WordTable<Align>& aligns() {
  static const WordTable<Align> table = {{"left", Align::left}, {"right", Align::right}, {"centre", Align::centre}};
  return table;
}
const WordTable<Fit>& fits() {
  static const WordTable<Fit> table = {
      {"wrap", Fit::wrap}, {"shrink", Fit::shrink}, {"refuse", Fit::refuse}, {"cut", Fit::cut}};
  return table;
}

void resize(TypeStyle& style, Paper size) {
  style.size = size;
  style.leading = {};
  style.floor = std::min(style.floor, size);
}

Paper length(TableReader& reader, std::string_view key, Paper otherwise = {}) {
  const auto given = reader.quantity<Paper>(key, range::paper_length);
  return given ? given->value : otherwise;
}

/// A column is fixed, as wide as its content, or takes a share.
void read_width(TableReader& reader, ColumnSpec& column) {
  const auto share = reader.number("share", 0.01, 100);
  if (share) column.share = share->value;
  if (!reader.has("width")) return;
  if (share) reader.error(share->place, "a column has a width or a share, not both", "leave out one of them");
  const auto word = reader.is_text("width") ? reader.maybe_text("width") : std::nullopt;
  if (word && word->value == "content") {
    column.kind = ColumnSpec::Kind::content;
  } else if (const auto width = reader.quantity<Paper>("width", range::paper_length)) {
    column.kind = ColumnSpec::Kind::fixed;
    column.width = width->value;
  }
}

ColumnSpec read_column(TableReader& reader, const TypeStyle& type) {
  ColumnSpec column;
  column.place = reader.place();
  column.id = reader.text("id").value;
  column.type = read_style(reader, "type", type);
  column.under = reader.text_or("under").value;
  read_width(reader, column);
  if (!column.under.empty() && (reader.has("width") || reader.has("share")))
    reader.error(reader.place(), "a column that stands under another has no width of its own",
                 "leave out its width or share");
  return column;
}

void read_area(TableReader& reader, BlockSpec& block) {
  reader.table("area", "area", [&](TableReader& area) {
    const auto share = [&](const char* key, double low, double otherwise) {
      const auto given = area.number(key, low, 1);
      return given ? given->value : otherwise;
    };
    const BlockSpec::Area read{share("x", 0, 0), share("y", 0, 0), share("w", 0.01, 1), share("h", 0.01, 1)};
    if (read.x + read.w > 1 + 1e-9 || read.y + read.h > 1 + 1e-9)
      area.error(area.place(), "the area reaches beyond the label",
                 "x + w and y + h are at most 1: shares of the label inside its margin");
    block.area = read;
  });
}

/// One id, or several that are set alike.
void read_ids(TableReader& reader, BlockSpec& block) {
  if (!reader.has("ids")) {
    block.id = reader.text("id").value;
    return;
  }
  if (const auto id = reader.maybe_text("id"))
    reader.error(id->place, "a block has an id or ids, not both", "put it among the ids");
  const std::vector<Text> ids = reader.texts("ids");
  if (ids.empty()) reader.error(reader.place_of_value("ids"), "\"ids\" names no block", "ids = [\"...\"]");
  for (const Text& id : ids) (block.id.empty() ? block.id : block.also.emplace_back()) = id.value;
}

/// A column stands under one that has a place of its own.
void check_under(TableReader& reader, const BlockSpec& block) {
  for (const ColumnSpec& column : block.columns) {
    const auto is_host = [&](const ColumnSpec& other) { return other.id == column.under && other.under.empty(); };
    if (!column.under.empty() && std::none_of(block.columns.begin(), block.columns.end(), is_host))
      reader.error(column.place,
                   "\"" + column.id + "\" stands under \"" + column.under + "\", which is no column of its own here",
                   "name a column of this block that has a width");
  }
}

void read_table_keys(TableReader& reader, BlockSpec& block) {
  reader.tables("column", "[[block.column]]",
                [&](TableReader& column) { block.columns.push_back(read_column(column, block.type)); });
  check_under(reader, block);
  for (const Text& column : reader.texts("omit_columns")) block.omit_columns.push_back(column.value);
  block.row_height = length(reader, "row_height");
  block.tick = length(reader, "tick");
  block.rows_per_group = reader.count("rows_per_group", 0, 1000, 0);
  block.group_gap = length(reader, "group_gap");
  block.heavy_every = reader.count("heavy_every", 0, 1000, 0);
}

}  // namespace

TypeStyle read_style(TableReader& reader, std::string_view key, TypeStyle inherited) {
  TypeStyle style = std::move(inherited);
  if (reader.is_text(key)) {
    if (const auto size = reader.quantity<Paper>(key, range::type_size)) resize(style, size->value);
    return style;
  }
  reader.table(key, "\"" + std::string(key) + "\"", [&](TableReader& type) {
    style.face = type.text_or("face", style.face).value;
    if (const auto size = type.quantity<Paper>("size", range::type_size)) resize(style, size->value);
    if (const auto floor = type.quantity<Paper>("floor", range::type_size)) {
      if (floor->value > style.size)
        type.error(floor->place, "the floor is larger than the size", "type shrinks from its size to its floor");
      style.floor = floor->value;
    }
    if (const auto leading = type.quantity<Paper>("leading", range::paper_length)) {
      if (leading->value < style.size)
        type.error(leading->place, "lines would touch: the leading is smaller than the size",
                   "a leading of 1.25 to 1.4 times the size reads well");
      style.leading = leading->value;
    }
    style.align = type.word("align", aligns(), style.align);
    style.fit = type.word("fit", fits(), style.fit);
  });
  return style;
}

BlockSpec read_block(TableReader& reader, const TypeStyle& type, const TypeStyle& head) {
  BlockSpec block;
  block.place = reader.place();
  read_ids(reader, block);
  block.type = read_style(reader, "type", type);
  block.head = read_style(reader, "head", head);
  block.space_before = length(reader, "space_before");
  block.keep_with_next = reader.flag("keep_with_next", false);
  block.new_page = reader.flag("new_page", false);
  block.frame = reader.flag("frame", false);
  if (const auto beside = reader.number("beside", 0.1, 0.9)) block.beside = beside->value;
  block.max_width = length(reader, "max_width");
  read_area(reader, block);
  read_table_keys(reader, block);
  block.across = reader.count("across", 0, 12, 1);
  block.line_height = length(reader, "line_height");
  block.height = length(reader, "height");
  if (const auto pitch = reader.quantity<Paper>("pitch", range::fader_pitch)) block.pitch = pitch->value;
  block.dots = reader.count("dots", 1, 100, 5);
  block.correction = reader.word("correction", WordTable<char>{{"L", 'L'}, {"M", 'M'}, {"Q", 'Q'}, {"H", 'H'}}, 'M');
  return block;
}

}  // namespace dunnage
