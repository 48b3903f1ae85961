// SPDX-License-Identifier: MIT
// The words were gathered from how crews head their lists (common practice, no source).
#include "read/csv_head.h"

#include <algorithm>
#include <optional>

#include "base/nearest.h"
#include "base/utf8.h"
#include "read/csv_cell.h"

namespace dunnage {
namespace {

struct HeadWords {
  const char* key;
  std::vector<std::string> words;
};

/// In order: of two keys that share a word the first has it.
const std::vector<HeadWords>& head_words() {
  static const std::vector<HeadWords> table = {
      {"code", {"code",        "id",        "no",        "nr",        "number",   "case id", "case no",
                "case number", "case code", "asset",     "asset tag", "asset id", "tag",     "label",
                "barcode",     "ref",       "reference", "codigo",    "código",   "numero",  "número"}},
      {"name",
       {"name", "case name", "description", "title", "what", "item name", "nombre", "descripción", "descripcion"}},
      {"form", {"form", "type", "kind", "case type", "container", "container type", "tipo"}},
      {"looks", {"looks", "look", "looks like", "colour", "color", "appearance", "markings"}},
      {"count", {"count", "qty", "quantity", "how many", "pieces", "pcs", "units", "number of", "amount", "cantidad"}},
      {"home",
       {"home", "shelf", "location", "where", "storage", "stored", "stored at", "store", "bay", "rack", "position",
        "lugar", "ubicación", "ubicacion"}},
      {"place", {"place", "at the show", "used at", "stage position", "goes to"}},
      {"vehicle", {"vehicle", "truck", "van", "trailer", "loads in", "vehículo", "vehiculo"}},
      {"size",
       {"size", "dimensions", "dims", "l x w x h", "lxwxh", "l w h", "measurements", "outer size", "outside dimensions",
        "medidas"}},
      {length_part, {"length", "l", "long"}},
      {width_part, {"width", "w", "wide", "depth", "d", "deep"}},
      {height_part, {"height", "h", "high"}},
      {"weighed",
       {"weighed", "weight", "mass", "wt", "gross", "gross weight", "full weight", "loaded weight", "total weight",
        "weight full", "weight loaded", "scale", "peso"}},
      {"mass", {"mass", "weight", "wt", "peso"}},
      {"empty", {"empty", "empty weight", "weight empty", "tare", "tare weight"}},
      {"grips", {"grips", "handles", "number of handles"}},
      {"hold", {"hold", "grip quality", "handle quality"}},
      {"grip_height", {"grip height", "handle height"}},
      {"wheels", {"wheels", "casters", "castors", "wheeled", "on wheels", "rolls", "ruedas"}},
      {"marks", {"marks", "handling", "warnings", "care", "handling marks"}},
      {"stack", {"stack", "max on top", "on top", "stacking", "stack limit", "max stack"}},
      {"holds", {"holds", "contents", "content", "inside", "what is inside", "contenido"}},
      {"serves", {"serves", "used for", "use"}},
      {"inspect_by", {"inspect by", "inspection", "inspection due", "next inspection", "test due", "expires"}},
      {"revision", {"revision", "label revision"}},
      {"length", {"cable length", "length"}},
      {"each", {"each", "roll length", "per roll"}},
      {"used_up", {"used up", "consumable"}},
      {"draws", {"draws", "power", "watts", "wattage"}},
  };
  return table;
}

/// Heads that say what the row is, and may be its code as well as its name.
const std::vector<std::string> case_words = {"case",      "box",     "trunk",     "flight case", "tote",     "bin",
                                             "container", "in case", "stored in", "packed in",   "lives in", "caja"};
const std::vector<std::string> item_words = {"item",  "article", "equipment", "gear",
                                             "thing", "product", "artículo",  "articulo"};

struct Head {
  std::string words;  ///< lower case, signs taken for blanks
  std::string unit;
};

bool among(const std::vector<std::string>& list, const std::string& word) {
  return std::find(list.begin(), list.end(), word) != list.end();
}

/// "Weight (lbs)" -> "weight" and "lb"; "Mass, kg", "L [cm]", "Weight lb" likewise.
Head split_head(const std::string& typed) {
  Head head;
  std::string text;
  for (const char c : utf8::lower(typed)) {
    const bool sign = std::string_view("_-.:/#()[],*?\n\r\t").find(c) != std::string_view::npos;
    text += sign ? ' ' : c;
  }
  std::vector<std::string> words = split_words(text);
  if (words.size() > 1)
    if (const auto unit = unit_symbol(words.back()); !unit.empty()) {
      head.unit = unit;
      words.pop_back();
      if (words.back() == "in") words.pop_back();  // "weight in lb"
    }
  for (const std::string& word : words) head.words += (head.words.empty() ? "" : " ") + word;
  if (head.words.empty() && typed.find('#') != std::string::npos) head.words = "no";
  return head;
}

bool is_key(const std::vector<Key>& keys, const std::string& key) {
  const std::string first = key.substr(0, key.find('.'));
  constexpr const char* bare = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_-.";
  if (key.find_first_not_of(bare) != std::string::npos) return false;
  return std::any_of(keys.begin(), keys.end(), [&](const Key& one) {
    return one.name == key || (one.name == first && one.kind == "texts by language" && key != first);
  });
}

bool is_part(const std::string& key) { return key.find(':') != std::string::npos; }

/// The key that a head means by itself; empty: none.
std::string key_of(const std::string& typed, const Head& head, const std::vector<Key>& keys) {
  if (is_key(keys, typed)) return typed;
  for (const HeadWords& entry : head_words())
    if (among(entry.words, head.words) && (is_part(entry.key) ? is_key(keys, "size") : is_key(keys, entry.key)))
      return entry.key;
  return {};
}

std::vector<IntakeColumn> understand(const CsvRow& row, const std::vector<Key>& keys) {
  std::vector<IntakeColumn> out;
  for (const Text& cell : row.cells) {
    const Head head = split_head(cell.value);
    out.push_back({cell.value, key_of(cell.value, head, keys), head.unit});
  }
  return out;
}

std::size_t meant(const std::vector<IntakeColumn>& columns) {
  return static_cast<std::size_t>(
      std::count_if(columns.begin(), columns.end(), [](const IntakeColumn& c) { return !c.key.empty(); }));
}

class Columns {
 public:
  explicit Columns(CsvHead& head) : head_(head) {}

