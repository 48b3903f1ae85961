// SPDX-License-Identifier: MIT
#include "document/two_languages.h"

#include <cassert>
#include <utility>

namespace dunnage {
namespace {

/// Overloads of one name, which find each other in any order.
struct Laid {
  static void pair(std::string& first, const std::string& second) { first = in_two(first, second); }

  /// Two short lines run on as one, so that a cell in two languages is no higher than it must be.
  static std::string run_on(std::string text) {
    for (std::size_t at = 0; (at = text.find('\n', at)) != std::string::npos; at += 2) text.replace(at, 1, "; ");
    return text;
  }
  static void pair(Cell& first, const Cell& second) {
    if (first.text != second.text) first.text = in_two(run_on(first.text), run_on(second.text));
  }
  static void pair(block::Fact& first, const block::Fact& second) {
    pair(first.label, second.label);
    pair(first.value, second.value);
  }

  template <class T>
  static void pair(std::vector<T>& first, const std::vector<T>& second) {
    assert(first.size() == second.size() && "both languages were written from the same things");
    for (std::size_t i = 0; i < first.size(); ++i) pair(first[i], second[i]);
  }

  static void pair(Row& first, const Row& second) {
    std::vector<Cell> cells = first.unpacked();
    pair(cells, second.unpacked());
    first = Row(cells);
  }
  static void pair(Group& first, const Group& second) {
    pair(first.title, second.title);
    pair(first.rows, second.rows);
  }

  /// What a block of each kind says; a picture or a code has nothing to pair.
  template <class Kind>
  static void pair(Kind& first, const Kind& second) {
    if constexpr (requires { first.text; } && !std::is_same_v<Kind, block::Qr>) pair(first.text, second.text);
    if constexpr (requires { first.word; }) pair(first.word, second.word);
    if constexpr (requires { first.words; }) pair(first.words, second.words);
    if constexpr (requires { first.lines; }) pair(first.lines, second.lines);
    if constexpr (requires { first.labels; }) pair(first.labels, second.labels);
    if constexpr (requires { first.facts; }) pair(first.facts, second.facts);
    if constexpr (requires { first.statement; }) pair(first.statement, second.statement);
    if constexpr (requires { first.fields; }) pair(first.fields, second.fields);
    if constexpr (requires { first.move_word; }) pair(first.move_word, second.move_word);
    if constexpr (requires { first.lift_word; }) pair(first.lift_word, second.lift_word);
  }

  static void pair(block::Table& first, const block::Table& second) {
    assert(first.columns == second.columns && "both languages were written from the same things");
    for (auto& [column, head] : first.heads)
      if (const auto other = second.heads.find(column); other != second.heads.end()) pair(head, other->second);
    pair(first.groups, second.groups);
    pair(first.total, second.total);
  }

  static void pair(Block& first, const Block& second) {
    assert(first.id == second.id && first.content.index() == second.content.index());
    std::visit(
        [&](auto& content) {
          using Content = std::decay_t<decltype(content)>;
          pair(content, std::get<Content>(second.content));
        },
        first.content);
  }

  static void pair(Section& first, const Section& second) {
    pair(first.recipient, second.recipient);
    pair(first.blocks, second.blocks);
  }
};

}  // namespace

Document in_two_languages(Document first, const Document& second) {
  Laid::pair(first.title, second.title);
  Laid::pair(first.date, second.date);
  Laid::pair(first.revision, second.revision);
  Laid::pair(first.page_words, second.page_words);
  Laid::pair(first.continued, second.continued);
  Laid::pair(first.sections, second.sections);
  return first;
}

Document in_two_parts(Document first, const Document& second) {
  for (Section section : second.sections) {
    section.recipient = section.recipient.empty() ? second.title : second.title + ": " + section.recipient;
    first.sections.push_back(std::move(section));
  }
  if (second.revision != first.revision) first.revision += " / " + second.revision;
  return first;
}

Skipped in_two_languages(const Skipped& first, const Skipped& second) {
  return {in_two(first.document, second.document), in_two(first.reason, second.reason)};
}

}  // namespace dunnage
