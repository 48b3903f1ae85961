// SPDX-License-Identifier: MIT
// The ways in which owned pieces can serve one demand: one piece, one whole case, or lengths joined.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "base/quantity.h"
#include "model/catalogue.h"

namespace dunnage {

/// One way to serve one piece of demand.
struct Option {
  int case_index = -1;                            ///< a whole unit of this case, or
  std::vector<std::pair<int, int>> pieces;        ///< items and how many of each
  Length waste;                                   ///< joined length beyond what is asked
};

/// Every way, least waste first, then fewest pieces, then order of code. With a length: single pieces that
/// reach, and the smallest sets of joined pieces that do (at most 4 pieces, joined only as the items say).
std::vector<Option> options_for(const Catalogue& catalogue, const std::string& what, const Maybe<Length>& length);

}  // namespace dunnage
