// SPDX-License-Identifier: MIT
// Setting of tables: rows, heads, groups, totals.
#include "layout/set_table.h"

#include <algorithm>
#include <utility>

#include "layout/columns.h"
#include "layout/fit.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

constexpr Paper row_rule = 0.25 * point, head_rule = 0.5 * point, heavy_rule = 1 * point;
constexpr Paper box_stroke = 0.8 * point, write_rule = 0.5 * point;
constexpr Paper row_pad = 0.6 * paper_mm;     ///< above and below the words of a row
constexpr Paper head_gap = 0.2 * paper_mm;    ///< between the heads of two columns, at least
constexpr Paper write_rise = 1.6 * paper_mm;  ///< of the line to write on, above the row's rule

class TableSetter {
 public:
  TableSetter(Setting& setting_, const BlockSpec& spec_, const block::Table& table_, Paper width_, Galley& galley_)
      : setting(setting_),
        spec(spec_),
        table(table_),
        width(width_),
        galley(galley_),
        columns(measure_columns(setting_, spec_, table_, width_)) {}

  void run(const std::string& above) {
    const bool headed = std::any_of(columns.begin(), columns.end(), [](const Column& c) { return !c.head.empty(); });
    std::vector<Strip> heads;
    if (headed) {
      heads.push_back(head_strip());
      galley.strips.push_back(heads.front());
    }
    const Resume only_heads = headed ? std::make_shared<const std::vector<Strip>>(heads) : nullptr;
    for (std::size_t g = 0; g < table.groups.size(); ++g) {
      const Group& group = table.groups[g];
      const std::string& title = group.title.empty() ? above : group.title;
      const Resume resume = title.empty() ? only_heads : with_title(heads, title);
      if (!group.title.empty()) add_title(group.title, g > 0, only_heads);
      add_rows(group, resume, g > 0 && group.title.empty());
      if (g + 1 == table.groups.size() && !table.total.empty()) add_total(resume);
    }
  }

 private:
  void rule(Strip& strip, Paper y, Paper thickness) const {
    strip.ink.push_back(ink::Line{{{}, y}, {width, y}, thickness, {}});
  }

  Resume with_title(std::vector<Strip> heads, const std::string& title) {
    heads.push_back(title_strip(continued_words(setting.document, title)));
    return std::make_shared<const std::vector<Strip>>(std::move(heads));
  }

  Strip head_strip() {
    std::vector<Lines> heads;
    Strip strip;
    for (const Column& column : columns) {
      heads.push_back(fit_words(setting, spec.head, column.head, head_room(column).second));
      strip.height = std::max(strip.height, heads.back().height());
    }
    strip.height += row_pad;
    for (std::size_t i = 0; i < columns.size(); ++i) {
      TypeStyle style = spec.head;
      style.align = columns[i].spec->type.align;
      const Paper y = strip.height - row_pad - heads[i].height();
      const auto [x, room] = head_room(columns[i]);
      if (!columns[i].head.empty()) put_lines(setting, strip.ink, heads[i], style, {x, y}, room);
    }
    rule(strip, strip.height - head_rule / 2, head_rule);
    strip.keep_next = true;
    return strip;
  }

  /// A head may use the white beside its column's text, on the side where it does not begin.
  static std::pair<Paper, Paper> head_room(const Column& column) {
    const Paper left = column.x + head_gap, right = column.x + column.width - head_gap;
    switch (column.spec->type.align) {
      case Align::left:
        return {column.text_x, right - column.text_x};
      case Align::right:
        return {left, column.text_x + column.text_width - left};
      case Align::centre:
        break;
    }
    return {left, right - left};
  }

  Strip title_strip(const std::string& title) {
    const Lines lines = fit_width(setting, title_style(), title, width);
    Strip strip;
    put_lines(setting, strip.ink, lines, title_style(), {{}, row_pad}, width);
    strip.height = lines.height() + row_pad * 2;
    rule(strip, strip.height - head_rule / 2, head_rule);
    strip.keep_next = true;
    return strip;
  }

  TypeStyle title_style() const {
    TypeStyle style = spec.head;
    style.align = Align::left;
    style.fit = Fit::wrap;
    return style;
  }

  void add_title(const std::string& title, bool after_others, const Resume& resume) {
    Strip strip = title_strip(title);
    if (after_others) strip.before = gap();
    strip.resume = resume;
    galley.strips.push_back(std::move(strip));
  }

  Paper gap() const { return spec.group_gap > Paper{} ? spec.group_gap : 4 * paper_mm; }

  void add_rows(const Group& group, const Resume& resume, bool gap_before) {
    const auto count = static_cast<int>(group.rows.size());
    for (int i = 0; i < count; ++i) {
      const bool after_gap =
          (i == 0 && gap_before) || (i > 0 && spec.rows_per_group > 0 && i % spec.rows_per_group == 0);
      const bool heavy = spec.heavy_every > 0 && (i + 1) % spec.heavy_every == 0;
      Strip strip = row_strip(group.rows[static_cast<std::size_t>(i)], false, heavy ? heavy_rule : row_rule);
      if (after_gap) {
        strip.before = gap();
        rule(strip, row_rule / 2, row_rule);
      }
      strip.resume = resume;
      const bool first_of_more = i == 0 && count > 1, before_last = count > 2 && i + 2 == count;
      strip.keep_next = first_of_more || before_last;
      galley.strips.push_back(std::move(strip));
      galley.relieve();
    }
  }

