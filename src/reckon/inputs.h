// SPDX-License-Identifier: MIT
// What a question asks for, and what was typed for it: read once, told wrong in one go.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/range.h"
#include "base/unit.h"

namespace dunnage {

using Typed = std::vector<std::pair<std::string, std::string>>;

/// One key of a question.
struct AskedKey {
  enum class Kind {
    quantity,  ///< "27 lb", within `range`
    number,    ///< "0.9", within low and high; a per cent or degree sign may follow
    whole,     ///< "3"
    word,      ///< one of `choices`
    text,      ///< anything: the handler reads it
    sides,     ///< "10 x 10 ft", each within `range`
    pair       ///< "180 kg at 1.2 m": `range`, the word `joined`, `second`; may be given more than once
  };
  std::string_view name;
  Kind kind = Kind::quantity;
  bool needed = true;
  std::string_view says;  ///< what it is, in a few words
  std::string_view example;
  const Range* range = nullptr;
  double low = 0, high = 0;
  std::vector<std::string> choices = {};
  std::string_view joined = {};
  const Range* second = nullptr;
};

/// The values of one question, all checked. Keys asked for must be the question's own.
class Inputs {
 public:
  bool has(std::string_view key) const { return values_.find(std::string(key)) != values_.end(); }
  /// A quantity in its type; `Q{}` where it was not given.
  template <class Q>
  Q get(std::string_view key) const {
    return has(key) ? Q::from_si(value(key).number) : Q{};
  }
  template <class Q>
  std::optional<Q> maybe(std::string_view key) const {
    return has(key) ? std::optional<Q>(Q::from_si(value(key).number)) : std::nullopt;
  }
  double number(std::string_view key, double otherwise) const { return has(key) ? value(key).number : otherwise; }
  std::string word(std::string_view key, std::string_view otherwise) const {
    return has(key) ? value(key).text : std::string(otherwise);
  }
  std::pair<Length, Length> sides(std::string_view key) const;
  /// Every pair given for a key, in SI.
  std::vector<std::pair<double, double>> pairs(std::string_view key) const;

  /// In what a result is said: as what was typed.
  UnitSystem system = UnitSystem::metric;
  std::string meter = "m/s";

  struct Value {
    std::string text;
    double number = 0;
    std::vector<std::pair<double, double>> pairs;
  };
  void put(std::string_view key, Value value) { values_[std::string(key)] = std::move(value); }

 private:
  const Value& value(std::string_view key) const;
  std::map<std::string, Value> values_;
};

/// Reads what was typed against the keys. Everything wrong or missing is added to `problems`.
Inputs read_inputs(const std::vector<AskedKey>& keys, const Typed& typed, std::vector<std::string>& problems);

}  // namespace dunnage
