// SPDX-License-Identifier: MIT
#include "read/csv_rows.h"

#include <algorithm>
#include <array>

#include "base/utf8.h"
#include "read/csv_cell.h"
#include "read/csv_codes.h"
#include "read/csv_contents.h"
#include "read/csv_number.h"
#include "read/kit_file.h"

namespace dunnage {
namespace {

bool blank(const std::string& text) { return plain_signs(text).empty(); }

bool is_sum(const std::string& low) {
  for (const char* word :
       {"total", "totals", "total:", "total weight", "grand total", "subtotal", "sub-total", "sum", "sum:"})
    if (low == word) return true;
  return false;
}

/// One case as its rows gather.
struct Gathered {
  IntakeRow row;
  std::vector<std::pair<std::string, int>> contents;  ///< item, count
  Text contents_cell;
  std::string contents_column;
};

class Rows {
 public:
  Rows(const CsvTable& table, const std::string& section, const std::vector<Key>& keys, const Kit& kit, CsvHead head,
       Diagnostics& diagnostics)
      : table_(table), section_(section), keys_(keys), head_(std::move(head)), codes_(kit), diagnostics_(diagnostics) {
    std::vector<std::string> cells;
    for (std::size_t r = head_.row + 1; r < table.rows.size(); ++r)
      for (std::size_t i = 0; i < table.rows[r].cells.size(); ++i)
        if (numbers_in(i)) cells.push_back(table.rows[r].cells[i].value);  // a shelf "1,5" is no number
    decimals_ = decimals_of(cells, table.delimiter);
  }

  Intake read() {
    // What is typed goes before what is made: no code made for an earlier row may be one that a later row has.
    for (std::size_t r = head_.row + 1; r < table_.rows.size(); ++r)
      codes_.take(CodeMaker::mended(cell(table_.rows[r], "code").value));
    for (std::size_t r = head_.row + 1; r < table_.rows.size(); ++r) read_row(table_.rows[r]);
    Intake out;
    out.file = table_.file->name;
    out.how = how();
    out.columns = head_.columns;
    for (std::size_t r = 0; r < head_.row; ++r) out.above.push_back(in_words(table_.rows[r]));
    out.rows = std::move(items_);
    for (Gathered& one : gathered_) {
      finish(one);
      out.rows.push_back(std::move(one.row));
    }
    return out;
  }

 private:
  const IntakeColumn* column(std::size_t at) const { return at < head_.columns.size() ? &head_.columns[at] : nullptr; }

  bool numbers_in(std::size_t at) const {
    const IntakeColumn* c = column(at);
    if (!c || c->key.empty()) return false;
    for (const char* part : {length_part, width_part, height_part, item_count_part})
      if (c->key == part) return true;
    return std::any_of(keys_.begin(), keys_.end(),
                       [&](const Key& key) { return key.name == c->key && has_numbers(key); });
  }

  /// The cell under a key; empty where there is none.
  Text cell(const CsvRow& row, const std::string& key) const {
    for (std::size_t i = 0; i < row.cells.size() && i < head_.columns.size(); ++i)
      if (head_.columns[i].key == key) return row.cells[i];
    return {{}, row.place};
  }

  std::string in_words(const CsvRow& row) const {
    std::string out;
    for (const Text& cell : row.cells)
      if (!blank(cell.value)) out += (out.empty() ? "" : " | ") + cell.value;
    return out;
  }

  std::string how() const {
    const std::string parts = table_.delimiter == ';'    ? "semicolons"
                              : table_.delimiter == '\t' ? "tabs"
                              : table_.delimiter == ','  ? "commas"
                                                         : "parted by " + std::string(1, table_.delimiter);
    return parts + ", " + table_.encoding + (decimals_ == Decimals::comma ? ", decimal comma" : ", decimal point");
  }

  void leave_out(const CsvRow& row, const std::string& cause, const std::string& hint) {
    diagnostics_.warning(row.place, cause, hint);
    Gathered one;
    one.row = {section_, row.place, {}, {in_words(row)}, {}, true};
    gathered_.push_back(std::move(one));
  }

