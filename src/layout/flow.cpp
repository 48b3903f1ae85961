// SPDX-License-Identifier: MIT
// Breaking of set matter into regions.
#include "layout/flow.h"

#include <algorithm>
#include <utility>

#include "base/quantity.h"

namespace dunnage {
namespace {

constexpr double emptiest = 0.25;  ///< share of a page that may stay empty rather than part a notice
constexpr double thin = 0.2;       ///< a last page filled less than this looks lost, and gets more
constexpr double thick_enough = 0.3;
constexpr double most_close = 4;  ///< pages: who types more in one place has mistaken it

Paper height_of(const Resume& again) {
  Paper height;
  if (again)
    for (const Strip& strip : *again) height += strip.height + strip.before;
  return height;
}

}  // namespace

Flow::Flow(Paper first_height, Paper height, Take take) : take_(std::move(take)), height_(height), room_(first_height) {
  regions_.emplace_back();
}

void Flow::add(Strip strip) {
  pending_.push_back(std::move(strip));
  settle(false);
}

std::vector<std::string> Flow::finish() {
  settle(true);
  if (several_ && y_ < height_ * thin) balance();
  while (!regions_.empty()) give_out();
  return oversized_;
}

Paper Flow::taken(const Strip& strip, bool at_top) const { return strip.height + (at_top ? Paper{} : strip.before); }

/// How many strips to place now: a whole chain of kept strips, or none. On a fresh region a chain that has no room
/// gives up its ties: as many as fit. Nothing when strips to come decide; never when these are `all`.
std::optional<std::size_t> Flow::chain_that_fits(bool all) const {
  Paper y = y_;
  for (std::size_t i = 0; i < pending_.size(); ++i) {
    y += taken(pending_[i], fresh_ && i == 0);
    if (y > room_ + hair) return fresh_ ? i : 0;
    if (!pending_[i].keep_next) return i + 1;
  }
  if (all) return pending_.size();
  return std::nullopt;
}

bool Flow::worth_parting(const Strip& strip) const {
  return strip.may_part && room_ - y_ - strip.before > height_ * emptiest;
}

void Flow::settle(bool all) {
  while (!pending_.empty()) {
    if (pending_.front().new_page && !fresh_) {
      begin_region({}, false);
      continue;
    }
    const std::optional<std::size_t> count = chain_that_fits(all);
    if (!count) return;
    if (*count == 0 && !fresh_ && !worth_parting(pending_.front())) {
      begin_region(pending_.front().resume, true);
      continue;
    }
    for (std::size_t i = 0; i < std::max<std::size_t>(*count, 1); ++i) {
      Strip next = std::move(pending_.front());
      pending_.pop_front();
      if (*count > 0)
        place(std::move(next));
      else
        place_too_tall(std::move(next));
    }
  }
}

void Flow::place(Strip strip) {
  y_ += taken(strip, fresh_);
  fresh_ = false;
  regions_.back().strips.push_back(std::move(strip));
}

void Flow::begin_region(const Resume& again, bool whole) {
  if (regions_.size() == 2) give_out();  // only the last two may still change
  several_ = true;
  regions_.push_back({again, {}, whole});
  room_ = height_;
  y_ = {};
  fresh_ = true;
  bool first = true;
  if (!again) return;
  for (const Strip& strip : *again) {
    y_ += taken(strip, first);
    first = false;
  }
}

void Flow::place_too_tall(Strip strip) {
  Strip rest;
  const std::string begins = first_words(strip.ink);
  const bool close_too = strip.height < height_ * most_close;
  while (y_ + taken(strip, fresh_) > room_ + hair) {
    const Paper left = room_ - y_ - (fresh_ ? Paper{} : strip.before);
    const bool whole_region = fresh_ && room_ >= height_;
    if (!part(strip, rest, left) && !(whole_region && close_too && part(strip, rest, left, true))) {
      if (!whole_region) {  // the next has more room
        begin_region(strip.resume, false);
        continue;
      }
      oversized_.push_back(begins);
      break;
    }
    const Resume again = strip.resume;
    place(std::move(strip));
    begin_region(again, false);
    strip = std::move(rest);
  }
  place(std::move(strip));
}

/// Moves strips from the region before to the last where that leaves it less lost and all of it fits.
void Flow::balance() {
  Region& last = regions_.back();
  Region& before = regions_[regions_.size() - 2];
  if (!last.begins_whole) return;
  Paper after;
  for (const Strip& strip : last.strips) after += strip.before + strip.height;
  for (std::size_t i = before.strips.size(); i-- > 1;) {
    const Strip& strip = before.strips[i];
    after += strip.before + strip.height;
    const Paper filled = after + height_of(strip.resume);
    if (filled > height_) return;
    if (before.strips[i - 1].keep_next || filled < height_ * thick_enough) continue;
    last.again = strip.resume;
    const auto from = before.strips.begin() + static_cast<std::ptrdiff_t>(i);
    last.strips.insert(last.strips.begin(), std::make_move_iterator(from),
                       std::make_move_iterator(before.strips.end()));
    before.strips.erase(from, before.strips.end());
    return;
  }
}

void Flow::give_out() {
  Region region = std::move(regions_.front());
  regions_.pop_front();
  std::vector<Ink> ink;
  Paper y;
  bool first = true;
  if (region.again)
    for (const Strip& strip : *region.again) {
      y += first ? Paper{} : strip.before;
      first = false;
      add_moved(ink, strip.ink, {}, y);
      y += strip.height;
    }
  first = true;
  for (Strip& strip : region.strips) {
    if (!first) y += strip.before;
    first = false;
    add_moved(ink, std::move(strip.ink), {}, y);
    y += strip.height;
  }
  take_(std::move(ink));
}

}  // namespace dunnage
