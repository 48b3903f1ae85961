// SPDX-License-Identifier: MIT
#include "read/toml_inline.h"

#include <algorithm>
#include <sstream>

#include "base/diagnostic.h"
#include "base/toml_quote.h"
#include "read/toml_file.h"

namespace dunnage {
namespace {

bool bare(std::string_view key) {
  return !key.empty() && key.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_-") ==
                             std::string_view::npos;
}

std::string list_text(const toml::array& list) {
  std::string out;
  for (const toml::node& entry : list) out += (out.empty() ? "" : ", ") + inline_text(entry);
  return "[" + out + "]";
}

/// toml++ keeps keys sorted; the order typed is the order of their places.
std::string table_text(const toml::table& table) {
  std::vector<std::pair<toml::source_position, std::string>> entries;
  for (const auto& [key, value] : table) {
    const std::string name = bare(key.str()) ? std::string(key.str()) : toml_quoted(key.str());
    entries.emplace_back(key.source().begin, name + " = " + inline_text(value));
  }
  std::stable_sort(entries.begin(), entries.end(), [](const auto& a, const auto& b) {
    return std::pair(a.first.line, a.first.column) < std::pair(b.first.line, b.first.column);
  });
  std::string out;
  for (const auto& entry : entries) out += (out.empty() ? " " : ", ") + entry.second;
  return "{" + out + (out.empty() ? "}" : " }");
}

}  // namespace

std::string inline_text(const toml::node& node) {
  if (const auto* table = node.as_table()) return table_text(*table);
  if (const auto* list = node.as_array()) return list_text(*list);
  if (const auto* text = node.as_string()) return toml_quoted(text->get());
  if (const auto* flag = node.as_boolean()) return flag->get() ? "true" : "false";
  std::ostringstream out;
  if (const auto* number = node.as_integer())
    out << number->get();
  else if (const auto* real = node.as_floating_point())
    out << *real;
  else if (const auto* date = node.as_date())
    out << *date;
  else if (const auto* time = node.as_time())
    out << *time;
  else if (const auto* both = node.as_date_time())
    out << *both;
  return out.str();
}

std::optional<std::string> inline_toml(std::string_view text) {
  Sources sources;
  Diagnostics unheard;
  const auto file = parse_toml("cell", "x = " + std::string(text), sources, unheard);
  if (!file || file->table.size() != 1) return std::nullopt;
  return inline_text(*file->table.get("x"));
}

}  // namespace dunnage