  /// Rows that are no cases: titles of groups, sums, the heads once more.
  bool left_out(const CsvRow& row) {
    std::size_t filled = 0, like_head = 0;
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      if (blank(row.cells[i].value)) continue;
      ++filled;
      if (column(i) && utf8::lower(column(i)->head) == utf8::lower(row.cells[i].value)) ++like_head;
    }
    const std::string first = utf8::lower(plain_signs(
        std::find_if(row.cells.begin(), row.cells.end(), [](const Text& c) { return !blank(c.value); })->value));
    const auto said = static_cast<std::size_t>(std::count_if(head_.columns.begin(), head_.columns.end(),
                                                             [](const IntakeColumn& c) { return !c.key.empty(); }));
    if (like_head > 1 && like_head == filled)
      leave_out(row, "this row is the heads once more", "nothing to do; it is kept as a comment");
    else if (is_sum(first))
      leave_out(row, "this row is a sum, no " + section_, "nothing to do; it is kept as a comment");
    else if (filled == 1 && said >= 3 && blank(cell(row, "holds").value) && blank(cell(row, item_part).value))
      leave_out(row, "this row says one thing alone, and was taken for a title",
                "give it a code or a form, if it is a " + section_ + "; it is kept as a comment");
    else
      return false;
    return true;
  }

  void read_row(const CsvRow& row) {
    if (left_out(row)) return;
    const Text code = cell(row, "code"), name = cell(row, "name");
    if (blank(code.value) && blank(name.value)) {
      if (open_ && (!blank(cell(row, "holds").value) || !blank(cell(row, item_part).value))) {
        gathered_[*open_].row.guesses.push_back("line " + std::to_string(row.place.line) +
                                                " goes on with its contents");
        add_contents(row, gathered_[*open_]);
        keep_beside(row, gathered_[*open_].row);
        return;
      }
      leave_out(row, "this row has neither code nor name", "give it one; it is kept as a comment");
      return;
    }
    if (Gathered* same = gathering(code, name)) {
      add_contents(row, *same);
      keep_beside(row, same->row);
      return;
    }
    begin(row, code, name);
  }

  /// In a sheet of one item a row: the case that this row goes on with.
  Gathered* gathering(const Text& code, const Text& name) {
    const auto items = [](const IntakeColumn& c) { return c.key == item_part; };
    if (std::none_of(head_.columns.begin(), head_.columns.end(), items)) return nullptr;
    const std::string key = code.value + "\n" + name.value;
    const auto at = by_case_.find(key);
    if (at != by_case_.end()) return &gathered_[at->second];
    by_case_.emplace(key, gathered_.size());
    return nullptr;
  }

  void begin(const CsvRow& row, const Text& code, const Text& name) {
    Gathered one;
    one.row = {section_, row.place, {}, {}, {}, false};
    settle_code(one.row, code, name);
    settle_name(one.row, code, name);
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      const IntakeColumn* c = column(i);
      if (c && (c->key == "code" || c->key == "name" || blank(row.cells[i].value))) continue;
      if (!c || c->key.empty()) continue;
      if (c->key.find(':') == std::string::npos &&
          !(c->key == "holds" && section_ == "case" && !row.cells[i].value.starts_with("[")))
        read_key(one.row, *c, row.cells[i]);
    }
    read_parts_of_size(row, one.row);
    if (section_ == "case" && one.row.text("form").empty()) guess_form(one.row);
    open_ = gathered_.size();
    add_contents(row, one);
    keep_beside(row, one.row);
    gathered_.push_back(std::move(one));
  }

  void settle_code(IntakeRow& row, const Text& code, const Text& name) {
    if (blank(code.value)) {
      const std::string made = codes_.from_words(name.value);
      row.lines.push_back({"code", made, "", {made, row.place}, false});
      row.guesses.push_back("code " + made + " made from the name");
      return;
    }
    const std::string mended = CodeMaker::mended(code.value);
    std::string taken = mended;
    if (mended.empty()) {
      taken = codes_.from_words(name.value);
      row.guesses.push_back("code " + taken + " made from the name, as " + in_quotes(code.value) + " cannot be one");
    } else if (mended != code.value) {
      row.guesses.push_back("code " + in_quotes(code.value) + " written as " + mended);
    }
    row.lines.push_back({"code", taken, "", code, false});
  }

