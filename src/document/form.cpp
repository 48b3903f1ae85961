// SPDX-License-Identifier: MIT
#include "document/form.h"

#include <algorithm>
#include <cassert>

#include "document/phrase.h"

namespace dunnage {

Document begin_document(const Context& context, const std::string& name, const std::string& title) {
  const Words& words = context.words;
  Document document;
  document.name = name;
  document.title = words(title);
  document.show = context.show.title.value;
  document.date = context.show.date ? date_words(words, context.show.date->value) : words("page.no-date");
  document.revision = words.say("page.revision", {{"revision", context.revision}});
  if (!words.read_by_native) document.revision = joined({document.revision, words("page.not-read")}, ". ");
  document.page_words = words("page.of");
  document.continued = words("page.continued");
  document.more = words("page.more");
  document.language = words.language;
  return document;
}

block::Table make_table(const Words& words, std::initializer_list<std::pair<const char*, const char*>> columns) {
  block::Table table;
  for (const auto& [id, head] : columns) {
    table.columns.emplace_back(id);
    table.heads[id] = *head ? words(head) : std::string();
  }
  return table;
}

namespace {

std::size_t column_at(const block::Table& table, std::string_view id) {
  const auto column = std::find(table.columns.begin(), table.columns.end(), id);
  assert(column != table.columns.end() && "the table has this column");
  return static_cast<std::size_t>(column - table.columns.begin());
}

Row without(const Row& row, std::ptrdiff_t column) {
  std::vector<Cell> cells = row.unpacked();
  cells.erase(cells.begin() + column);
  return Row(cells);
}

}  // namespace

bool has_column(const block::Table& table, std::string_view id) {
  return std::find(table.columns.begin(), table.columns.end(), id) != table.columns.end();
}

void drop_column(block::Table& table, std::string_view id) {
  const auto at = static_cast<std::ptrdiff_t>(column_at(table, id));
  table.heads.erase(std::string(id));
  table.columns.erase(table.columns.begin() + at);
  for (Group& group : table.groups)
    for (Row& row : group.rows) row = without(row, at);
  if (!table.total.empty()) table.total = without(table.total, at);
}

void drop_empty_columns(block::Table& table, std::initializer_list<std::string_view> ids) {
  for (const std::string_view id : ids) {
    const std::size_t at = column_at(table, id);
    bool said = false;
    for (const Group& group : table.groups)
      for (const Row& row : group.rows) said = said || !row.cell(at).text.empty();
    if (!said) drop_column(table, id);
  }
}

void set_total(block::Table& table, std::initializer_list<std::pair<std::string_view, std::string>> texts) {
  std::vector<Cell> total(table.columns.size());
  for (const auto& [id, text] : texts) total[column_at(table, id)] = strong_cell(text);
  table.total = Row(total);
}

void add(Section& section, std::string id, BlockContent content) {
  section.blocks.push_back({std::move(id), std::move(content)});
}

void add_fact(block::Facts& facts, std::string label, std::string value) {
  if (!value.empty()) facts.facts.push_back({std::move(label), std::move(value)});
}

void add_facts(Section& section, std::string id, block::Facts facts) {
  if (!facts.facts.empty()) add(section, std::move(id), std::move(facts));
}

void add_listing(Section& section, const std::string& id, const std::string& heading, std::vector<std::string> lines) {
  if (lines.empty()) return;
  add(section, id + "-head", block::Heading{heading});
  add(section, id, block::Listing{std::move(lines)});
}

void add_notice(Section& section, const std::string& id, const std::string& word, std::vector<std::string> lines) {
  if (!lines.empty()) add(section, id, block::Notice{word, std::move(lines)});
}

}  // namespace dunnage
