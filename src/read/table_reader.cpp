// SPDX-License-Identifier: MIT
// Typed values out of TOML nodes. What is wrong is told at the value; what is unknown, at the key.
#include "read/table_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "base/nearest.h"
#include "read/unseen_sign.h"

namespace dunnage {
namespace {

/// What a node is, in words.
std::string kind_of(const toml::node& node) {
  switch (node.type()) {
    case toml::node_type::string:
      return "a text";
    case toml::node_type::integer:
      return "a number";
    case toml::node_type::floating_point:
      return "a number";
    case toml::node_type::boolean:
      return "true or false";
    case toml::node_type::array:
      return node.is_array_of_tables() ? "a list of sections" : "a list";
    case toml::node_type::table:
      return "a section";
    case toml::node_type::date:
      return "a date";
    case toml::node_type::time:
      return "a time";
    case toml::node_type::date_time:
      return "a date and time";
    case toml::node_type::none:
      break;
  }
  return "nothing";
}

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

bool well_formed_code(std::string_view code) {
  if (code.empty() || !is_letter(code.front())) return false;
  return std::all_of(code.begin(), code.end(),
                     [](char c) { return is_letter(c) || (c >= '0' && c <= '9') || c == '-'; });
}

}  // namespace

TableReader::TableReader(const Reading& reading, const toml::table& table, std::string section, Place place)
    : reading_(reading), table_(table), section_(std::move(section)), place_(place) {}

void TableReader::error(Place place, std::string cause, std::string hint) {
  reading_.diagnostics->error(place, std::move(cause), std::move(hint));
}

const toml::node* TableReader::find(std::string_view key, std::string kind, bool needed) {
  asked_.push_back({std::string(key), std::move(kind), needed, false, {}, {}, {}, {}});
  return table_.get(key);
}

void TableReader::learn(std::string section, const Fill& fill) {
  static const toml::table nothing;
  TableReader inner(reading_, nothing, std::move(section), place_);
  fill(inner);
  asked_.back().inner = inner.asked_;
}

void TableReader::needs(std::string_view key) {
  for (Key& one : asked_)
    if (one.name == key) one.needed = true;
}

void TableReader::missing(std::string_view key, const std::string& example) {
  error(place_, section_ + " has no " + in_quotes(key), fmt::format("add {} = {}", key, example));
}

void TableReader::wrong_type(const Node& node, std::string_view key, const std::string& wanted, std::string hint) {
  error(at(node), fmt::format("{} must be {}, not {}", in_quotes(key), wanted, kind_of(node)), std::move(hint));
}

std::optional<Text> TableReader::text_of(const Node& node, std::string_view key) {
  const auto* text = node.as_string();
  if (!text) {
    wrong_type(node, key, "a text", fmt::format("put it in double quotes: {} = \"...\"", key));
    return std::nullopt;
  }
  const std::optional<char32_t> sign = unseen_sign(text->get());
  if (!sign || (*sign == '\n' && reading_.several_lines)) return Text{text->get(), at(node)};
  if (*sign == '\n')
    error(at(node), in_quotes(key) + " is of several lines",
          "write it on one line: a blank or a comma parts it as well");
  else
    error(at(node), in_quotes(key) + " holds a sign that does not print",
          *sign < 0x80 ? "type it again, without \\u, \\b or \\t"
                       : fmt::format("it is U+{:04X}, which nobody sees: type the text again instead of pasting it",
                                     static_cast<unsigned>(*sign)));
  return std::nullopt;
}

Text TableReader::text(std::string_view key) {
  const Node* node = find(key, "text", true);
  if (!node) {
    missing(key, "\"...\"");
    return {};
  }
  const auto found = text_of(*node, key);
  if (found && found->value.find_first_not_of(" \t\r\n") == std::string::npos)
    error(found->place, in_quotes(key) + " is empty", fmt::format("write {} = \"...\"", key));
  return found.value_or(Text{});
}

Text TableReader::code(std::string_view key) {
  const Text typed = text(key);
  if (!typed.value.empty() && !well_formed_code(typed.value))
    error(typed.place, in_quotes(typed.value) + " cannot be a code",
          "a code begins with a letter and has only letters A to Z, digits and -");
  return typed;
}

Maybe<std::string> TableReader::maybe_text(std::string_view key) {
  const Node* node = find(key, "text");
  return node ? text_of(*node, key) : std::nullopt;
}

Text TableReader::text_or(std::string_view key, std::string_view otherwise) {
  return maybe_text(key).value_or(Text{std::string(otherwise), {}});
}

void TableReader::each(std::string_view key, bool one_allowed, std::string kind,
                       const std::function<void(const Node&)>& take) {
  const Node* node = find(key, std::move(kind));
  asked_.back().or_list = one_allowed;
  if (!node) return;
  if (const auto* list = node->as_array()) {
    for (const Node& entry : *list) take(entry);
  } else if (one_allowed) {
    take(*node);
  } else {
    const auto* one = node->as_string();
    wrong_type(*node, key, "a list",
               fmt::format("put it in brackets: {} = [{}]", key, one ? in_quotes(one->get()) : "..."));
  }
}

std::vector<Text> TableReader::texts(std::string_view key) {
  std::vector<Text> out;
  each(key, false, "list of texts", [&](const Node& node) {
    if (auto text = text_of(node, key)) out.push_back(*text);
  });
  return out;
}

std::vector<Text> TableReader::texts_or_one(std::string_view key) {
  std::vector<Text> out;
  each(key, true, "text", [&](const Node& node) {
    if (auto text = text_of(node, key)) out.push_back(*text);
  });
  return out;
}

std::map<std::string, Text> TableReader::texts_by_key(std::string_view key) {
  std::map<std::string, Text> out;
  const Node* node = find(key, "texts by language");
  if (!node) return out;
  const auto* table = node->as_table();
  if (!table) {
    wrong_type(*node, key, "given by language", fmt::format("write {}.es = \"...\"", key));
    return out;
  }
  for (const auto& [language, value] : *table)
    if (const auto text = text_of(value, language.str())) out.emplace(language.str(), *text);
  return out;
}

std::optional<Sourced<bool>> TableReader::flag_of(const Node& node, std::string_view key) {
  if (const auto* value = node.as_boolean()) return Sourced<bool>{value->get(), at(node)};
  wrong_type(node, key, "true or false", fmt::format("write {} = true or {} = false, without quotes", key, key));
  return std::nullopt;
}

Maybe<bool> TableReader::maybe_flag(std::string_view key) {
  const Node* node = find(key, "true or false");
  return node ? flag_of(*node, key) : std::nullopt;
}

bool TableReader::flag(std::string_view key, bool otherwise) {
  const auto found = maybe_flag(key);
  return found ? found->value : otherwise;
}

Maybe<int> TableReader::maybe_count(std::string_view key, int low, int high) {
  const Node* node = find(key, "whole number");
  asked_.back().low = low;
  asked_.back().high = high;
  if (!node) return std::nullopt;
  const auto* value = node->as_integer();
  if (!value) {
    wrong_type(*node, key, "a whole number", fmt::format("write {} = {}", key, std::max(low, 1)));
    return std::nullopt;
  }
  if (value->get() < low || value->get() > high) {
    error(at(*node), in_quotes(key) + " is out of range", fmt::format("a whole number from {} to {}", low, high));
    return std::nullopt;
  }
  return Sourced<int>{static_cast<int>(value->get()), at(*node)};
}

int TableReader::count(std::string_view key, int low, int high, int otherwise) {
  const auto found = maybe_count(key, low, high);
  return found ? found->value : otherwise;
}

Sourced<int> TableReader::needed_count(std::string_view key, int low, int high) {
  const auto found = maybe_count(key, low, high);
  asked_.back().needed = true;
  if (!has(key)) missing(key, std::to_string(std::max(low, 1)));
  return found.value_or(Sourced<int>{low, {}});
}

std::optional<Sourced<double>> TableReader::number_of(const Node& node, std::string_view key) {
  // As a double the library gives no integer that it would have to round.
  std::optional<double> number;
  if (const auto* whole = node.as_integer()) number = static_cast<double>(whole->get());
  if (const auto* real = node.as_floating_point()) number = real->get();
  if (number && std::isfinite(*number)) return Sourced<double>{*number, at(node)};
  if (number) {
    error(at(node), in_quotes(key) + " must be a finite number", fmt::format("write digits: {} = 20", key));
    return std::nullopt;
  }
  wrong_type(node, key, "a number", fmt::format("write {} = 20, without quotes or unit", key));
  return std::nullopt;
}

Maybe<double> TableReader::number(std::string_view key, double low, double high) {
  const Node* node = find(key, "number");
  asked_.back().low = low;
  asked_.back().high = high;
  if (!node) return std::nullopt;
  const auto found = number_of(*node, key);
  if (found && (!(found->value >= low && found->value <= high) || is_too_small(found->value))) {
    error(found->place, in_quotes(key) + " is out of range",
          "a number from " + plain(low, 6) + " to " + plain(high, 6));
    return std::nullopt;
  }
  return found;
}

std::optional<Sourced<Date>> TableReader::date(std::string_view key) {
  const Node* node = find(key, "date");
  if (!node) return std::nullopt;
  const auto* value = node->as_date();
  if (!value) {
    wrong_type(*node, key, "a date", fmt::format("write year, month, day without quotes: {} = 2027-06-19", key));
    return std::nullopt;
  }
  return Sourced<Date>{{value->get().year, value->get().month, value->get().day}, at(*node)};
}

std::vector<Sourced<bool>> TableReader::flags_or_one(std::string_view key) {
  std::vector<Sourced<bool>> out;
  each(key, true, "true or false", [&](const Node& node) {
    if (auto found = flag_of(node, key)) out.push_back(*found);
  });
  return out;
}

std::vector<Sourced<double>> TableReader::numbers_or_one(std::string_view key) {
  std::vector<Sourced<double>> out;
  each(key, true, "number", [&](const Node& node) {
    if (auto found = number_of(node, key)) out.push_back(*found);
  });
  return out;
}

void TableReader::not_a_word(const Text& typed, std::string_view key, const std::vector<std::string>& known) {
  std::string hint = did_you_mean(typed.value, known);
  if (hint.empty()) hint = "one of: " + listed(known);
  error(typed.place, fmt::format("{} cannot be {}", in_quotes(key), in_quotes(typed.value)), hint);
}

bool TableReader::table(std::string_view key, std::string section, const Fill& fill) {
  const Node* node = find(key, "section");
  if (learning()) learn(section, fill);
  if (!node) return false;
  const auto* table = node->as_table();
  if (!table) {
    if (node->is_array_of_tables())
      error(at(*node->as_array()->get(0)), fmt::format("there is only one {}", section),
            fmt::format("write {} once, with one pair of brackets", section));
    else
      wrong_type(*node, key, "a section", {});
    return false;
  }
  TableReader inner(reading_, *table, std::move(section), at(*node));
  fill(inner);
  inner.finish();
  return true;
}

void TableReader::tables(std::string_view key, std::string section, const Fill& fill) {
  const Node* node = find(key, "list of sections");
  if (learning()) learn(section, fill);
  if (!node) return;
  const auto* list = node->as_array();
  if (!list) {
    const bool one_pair = node->is_table() && section.starts_with("[[");
    wrong_type(*node, key, one_pair ? "a list of sections" : "a list",
               one_pair ? fmt::format("write {} for each, with two pairs of brackets", section)
                        : fmt::format("write {} = [{{ ... }}]", key));
    return;
  }
  for (const Node& entry : *list) {
    const auto* table = entry.as_table();
    if (!table) {
      error(at(entry), fmt::format("{} must stand in braces, not be {}", section, kind_of(entry)),
            fmt::format("write {} = [{{ ... }}, {{ ... }}]", key));
      continue;
    }
    TableReader inner(reading_, *table, section, at(entry));
    fill(inner);
    inner.finish();
  }
}

void TableReader::entries(std::string_view key, const Fill& fill) {
  tables(key, fmt::format("an entry of {}", in_quotes(key)), fill);
}

void TableReader::entries_or_one(std::string_view key, const Fill& fill) {
  const Node* node = table_.get(key);
  if (node && node->is_table())
    table(key, fmt::format("an entry of {}", in_quotes(key)), fill);
  else
    entries(key, fill);
  asked_.back().or_list = true;
}

bool TableReader::is_text(std::string_view key) const {
  const Node* node = table_.get(key);
  return node && node->is_string();
}

bool TableReader::is_list_or_table(std::string_view key) const {
  const Node* node = table_.get(key);
  return node && (node->is_array() || node->is_table());
}

std::vector<Text> TableReader::keys() const {
  std::vector<Text> out;
  for (const auto& [key, value] : table_)
    out.push_back({std::string(key.str()), place_of(key.source(), reading_.file)});
  std::sort(out.begin(), out.end(), [](const Text& a, const Text& b) {
    return std::pair(a.place.line, a.place.column) < std::pair(b.place.line, b.place.column);
  });
  return out;
}

Place TableReader::place_of_value(std::string_view key) const {
  const Node* node = table_.get(key);
  return node ? at(*node) : place_;
}

void TableReader::finish() {
  std::vector<std::string> known;
  for (const Key& one : asked_)
    if (std::find(known.begin(), known.end(), one.name) == known.end()) known.push_back(one.name);
  for (const Text& key : keys()) {
    if (std::find(known.begin(), known.end(), key.value) != known.end()) continue;
    std::string hint = did_you_mean(key.value, known);
    const auto& top = reading_.top_keys;
    if (std::find(top.begin(), top.end(), key.value) != top.end() && section_.starts_with("["))
      hint = in_quotes(key.value) + " belongs at the top of the file, above the first section";
    if (hint.empty()) hint = "its keys are: " + listed(known);
    error(key.place, fmt::format("{} is not a key of {}", in_quotes(key.value), section_), hint);
  }
}

void read_top(const TomlFile& file, std::vector<std::string> top_keys, Diagnostics& diagnostics,
              const TableReader::Fill& fill, bool several_lines) {
  const Reading reading{file.source, &diagnostics, std::move(top_keys), {}, several_lines};
  TableReader top(reading, file.table, "the top of the file", {file.source, 1, 1, 1});
  fill(top);
  top.finish();
}

}  // namespace dunnage
