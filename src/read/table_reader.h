// SPDX-License-Identifier: MIT
// A cursor over one TOML table that collects mistakes. Asking for a key is what makes it known: the keys
// asked for are the list that unknown keys are held against, and from which a schema and help can be made
// (TableReader::asked).
#pragma once

#include <toml++/toml.h>

#include <cassert>
#include <functional>
#include <initializer_list>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "base/range.h"
#include "base/unit.h"
#include "model/key.h"
#include "model/kit.h"
#include "read/toml_file.h"

namespace dunnage {

/// What all readers of one file share.
struct Reading {
  const SourceFile* file = nullptr;
  Diagnostics* diagnostics = nullptr;
  std::vector<std::string> top_keys;  ///< keys that must stand above the first section, for the hint
  /// Set: nothing is read, the keys are only learned. Every section is entered once, and every key is said to
  /// be there or not to be (read/key_list.h).
  std::optional<bool> learning;
  /// Printed words may be of several lines; what a house types of its gear and shows stands on one, on the label, in
  /// its code and in every list.
  bool several_lines = false;
};

/// The words that a key may be, and what each stands for.
template <class E>
using WordTable = std::vector<std::pair<std::string_view, E>>;

class TableReader {
 public:
  using Fill = std::function<void(TableReader&)>;

  /// `section` names the table in messages: "[[case]]", "an entry of \"holds\"".
  TableReader(const Reading& reading, const toml::table& table, std::string section, Place place);

  // Every getter notes its key as known. A wrong value is told and counts as absent.
  Text text(std::string_view key);  ///< needed, not empty
  Text code(std::string_view key);  ///< needed; a letter, then letters, digits, -
  Text text_or(std::string_view key, std::string_view otherwise = {});
  Maybe<std::string> maybe_text(std::string_view key);
  std::vector<Text> texts(std::string_view key);                   ///< a list
  std::vector<Text> texts_or_one(std::string_view key);            ///< a list or one text
  std::map<std::string, Text> texts_by_key(std::string_view key);  ///< names.es = "..."
  bool flag(std::string_view key, bool otherwise);
  Maybe<bool> maybe_flag(std::string_view key);
  int count(std::string_view key, int low, int high, int otherwise);
  Sourced<int> needed_count(std::string_view key, int low, int high);
  Maybe<int> maybe_count(std::string_view key, int low, int high);
  Maybe<double> number(std::string_view key, double low, double high);
  std::optional<Sourced<Date>> date(std::string_view key);

  /// One quantity within its range, as Q.
  template <class Q>
  Maybe<Q> quantity(std::string_view key, const Range& range);
  /// A quantity of the first range whose measure has the unit typed: { which range, SI value }.
  struct Measured {
    const Range* range;
    double si;
  };
  std::optional<Sourced<Measured>> measured(std::string_view key, std::initializer_list<const Range*> ranges);
  /// Lengths with x between, in one text.
  std::optional<Sourced<std::vector<Length>>> lengths(std::string_view key, std::size_t count, const Range& range);
  /// Length, width, height.
  Maybe<Size> size(std::string_view key, const Range& range);

  /// One word of a table; a wrong one is answered with the nearest.
  template <class E>
  std::optional<Sourced<E>> word(std::string_view key, const WordTable<E>& table);
  template <class E>
  E word(std::string_view key, const WordTable<E>& table, E otherwise);
  template <class E>
  std::vector<E> words(std::string_view key, const WordTable<E>& table);

  // A scalar or a list of them.
  std::vector<Sourced<bool>> flags_or_one(std::string_view key);
  std::vector<Sourced<double>> numbers_or_one(std::string_view key);
  std::vector<Sourced<double>> quantities_or_one(std::string_view key, const Range& range);  ///< SI

  /// Calls `fill` for the table under `key` and reports its unknown keys. False when there is none.
  bool table(std::string_view key, std::string section, const Fill& fill);
  /// Calls `fill` for each table of the list under `key`, likewise. An entry that is no table is told.
  void tables(std::string_view key, std::string section, const Fill& fill);
  /// The entries of a list: `an entry of "holds"`.
  void entries(std::string_view key, const Fill& fill);
  /// The same; a table by itself is taken for a list of one.
  void entries_or_one(std::string_view key, const Fill& fill);
  /// Notes a key as known without reading it.
  void ignore(std::string_view key) { find(key, ""); }

