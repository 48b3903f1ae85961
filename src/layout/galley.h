// SPDX-License-Identifier: MIT
// Set matter before anyone has thought of pages: strips of known height, one below the other.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "base/quantity.h"
#include "model/page.h"

namespace dunnage {

/// What rounding may cost where lengths on paper are compared.
inline constexpr Paper hair = 0.01 * unit::paper_mm;

struct Strip;
/// What is said again where a page begins: heads, and "... (continued)". Absent: nothing.
using Resume = std::shared_ptr<const std::vector<Strip>>;

/// What is never divided unless it is taller than a page. Ink is placed from the strip's own top left corner.
struct Strip {
  std::vector<Ink> ink;
  Paper height;
  Paper before;            ///< white space above; lost at the top of a page
  bool keep_next = false;  ///< must not be parted from the strip that follows
  bool may_part = false;   ///< between its lines, rather than leave a large part of a page empty
  Resume resume = {};      ///< when a page begins with this strip
  bool new_page = false;   ///< begins one
};

struct Galley {
  std::vector<Strip> strips;
  /// Takes strips away that nothing will change any more; absent where all are kept. The last may still be tied to the
  /// next and stays.
  std::function<void(Strip)> spill;

  /// The strips that follow are of one block, with white above the first, or on a page of its own.
  void begin_block(Paper before, bool new_page = false);
  /// Whether the block had any.
  bool end_block();
  /// After a strip was added: a long table is never kept whole.
  void relieve();

 private:
  void put_white();
  std::optional<Paper> white_;  ///< owed to the first strip of the block
  std::size_t first_ = 0;       ///< where that strip will stand
  bool new_page_ = false;
};

/// Moves ink right and down.
void move_ink(std::vector<Ink>& ink, Paper right, Paper down);
/// The same for a copy, added to `onto`.
void add_moved(std::vector<Ink>& onto, std::vector<Ink> ink, Paper right, Paper down);

/// All strips of a galley as one, `pad` of white on each side, framed with a line of `stroke` where it is not
/// zero. The strip is `width` wide; the galley was set 2 x pad narrower.
Strip framed(Galley galley, Paper width, Paper pad, Paper stroke);

/// Parts a strip that is too tall: the first part is at most `height` high and ends between lines of text.
/// The second part keeps the rest. False when there is no such place. `close`: also between lines whose accents and
/// tails reach past each other.
bool part(Strip& strip, Strip& rest, Paper height, bool close = false);

/// The first words of it, so that whoever typed them finds them.
std::string first_words(const std::vector<Ink>& ink);

}  // namespace dunnage