  void settle_name(IntakeRow& row, const Text& code, const Text& name) {
    const bool none = blank(name.value);
    if (none) row.guesses.push_back("no name: its code is taken");
    row.lines.push_back({"name", none ? code.value : name.value, "", none ? code : name, false});
  }

  void refuse(IntakeRow& row, const std::string& head, const Text& cell, const std::string& cause,
              const std::string& hint) {
    diagnostics_.warning(cell.place, cause, hint);
    row.beside.push_back(head + ": " + cell.value);
  }

  void read_key(IntakeRow& row, const IntakeColumn& column, const Text& cell) {
    Key key;
    for (const Key& one : keys_)
      if (one.name == column.key.substr(0, column.key.find('.'))) key = one;
    const ReadCell read = read_cell(cell.value, key, column.unit, decimals_);
    if (!read.cause.empty()) return refuse(row, column.head, cell, read.cause, read.hint);
    if (!read.guess.empty()) row.guesses.push_back(column.key + ": " + read.guess);
    if (read.value) row.lines.push_back({column.key, *read.value, column.head, cell, false});
  }

  void read_parts_of_size(const CsvRow& row, IntakeRow& out) {
    std::string text, cells;
    Text first;
    for (const char* part : {length_part, width_part, height_part}) {
      const Text typed = cell(row, part);
      if (blank(typed.value)) continue;
      const auto at = std::find_if(head_.columns.begin(), head_.columns.end(),
                                   [&](const IntakeColumn& c) { return c.key == part; });
      if (first.value.empty()) first = typed;
      cells += (cells.empty() ? "" : " x ") + typed.value;
      const ReadCell side = read_quantity_cell(typed.value, {Measure::length}, at->unit, decimals_);
      if (!side.value) return refuse(out, at->head, typed, side.cause, side.hint);
      text += (text.empty() ? "" : " x ") + std::get<std::string>(*side.value);
    }
    if (text.empty()) return;
    if (std::count(text.begin(), text.end(), 'x') < 2)
      return refuse(out, "size", {cells, first.place}, "a size needs length, width and height", "fill in all three");
    out.lines.push_back({"size", tidy_size(text), "size", {cells, first.place}, false});
  }

  /// "29 in x 21 in x 18 in" -> "29 x 21 x 18 in".
  static std::string tidy_size(const std::string& text) {
    const std::vector<std::string> words = split_words(text);
    if (words.size() != 8 || words[1] != words[4] || words[1] != words[7]) return text;
    return words[0] + " x " + words[3] + " x " + words[6] + " " + words[7];
  }

  void guess_form(IntakeRow& row) {
    static const std::vector<std::pair<const char*, std::vector<const char*>>> words = {
        {"bag", {"bag", "sack", "pouch", "gig bag", "holdall"}},
        {"tub", {"tub", "tote", "bin", "crate", "bucket"}},
        {"trunk", {"trunk", "rack", "flight case", "road case", "workbox"}},
        {"loose", {"stand", "pole", "ladder", "table", "chair", "ramp", "cart", "barrel", "canopy", "loose"}}};
    const std::string name = utf8::lower(row.text("name"));
    std::string form = "box";
    for (const auto& [kind, list] : words)
      if (form == "box" &&
          std::any_of(list.begin(), list.end(), [&](const char* word) { return name.find(word) != std::string::npos; }))
        form = kind;
    row.guesses.push_back("form " + form + (form == "box" ? "" : " from the name"));
    row.lines.push_back({"form", form, "", {form, row.place}, false});
  }

  /// The item of that name; made where there is none.
  std::string item_for(const std::string& name, Place place) {
    const std::string known = codes_.item(name);
    if (!known.empty()) return known;
    IntakeRow row{"item", place, {}, {}, {}, false};
    const std::string code = codes_.from_words(name);
    row.lines.push_back({"code", code, "", {name, place}, false});
    row.lines.push_back({"name", name, "", {name, place}, false});
    row.guesses.push_back("item made for " + in_quotes(name));
    codes_.know_item(name, code);
    items_.push_back(std::move(row));
    return code;
  }