  bool has(std::string_view key) const { return reading_.learning ? *reading_.learning : table_.contains(key); }
  /// True where keys are learned and nothing is read.
  bool learning() const { return reading_.learning.has_value(); }
  /// Marks a key that was asked for as one that must be there.
  void needs(std::string_view key);
  bool is_text(std::string_view key) const;
  bool is_list_or_table(std::string_view key) const;
  /// Every key typed, in the order typed.
  std::vector<Text> keys() const;
  /// Where the value of `key` stands; the table's place when absent.
  Place place_of_value(std::string_view key) const;
  const Place& place() const { return place_; }
  const std::string& section() const { return section_; }
  void error(Place place, std::string cause, std::string hint = {});
  Diagnostics& diagnostics() { return *reading_.diagnostics; }
  const std::vector<Key>& asked() const { return asked_; }

  /// Tells every key that nobody asked for. Called once, by whoever made the reader.
  void finish();

 private:
  using Node = toml::node;
  const Node* find(std::string_view key, std::string kind, bool needed = false);
  /// Enters the section of the key asked for last, to learn its keys.
  void learn(std::string section, const Fill& fill);
  void missing(std::string_view key, const std::string& example);
  void wrong_type(const Node& node, std::string_view key, const std::string& wanted, std::string hint);
  Place at(const Node& node) const { return place_of(node.source(), reading_.file); }
  std::optional<Text> text_of(const Node& node, std::string_view key);
  std::optional<Sourced<bool>> flag_of(const Node& node, std::string_view key);
  std::optional<Sourced<double>> number_of(const Node& node, std::string_view key);
  std::optional<Sourced<double>> quantity_of(const Node& node, std::string_view key, const Range& range);
  std::optional<Sourced<double>> si(std::string_view key, const Range& range);
  void no_unit(const Node& node, std::string_view key, const Range& range);
  bool in_range(Place place, std::string_view key, double si, const Range& range);
  void not_a_word(const Text& typed, std::string_view key, const std::vector<std::string>& known);
  /// Calls `take` for each entry of the list under `key`, or for the one value there.
  void each(std::string_view key, bool one_allowed, std::string kind, const std::function<void(const Node&)>& take);

  const Reading& reading_;
  const toml::table& table_;
  std::string section_;
  Place place_;
  std::vector<Key> asked_;
};

/// Reads a whole file: calls `fill` on its top table, then tells unknown keys.
void read_top(const TomlFile& file, std::vector<std::string> top_keys, Diagnostics& diagnostics,
              const TableReader::Fill& fill, bool several_lines = false);

template <class Q>
Maybe<Q> TableReader::quantity(std::string_view key, const Range& range) {
  static_assert(measure_of<Q>.has_value());
  assert(*measure_of<Q> == range.measure && "the range is of the quantity's measure");
  const auto value = si(key, range);
  if (!value) return std::nullopt;
  return Sourced<Q>{Q::from_si(value->value), value->place};
}

template <class E>
std::optional<Sourced<E>> TableReader::word(std::string_view key, const WordTable<E>& table) {
  const Maybe<std::string> typed = maybe_text(key);
  std::vector<std::string> known;
  for (const auto& [spelling, value] : table) {
    if (typed && spelling == typed->value) return Sourced<E>{value, typed->place};
    known.emplace_back(spelling);
  }
  asked_.back().words = known;
  if (!typed) return std::nullopt;
  not_a_word(*typed, key, known);
  return std::nullopt;
}

template <class E>
E TableReader::word(std::string_view key, const WordTable<E>& table, E otherwise) {
  const auto found = word(key, table);
  return found ? found->value : otherwise;
}

template <class E>
std::vector<E> TableReader::words(std::string_view key, const WordTable<E>& table) {
  std::vector<E> out;
  std::vector<std::string> known;
  for (const auto& [spelling, value] : table) known.emplace_back(spelling);
  for (const Text& typed : texts(key)) {
    bool found = false;
    for (const auto& [spelling, value] : table)
      if (spelling == typed.value) {
        out.push_back(value);
        found = true;
      }
    if (!found) not_a_word(typed, key, known);
  }
  asked_.back().words = known;
  return out;
}

}  // namespace dunnage
