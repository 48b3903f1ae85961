// SPDX-License-Identifier: MIT
// A code that was typed must name something; a wrong one is answered with the nearest that does.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "model/catalogue.h"
#include "model/show.h"

namespace dunnage {

/// What there is beside kit and show: names that [house] may list. Empty: not checked.
struct Surroundings {
  std::vector<std::string> documents = {}, languages = {}, stocks = {};
};

class References {
 public:
  References(const Catalogue& catalogue, Diagnostics& diagnostics);

  // Each tells at the place of `typed` when nothing bears that code, and says whether something does.
  bool item(const Text& typed) const;
  bool box(const Text& typed) const;           ///< a case
  bool piece(const Text& typed) const;         ///< a case or one unit of it
  bool word(const Text& typed) const;          ///< an item, a case or a serves word
  bool word_or_unit(const Text& typed) const;  ///< the same or one unit of a case
  bool structure(const Text& typed) const;
  bool structure_or_kind(const Text& typed) const;
  /// A vehicle of the kit; where the kit has none, vehicles are free words.
  bool vehicle(const Text& typed) const;

  /// One of `known`, else told: `cause`, with the nearest, or with `otherwise`.
  bool one_of(const Text& typed, const std::vector<std::string>& known, const std::string& cause,
              const std::string& otherwise) const;
  /// Names given once each; a second is told with the first beside it. `what`: "place".
  void once_each(const std::vector<Text>& names, const std::string& what,
                 const std::string& hint = "change one of the two") const;

  const Catalogue& catalogue() const { return catalogue_; }
  Diagnostics& diagnostics() const { return diagnostics_; }
  /// Units of a case's code, or the one of a unit's code.
  std::vector<int> units_of(const std::string& code) const;

 private:
  const Catalogue& catalogue_;
  Diagnostics& diagnostics_;
  /// What may be named, sorted; made when a code is not found, which is seldom.
  struct Known {
    std::vector<std::string> items, cases, pieces, words, words_and_units;
  };
  const Known& known() const;
  mutable std::optional<Known> known_;
  std::vector<std::string> structures_, vehicles_;
};

}  // namespace dunnage
