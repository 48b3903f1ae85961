// SPDX-License-Identifier: MIT
// The ways in which owned pieces can serve one demand: one piece, one whole case, or lengths joined.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "base/quantity.h"
#include "model/catalogue.h"
#include "model/plan.h"

namespace dunnage {

/// One way to serve one piece of demand.
struct Option {
  std::vector<std::pair<int, int>> units;   ///< cases and how many whole units of each
  std::vector<std::pair<int, int>> pieces;  ///< items and how many of each
  Length waste;                             ///< length beyond what is asked
};

/// What is asked for, apart from how often.
struct Asked {
  std::string what;
  Way way = Way::each;
  Maybe<Length> length;
  Maybe<Mass> bears;
  std::string unit;
};

/// Pieces of these kinds put end to end until they reach: as many ways as to name them one by one would be too many.
struct Chain {
  struct Kind {
    int item, case_index;  ///< a piece of an item, or, with item -1, a whole unit of a case
    Length length;
  };
  std::vector<Kind> kinds;
  int most = 0;    ///< pieces in one; 0: any number
  int joint = -1;  ///< the item of which each joint takes one; -1: none
};

/// All ways to serve one piece: those of `options`, and whatever a chain comes to.
struct Servings {
  std::vector<Option> options;
  std::vector<Chain> chains;
};

/// Every way to serve one piece, least waste first, then fewest pieces, then order of code. With a length: single
/// pieces that reach, and the smallest sets of joined pieces that do (at most 4 pieces, joined only as the items
/// say). Laid: pieces of any kinds end to end. Measured: each item that is used up. None is left out: where joined
/// sets are too many to name, a chain stands for them.
Servings servings_of(const Catalogue& catalogue, const Asked& asked);

/// Whole metres or litres that a content line still holds (all full where `left` is not given), rounded down.
double measure_left(const Item& item, const Content& content);

}  // namespace dunnage
