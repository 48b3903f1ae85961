// SPDX-License-Identifier: MIT
#include "read/case_rows.h"

#include <algorithm>
#include <map>
#include <set>

#include "read/toml_file.h"
#include "read/toml_inline.h"

namespace dunnage {
namespace {

using Cells = std::map<std::string, std::string>;

/// A text that looks like a list would come back as one: it is kept in quotes.
std::string cell_of(const toml::node& node) {
  const auto* text = node.as_string();
  return text ? text->get() : inline_text(node);
}

Cells cells_of(const toml::table& table) {
  Cells out;
  for (const auto& [key, value] : table) {
    const toml::table* by_language = key.str() == "names" ? value.as_table() : nullptr;
    if (!by_language) {
      out[std::string(key.str())] = cell_of(value);
      continue;
    }
    for (const auto& [language, name] : *by_language) out["names." + std::string(language.str())] = cell_of(name);
  }
  return out;
}

std::vector<std::string> columns_of(const std::vector<Cells>& rows, const std::string& section) {
  std::set<std::string> used;
  for (const Cells& row : rows)
    for (const auto& [key, cell] : row) used.insert(key);
  std::vector<std::string> out;
  for (const Key& key : keys_in_section(section))
    for (const std::string& name : used)
      if (name == key.name || (key.name == "names" && name.starts_with("names."))) out.push_back(name);
  return out;
}

}  // namespace

std::vector<std::vector<std::string>> section_rows(const std::vector<NamedText>& files, const std::string& section,
                                                   Sources& sources, Diagnostics& diagnostics) {
  std::vector<Cells> rows;
  for (const auto& [name, text] : files) {
    const auto file = parse_toml(name, text, sources, diagnostics);
    const toml::node* list = file ? file->table.get(section) : nullptr;
    if (!list || !list->as_array()) continue;
    for (const toml::node& entry : *list->as_array())
      if (const toml::table* table = entry.as_table()) rows.push_back(cells_of(*table));
  }
  std::vector<std::vector<std::string>> out = {columns_of(rows, section)};
  for (Cells& row : rows) {
    std::vector<std::string> cells;
    for (const std::string& column : out.front()) cells.push_back(row[column]);
    out.push_back(std::move(cells));
  }
  return out;
}

}  // namespace dunnage