  IntakeColumn* with(const std::string& key) {
    for (IntakeColumn& column : head_.columns)
      if (column.key == key) return &column;
    return nullptr;
  }
  IntakeColumn* headed(const std::vector<std::string>& words) {
    for (IntakeColumn& column : head_.columns)
      if (column.key.empty() && among(words, split_head(column.head).words)) return &column;
    return nullptr;
  }
  void take(IntakeColumn& column, const std::string& key, const std::string& why) {
    column.key = key;
    head_.guesses.push_back("column " + in_quotes(column.head) + " taken for " + in_quotes(key) + why);
  }

  /// A column of cases beside a column of items is a list of what lies where; either alone is the name.
  void settle_case_and_item() {
    IntakeColumn* box = headed(case_words);
    IntakeColumn* item = headed(item_words);
    if (item && !with("holds") && (box || (with("code") && with("name")))) {
      take(*item, item_part, ": one item a row, gathered by case");
      if (IntakeColumn* count = with("count")) count->key = item_count_part;
      item = nullptr;
    }
    for (IntakeColumn* column : {box, item}) {
      if (!column) continue;
      if (!with("name"))
        take(*column, "name", "");
      else if (!with("code"))
        take(*column, "code", "");
    }
  }

  /// Length is a part of a size where width and height are there too.
  void settle_size() {
    IntakeColumn* length = with(length_part) ? with(length_part) : with("length");
    if (length && with(width_part) && with(height_part) && !with("size")) {
      length->key = length_part;
      return;
    }
    for (const char* part : {length_part, width_part, height_part})
      if (IntakeColumn* column = with(part)) column->key.clear();
  }

