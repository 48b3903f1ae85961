// SPDX-License-Identifier: MIT
// Stock files to stocks.
#include "read/stock_file.h"

#include "read/key_list.h"
#include "read/table_reader.h"

namespace dunnage {
namespace {

constexpr Paper hair = 0.01 * unit::paper_mm;

/// Two lengths of a table, such as width and height; both are needed.
void read_pair(TableReader& top, const char* key, const char* first, const char* second, Paper& a, Paper& b) {
  const bool found = top.table(key, std::string(key), [&](TableReader& pair) {
    const auto side = [&](const char* name, Paper& into) {
      if (const auto given = pair.quantity<Paper>(name, range::paper_length))
        into = given->value;
      else if (!pair.has(name))
        pair.error(pair.place(), std::string("\"") + key + "\" has no \"" + name + "\"",
                   std::string("add ") + name + " = \"... mm\"");
    };
    side(first, a);
    side(second, b);
  });
  if (!found && !top.has(key))
    top.error(top.place(), std::string("the stock has no \"") + key + "\"",
              std::string("add ") + key + " = { " + first + " = \"... mm\", " + second + " = \"... mm\" }");
}

/// Labels that overlap each other or the edge of the page cannot be printed.
void check_geometry(TableReader& top, const Stock& stock) {
  if (stock.label_width <= stock.inner * 2 || stock.label_height <= stock.inner * 2)
    top.error(top.place_of_value("label"), "the label has no room inside its margin \"inner\"",
              "make the label larger or inner smaller");
  if ((stock.across > 1 && stock.pitch_x < stock.label_width - hair) ||
      (stock.down > 1 && stock.pitch_y < stock.label_height - hair))
    top.error(top.place_of_value("pitch"), "the labels overlap: the pitch is smaller than the label",
              "the pitch is from one label's edge to the same edge of the next");
  const Paper right = stock.left + stock.pitch_x * (stock.across - 1) + stock.label_width;
  const Paper bottom = stock.top + stock.pitch_y * (stock.down - 1) + stock.label_height;
  if (right > stock.page_width + hair || bottom > stock.page_height + hair)
    top.error(top.place_of_value("page"), "the labels reach beyond the page",
              "they end at " + plain(right / unit::paper_mm, 2) + " mm x " + plain(bottom / unit::paper_mm, 2) + " mm");
}

void read_keys(TableReader& top, Stock& stock) {
  const auto length = [&](const char* key, Paper& into) {
    if (const auto given = top.quantity<Paper>(key, range::paper_length)) into = given->value;
  };
  stock.says = top.text("says").value;
  stock.roll = top.flag("roll", false);
  const Text layout = top.text("layout");
  stock.layout = layout.value;
  stock.layout_place = layout.place;
  stock.dpi = top.count("dpi", 72, 4800, 300);
  stock.across = top.count("across", 1, 100, 1);
  stock.down = top.count("down", 1, 100, 1);
  read_pair(top, "page", "width", "height", stock.page_width, stock.page_height);
  read_pair(top, "label", "width", "height", stock.label_width, stock.label_height);
  stock.pitch_x = stock.label_width;
  stock.pitch_y = stock.label_height;
  if (top.has("pitch")) read_pair(top, "pitch", "x", "y", stock.pitch_x, stock.pitch_y);
  length("left", stock.left);
  length("top", stock.top);
  length("inner", stock.inner);
}

std::optional<Stock> from_file(std::string name, const TomlFile& file, Diagnostics& diagnostics) {
  const std::size_t errors = diagnostics.errors();
  Stock stock;
  stock.name = std::move(name);
  read_top(file, {}, diagnostics, [&](TableReader& top) {
    read_keys(top, stock);
    if (diagnostics.errors() == errors) check_geometry(top, stock);
  });
  if (diagnostics.errors() > errors) return std::nullopt;
  return stock;
}

}  // namespace

std::optional<Stock> read_stock(std::string name, std::string file, std::string text, Sources& sources,
                                Diagnostics& diagnostics) {
  const auto parsed = parse_toml(std::move(file), std::move(text), sources, diagnostics);
  return parsed ? from_file(std::move(name), *parsed, diagnostics) : std::nullopt;
}

std::optional<Stock> load_stock(const std::filesystem::path& path, Sources& sources, Diagnostics& diagnostics,
                                Place named_at) {
  const auto parsed = load_toml(path, sources, diagnostics, named_at);
  return parsed ? from_file(path.stem().string(), *parsed, diagnostics) : std::nullopt;
}

std::vector<Key> keys_of_a_stock() {
  return learn_keys([](TableReader& top) {
    Stock stock;
    read_keys(top, stock);
  });
}

}  // namespace dunnage
