// SPDX-License-Identifier: MIT
// The parts that a form is built of: cells, tables with their heads, blocks that are left out when empty.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "document/context.h"

namespace dunnage {

/// A document with show, date, revision and the words of its pages; no sections yet. `title` is a key.
Document begin_document(const Context& context, const std::string& name, const std::string& title);

inline Cell text_cell(std::string text) { return {Cell::Kind::text, std::move(text), false}; }
inline Cell strong_cell(std::string text) { return {Cell::Kind::text, std::move(text), true}; }
inline Cell tick_cell() { return {Cell::Kind::tick, {}, false}; }
inline Cell blank_cell() { return {Cell::Kind::blank, {}, false}; }

/// A table of these columns; each head is a key of words, or empty for none.
block::Table make_table(const Words& words, std::initializer_list<std::pair<const char*, const char*>> columns);
bool has_column(const block::Table& table, std::string_view id);
/// Takes out one column.
void drop_column(block::Table& table, std::string_view id);
/// Takes out the columns of these ids that say nothing in any row: what nobody typed needs no room.
void drop_empty_columns(block::Table& table, std::initializer_list<std::string_view> ids);
/// The total row: texts by column, the other cells empty.
void set_total(block::Table& table, std::initializer_list<std::pair<std::string_view, std::string>> texts);

void add(Section& section, std::string id, BlockContent content);
/// Facts with a value; a fact without one is left out.
void add_fact(block::Facts& facts, std::string label, std::string value);
void add_facts(Section& section, std::string id, block::Facts facts);
/// A heading and a listing, or nothing where there are no lines. The heading's id is `id` + "-head".
void add_listing(Section& section, const std::string& id, const std::string& heading, std::vector<std::string> lines);
/// A notice, or nothing where there are no lines.
void add_notice(Section& section, const std::string& id, const std::string& word, std::vector<std::string> lines);

}  // namespace dunnage