  /// Of two columns for one key the first has it.
  void settle_doubles() {
    for (std::size_t i = 0; i < head_.columns.size(); ++i)
      for (std::size_t j = i + 1; j < head_.columns.size(); ++j)
        if (!head_.columns[i].key.empty() && head_.columns[i].key == head_.columns[j].key) {
          head_.doubles.push_back("columns " + in_quotes(head_.columns[i].head) + " and " +
                                  in_quotes(head_.columns[j].head) + " both mean " + in_quotes(head_.columns[i].key) +
                                  "; the first is taken");
          head_.columns[j].key.clear();
        }
  }

 private:
  CsvHead& head_;
};

std::string same_sign(const std::string& text) { return utf8::lower(text); }

void grant(const ColumnWishes& wishes, const CsvTable& table, const std::vector<Key>& keys, CsvHead& head,
           Diagnostics& diagnostics) {
  const Place place{table.file, 0, 0, 1};
  std::vector<std::string> heads, names;
  for (const IntakeColumn& column : head.columns) heads.push_back(column.head);
  for (const Key& key : keys) names.push_back(key.name);
  const auto known = [&](const std::string& key) {
    if (key.empty() || is_key(keys, key)) return true;
    const std::string guess = did_you_mean(key, names);
    diagnostics.error(place, "there is no key " + in_quotes(key),
                      guess.empty() ? "its keys are: " + listed(names) : guess);
    return false;
  };
  for (const auto& [wished, key] : wishes.keys) {
    if (!known(key)) continue;
    bool found = false;
    for (IntakeColumn& column : head.columns) {
      if (!key.empty() && column.key == key && same_sign(column.head) != same_sign(wished)) column.key.clear();
      if (same_sign(column.head) != same_sign(wished)) continue;
      column.key = key;
      found = true;
    }
    if (found) continue;
    const std::string guess = did_you_mean(wished, heads);
    diagnostics.error(place, "no column is headed " + in_quotes(wished),
                      guess.empty() ? "the heads are: " + listed(heads) : guess);
  }
  for (const auto& [key, unit] : wishes.units) {
    if (!known(key)) continue;
    for (IntakeColumn& column : head.columns)
      if (column.key == key || (key == "size" && is_part(column.key))) column.unit = unit;
  }
}

}  // namespace

bool headless(const std::vector<IntakeColumn>& columns, std::size_t at) {
  return at >= columns.size() || (columns[at].key.empty() && plain_signs(columns[at].head).empty());
}

CsvHead read_head(const CsvTable& table, const std::vector<Key>& keys, const ColumnWishes& wishes,
                  Diagnostics& diagnostics) {
  CsvHead head;
  std::size_t most = 0;
  for (std::size_t i = 0; i < std::min<std::size_t>(table.rows.size(), 20); ++i) {
    std::vector<IntakeColumn> columns = understand(table.rows[i], keys);
    std::size_t score = meant(columns);
    for (const auto& wish : wishes.keys)
      score += static_cast<std::size_t>(std::count_if(columns.begin(), columns.end(), [&](const IntakeColumn& c) {
        return c.key.empty() && same_sign(c.head) == same_sign(wish.first);
      }));
    score += static_cast<std::size_t>(std::count_if(columns.begin(), columns.end(), [](const IntakeColumn& c) {
      const std::string words = split_head(c.head).words;
      return c.key.empty() && (among(case_words, words) || among(item_words, words));
    }));
    if (score <= most) continue;
    most = score;
    head = {i, std::move(columns), {}, {}};
  }
  Columns columns(head);
  if (most == 0 && !table.rows.empty()) head.columns = understand(table.rows.front(), keys);
  if (!head.columns.empty()) {
    grant(wishes, table, keys, head, diagnostics);
    columns.settle_case_and_item();
    columns.settle_size();
    columns.settle_doubles();
  }
  if (!columns.with("name") && !columns.with("code"))
    diagnostics.error({table.file, 0, 0, 1}, "no row has heads that name a code or a name",
                      "head the columns in the first row (code, name, weight (lb) ...), or say --column HEAD=KEY");
  return head;
}

}  // namespace dunnage