  void add_content(Gathered& one, const ContentWords& words, const Text& cell, const std::string& column) {
    const std::string item = item_for(words.name, cell.place);
    if (!words.counted) one.row.guesses.push_back("one " + in_quotes(words.name) + " taken, as no number is given");
    if (one.contents.empty()) {
      one.contents_cell = cell;
      one.contents_column = column;
    }
    for (auto& [code, count] : one.contents)
      if (code == item) {
        count += words.count;
        return;
      }
    one.contents.emplace_back(item, words.count);
  }

  void add_contents(const CsvRow& row, Gathered& one) {
    if (section_ != "case") return;
    if (const Text holds = cell(row, "holds"); !blank(holds.value) && !holds.value.starts_with("["))
      for (const ContentWords& words : read_contents(holds.value)) add_content(one, words, holds, "holds");
    const Text item = cell(row, item_part), count = cell(row, item_count_part);
    if (blank(item.value)) return;
    ContentWords words{1, plain_signs(item.value), false};
    if (!blank(count.value)) {
      const ReadCell read =
          read_cell(count.value, {"count", "whole number", false, false, {}, {}, {}, {}}, "", decimals_);
      const auto* number = read.value ? std::get_if<RawToml>(&*read.value) : nullptr;
      if (!number || number->text == "0")
        return refuse(one.row, item.value, count, in_quotes(count.value) + " is no number of pieces",
                      "write how many, for example 4");
      words.count = std::stoi(number->text);
      words.counted = true;
    }
    add_content(one, words, item, "item");
  }

  void keep_beside(const CsvRow& row, IntakeRow& out) {
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      const IntakeColumn* c = column(i);
      if ((c && !c->key.empty()) || blank(row.cells[i].value)) continue;
      if (headless(head_.columns, i))
        diagnostics_.warning(row.cells[i].place, in_quotes(row.cells[i].value) + " stands in a column without a head",
                             "put a number with a comma into quotes, or head the column; it is kept as a comment");
      out.beside.push_back((c && !blank(c->head) ? c->head : "column " + std::to_string(i + 1)) + ": " +
                           row.cells[i].value);
    }
  }

  void finish(Gathered& one) {
    if (one.contents.empty()) return;
    std::string text;
    for (const auto& [item, count] : one.contents)
      text += (text.empty() ? "" : ", ") + std::string("{ item = \"") + item + "\", count = " + std::to_string(count) +
              " }";
    one.row.lines.push_back({"holds", RawToml{"[" + text + "]"}, one.contents_column, one.contents_cell, false});
  }

  const CsvTable& table_;
  std::string section_;
  const std::vector<Key>& keys_;
  CsvHead head_;
  CodeMaker codes_;
  Diagnostics& diagnostics_;
  Decimals decimals_ = Decimals::point;
  std::vector<IntakeRow> items_;
  std::vector<Gathered> gathered_;
  std::map<std::string, std::size_t> by_case_;
  std::optional<std::size_t> open_;
};

}  // namespace

Intake read_rows(const CsvTable& table, const std::string& section, const Kit& kit, const ColumnWishes& wishes,
                 std::vector<std::string>& guesses, Diagnostics& diagnostics) {
  const std::vector<Key> keys = keys_in_section(section);
  const std::size_t before = diagnostics.errors();
  CsvHead head = read_head(table, keys, wishes, diagnostics);
  if (diagnostics.errors() > before) return {};
  if (head.row + 1 >= table.rows.size()) {
    diagnostics.error({table.file, 0, 0, 1}, "there is no row below the heads",
                      "nothing is there to take in; check the file");
    return {};
  }
  guesses = head.guesses;
  guesses.insert(guesses.end(), head.doubles.begin(), head.doubles.end());
  return Rows(table, section, keys, kit, std::move(head), diagnostics).read();
}

}  // namespace dunnage
