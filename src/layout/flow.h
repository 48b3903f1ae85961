// SPDX-License-Identifier: MIT
// Strips into the regions there are: pages, or cards. The one room that breaks.
#pragma once

#include <deque>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "layout/galley.h"

namespace dunnage {

/// Fills regions of `height`, the first of `first_height`. Keeps strips together that ask for it, as long as they fit
/// on one region; a last region that would be nearly empty gets more from the one before. Linear in the number of
/// strips, and never more than three regions are held, whatever their number.
class Flow {
 public:
  /// Takes the ink of each region from its own top left, in order.
  using Take = std::function<void(std::vector<Ink>)>;

  Flow(Paper first_height, Paper height, Take take);

  void add(Strip strip);
  /// Gives out what is held: at least one region in all. The first words of each strip that is taller than a region and
  /// could not be parted.
  std::vector<std::string> finish();

 private:
  struct Region {
    Resume again;  ///< said again at its top
    std::vector<Strip> strips;
    bool begins_whole = true;  ///< not with the rest of a parted strip
  };

  Paper taken(const Strip& strip, bool at_top) const;
  std::optional<std::size_t> chain_that_fits(bool all) const;
  bool worth_parting(const Strip& strip) const;
  void settle(bool all);
  void place(Strip strip);
  void place_too_tall(Strip strip);
  void begin_region(const Resume& again, bool whole);
  void balance();
  void give_out();

  Take take_;
  std::deque<Strip> pending_;   ///< not placed yet: a chain that goes on in strips to come
  std::deque<Region> regions_;  ///< the last of them; the last is being filled
  bool several_ = false;        ///< there was more than one region
  Paper height_, room_;
  Paper y_;                             ///< how much of the last region is taken, what is said again included
  bool fresh_ = true;                   ///< nothing of its own stands on the region yet
  std::vector<std::string> oversized_;  ///< first words of each
};

}  // namespace dunnage
