// SPDX-License-Identifier: MIT
// Measuring of table columns. Each cell is looked at once.
#include "layout/columns.h"

#include <algorithm>

#include "base/nearest.h"
#include "base/unit.h"
#include "layout/galley.h"
#include "layout/lines.h"

namespace dunnage {
namespace {

using unit::paper_mm;

constexpr Paper cell_white = 1.2 * paper_mm;  ///< white left and right of a cell's text
constexpr Paper blank_width = 18 * paper_mm;  ///< of a blank in a column as wide as its content
constexpr Paper least_share = 12 * paper_mm;  ///< what a shared column must be left

Paper cell_width(Setting& setting, const BlockSpec& spec, const TypeStyle& type, const CellView& cell, bool strong) {
  const std::string role = cell.strong || strong ? setting.bold(type.face) : type.face;
  const Paper words = type.size * natural_ems(setting.faces, setting.face(role), cell.text);
  switch (cell.kind) {
    case Cell::Kind::text:
      return words;
    case Cell::Kind::tick:
      return tick_side(spec) + (cell.text.empty() ? Paper{} : tick_gap(spec) + words);
    case Cell::Kind::blank:
      return blank_width + words;
  }
  return words;
}

Paper content_width(Setting& setting, const BlockSpec& spec, const block::Table& table, const Column& column) {
  const TypeStyle& type = column.spec->type;
  Paper widest = spec.head.size * widest_word_ems(setting.faces, setting.face(spec.head.face), column.head);
  for (const Group& group : table.groups)
    for (const Row& row : group.rows)
      widest = std::max(widest, cell_width(setting, spec, type, row.cell(column.source), false));
  for (const Group& group : table.groups)
    for (const Row& row : group.rows)
      if (column.under)
        widest = std::max(widest, cell_width(setting, spec, column.under->type, row.cell(column.under_source), false));
  widest = std::max(widest, cell_width(setting, spec, type, table.total.cell(column.source), true));
  return widest + 0.02 * paper_mm;  // what rounding may cost
}

std::vector<Column> chosen(Setting& setting, const BlockSpec& spec, const block::Table& table) {
  std::vector<Column> columns;
  std::vector<bool> placed(table.columns.size(), false);
  for (const ColumnSpec& each : spec.columns) {
    const auto at = std::find(table.columns.begin(), table.columns.end(), each.id);
    if (at == table.columns.end()) continue;
    Column column;
    column.spec = &each;
    column.source = static_cast<std::size_t>(at - table.columns.begin());
    placed[column.source] = true;
    if (const auto head = table.heads.find(each.id); head != table.heads.end()) column.head = head->second;
    if (each.under.empty()) columns.push_back(std::move(column));
  }
  for (const ColumnSpec& each : spec.columns) {
    const auto at = std::find(table.columns.begin(), table.columns.end(), each.id);
    if (each.under.empty() || at == table.columns.end()) continue;
    for (Column& host : columns)
      if (host.spec->id == each.under) {
        host.under = &each;
        host.under_source = static_cast<std::size_t>(at - table.columns.begin());
      }
  }
  std::vector<std::string> known;
  for (const ColumnSpec& each : spec.columns) known.push_back(each.id);
  for (std::size_t i = 0; i < placed.size(); ++i) {
    const std::string& id = table.columns[i];
    const bool left_out = std::find(spec.omit_columns.begin(), spec.omit_columns.end(), id) != spec.omit_columns.end();
    if (placed[i] || left_out) continue;
    const std::string meant = did_you_mean(id, known);
    setting.problem(id, "is a column that the layout neither places nor leaves out" +
                            (meant.empty() ? std::string() : "; " + meant));
  }
  return columns;
}

/// Content columns give way, all in proportion, when the others need the room.
void squeeze(Setting& setting, std::vector<Column>& columns, Paper fixed, Paper content, Paper shares, Paper width) {
  const Paper room = width - fixed - shares;
  if (content <= room + hair) return;
  if (room < content * 0.4 || room <= Paper{}) {
    setting.problem({}, "the columns need " + plain((fixed + content + shares) / paper_mm, 1) + " mm and have " +
                            plain(width / paper_mm, 1) + " mm");
    return;
  }
  for (Column& column : columns)
    if (column.spec->kind == ColumnSpec::Kind::content) column.width = column.width * (room / content);
}

}  // namespace

Paper tick_side(const BlockSpec& spec) { return spec.tick > Paper{} ? spec.tick : 5 * paper_mm; }
Paper tick_gap(const BlockSpec& spec) { return tick_side(spec) * 0.5; }

std::vector<Column> measure_columns(Setting& setting, const BlockSpec& spec, const block::Table& table, Paper width) {
  std::vector<Column> columns = chosen(setting, spec, table);
  Paper fixed, content, least;
  double shares = 0;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    Column& column = columns[i];
    const Paper pads = (i > 0 ? cell_white : Paper{}) + (i + 1 < columns.size() ? cell_white : Paper{});
    switch (column.spec->kind) {
      case ColumnSpec::Kind::fixed:
        fixed += column.width = column.spec->width;
        break;
      case ColumnSpec::Kind::content:
        content += column.width = content_width(setting, spec, table, column) + pads;
        break;
      case ColumnSpec::Kind::share:
        shares += column.spec->share;
        least += least_share;
        break;
    }
  }
  squeeze(setting, columns, fixed, content, least, width);
  Paper left = width;
  for (const Column& column : columns) left = left - column.width;
  Paper x;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    Column& column = columns[i];
    if (column.spec->kind == ColumnSpec::Kind::share)
      column.width = std::max(left * (column.spec->share / shares), least_share);
    column.x = x;
    const Paper before = i > 0 ? cell_white : Paper{}, after = i + 1 < columns.size() ? cell_white : Paper{};
    column.text_x = x + before;
    column.text_width = std::max(column.width - before - after, 1 * paper_mm);
    x += column.width;
  }
  return columns;
}

}  // namespace dunnage