  void add_total(const Resume& resume) {
    if (!galley.strips.empty()) galley.strips.back().keep_next = true;
    Strip strip = row_strip(table.total, true, row_rule);
    rule(strip, heavy_rule / 2, heavy_rule);
    strip.resume = resume;
    galley.strips.push_back(std::move(strip));
  }

  TypeStyle cell_style(const Column& column, const CellView& cell, bool strong) const {
    TypeStyle style = column.spec->type;
    if (strong || cell.strong) style.face = setting.bold(style.face);
    return style;
  }

  /// Where a cell's words begin, from the left of its text, and how wide they may be.
  std::pair<Paper, Paper> words_at(const Column& column, const CellView& cell) const {
    const Paper lead = cell.kind == Cell::Kind::tick ? tick_side(spec) + tick_gap(spec) : Paper{};
    return {lead, std::max(column.text_width - lead, 1 * paper_mm)};
  }

  Strip row_strip(const Row& row, bool strong, Paper below) {
    const std::vector<CellView> cells = row.cells();
    std::vector<Lines> words(columns.size()), under(columns.size());
    Strip strip;
    strip.height = spec.row_height;
    for (std::size_t i = 0; i < columns.size(); ++i) {
      if (columns[i].source >= cells.size()) continue;
      const CellView& cell = cells[columns[i].source];
      if (cell.kind == Cell::Kind::tick) strip.height = std::max(strip.height, tick_side(spec) + 2 * paper_mm);
      under[i] = lines_under(columns[i], cells);
      if (!cell.text.empty())
        words[i] =
            fit_width(setting, cell_style(columns[i], cell, strong), cell.text, words_at(columns[i], cell).second);
      strip.height = std::max(strip.height, words[i].height() + under[i].height() + row_pad * 2);
    }
    strip.ink.reserve(2 * columns.size() + 1);
    for (std::size_t i = 0; i < columns.size(); ++i)
      if (columns[i].source < cells.size())
        put_cell(strip, columns[i], cells[columns[i].source], words[i], under[i], strong);
    if (strong || !only_to_write_on(cells)) rule(strip, strip.height - below / 2, below);
    return strip;
  }

  /// What another column says in the same cell, below; only words can.
  Lines lines_under(const Column& column, const std::vector<CellView>& cells) {
    if (!column.under || column.under_source >= cells.size() || cells[column.under_source].text.empty()) return {};
    return fit_width(setting, column.under->type, cells[column.under_source].text, column.text_width);
  }

  /// A row of blanks has its own lines to write on: a rule below them would look like a second one.
  static bool only_to_write_on(const std::vector<CellView>& cells) {
    const auto said = [](const CellView& cell) {
      return cell.kind == Cell::Kind::text && cell.text.find_first_not_of("0123456789") != std::string::npos;
    };
    const auto blank = [](const CellView& cell) { return cell.kind == Cell::Kind::blank; };
    return std::any_of(cells.begin(), cells.end(), blank) && std::none_of(cells.begin(), cells.end(), said);
  }

  void put_cell(Strip& strip, const Column& column, const CellView& cell, const Lines& words, const Lines& under,
                bool strong) {
    const Paper top = (strip.height - words.height() - under.height()) / 2;
    if (!under.lines.empty())
      put_lines(setting, strip.ink, under, column.under->type, {column.text_x, top + words.height()},
                column.text_width);
    const auto [lead, room] = words_at(column, cell);
    if (cell.kind == Cell::Kind::tick) put_tick(strip, column, cell);
    if (cell.kind == Cell::Kind::blank) put_blank(strip, column, words);
    if (cell.text.empty()) return;
    TypeStyle style = cell_style(column, cell, strong);
    if (cell.kind == Cell::Kind::blank) style.align = Align::right;
    put_lines(setting, strip.ink, words, style, {column.text_x + lead, top}, room);
  }

  void put_tick(Strip& strip, const Column& column, const CellView& cell) const {
    const Paper side = tick_side(spec);
    const Align align = cell.text.empty() ? column.spec->type.align : Align::left;
    const double where = align == Align::left ? 0.0 : align == Align::right ? 1.0 : 0.5;
    const Paper x = column.text_x + (column.text_width - side) * where;
    strip.ink.push_back(
        ink::Rect{{x + box_stroke / 2, (strip.height - side + box_stroke) / 2, side - box_stroke, side - box_stroke},
                  box_stroke});
  }

  /// A line to write on; words of a blank (a unit) stand at its right end.
  void put_blank(Strip& strip, const Column& column, const Lines& words) const {
    Paper end = column.text_x + column.text_width;
    if (!words.lines.empty()) {
      const double ems = natural_ems(setting.faces, setting.face(column.spec->type.face), words.lines.front());
      end = end - words.size * ems - 1 * paper_mm;
    }
    const Paper y = strip.height - write_rise;
    if (end > column.text_x) strip.ink.push_back(ink::Line{{column.text_x, y}, {end, y}, write_rule, {}});
  }

  Setting& setting;
  const BlockSpec& spec;
  const block::Table& table;
  const Paper width;
  Galley& galley;
  const std::vector<Column> columns;
};

}  // namespace

void set_table(Setting& setting, const BlockSpec& spec, const block::Table& table, Paper width,
               const std::string& above, Galley& galley) {
  TableSetter(setting, spec, table, width, galley).run(above);
}

}  // namespace dunnage
