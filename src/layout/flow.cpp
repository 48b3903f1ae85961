// SPDX-License-Identifier: MIT
// Breaking of set matter into regions.
#include "layout/flow.h"

#include <algorithm>
#include <cstdint>
#include <utility>

#include "base/quantity.h"

namespace dunnage {
namespace {

constexpr Paper hair = 0.001 * unit::paper_mm;
constexpr double emptiest = 0.25;   ///< share of a page that may stay empty rather than part a notice
constexpr double thin = 0.2;        ///< a last page filled less than this looks lost, and gets more
constexpr double thick_enough = 0.3;
constexpr std::size_t nowhere = SIZE_MAX;

class Flow {
 public:
  /// A region begins before strip `forced`, if it has not by then.
  Flow(Galley galley, Paper first_height, Paper height, std::size_t forced = nowhere)
      : galley_(std::move(galley)), height_(height), room_(first_height), forced_(forced) {
    out_.regions.emplace_back();
  }

  Flowed run() {
    std::size_t i = 0;
    while (i < galley_.strips.size()) {
      if (i == forced_ && !fresh_) begin_region(galley_.strips[i].resume, i);
      const std::size_t end = chain_that_fits(i);
      if (end > i) {
        for (; i < end; ++i) place(galley_.strips[i]);
      } else if (!fresh_ && !worth_parting(galley_.strips[i])) {
        begin_region(galley_.strips[i].resume, i);
      } else {
        place_too_tall(galley_.strips[i]);
        ++i;
      }
    }
    return std::move(out_);
  }

  /// The strip that the last region begins with; `nowhere` where that is a part of one.
  std::size_t last_begins() const { return last_begins_; }
  /// How much of the last region is taken, what is said again included.
  Paper last_filled() const { return y_; }

 private:
  static Paper taken(const Strip& strip, bool at_top) { return strip.height + (at_top ? Paper{} : strip.before); }

  /// One beyond the last strip to place now: a whole chain of kept strips, or nothing. On a fresh region a
  /// chain that has no room gives up its ties: as many as fit.
  std::size_t chain_that_fits(std::size_t from) const {
    Paper y = y_;
    std::size_t i = from;
    for (; i < galley_.strips.size(); ++i) {
      const Strip& strip = galley_.strips[i];
      y += taken(strip, fresh_ && i == from);
      if (y > room_ + hair) return fresh_ ? i : from;
      if (!strip.keep_next) return i + 1;
    }
    return i;
  }

  bool worth_parting(const Strip& strip) const {
    return strip.may_part && room_ - y_ - strip.before > height_ * emptiest;
  }

  void place(Strip& strip) {
    if (!fresh_) y_ += strip.before;
    add_moved(out_.regions.back(), std::move(strip.ink), {}, y_);
    y_ += strip.height;
    fresh_ = false;
  }

  void begin_region(int resume, std::size_t with) {
    out_.regions.emplace_back();
    room_ = height_;
    y_ = {};
    fresh_ = true;
    last_begins_ = with;
    if (resume < 0) return;
    for (const Strip& again : galley_.resumes[static_cast<std::size_t>(resume)]) {
      add_moved(out_.regions.back(), again.ink, {},
                y_ += out_.regions.back().empty() ? Paper{} : again.before);
      y_ += again.height;
    }
  }

  void place_too_tall(Strip& strip) {
    Strip rest;
    while (y_ + taken(strip, fresh_) > room_ + hair) {
      if (!part(strip, rest, room_ - y_ - (fresh_ ? Paper{} : strip.before))) {
        if (room_ < height_ || !fresh_) {  // a short or begun region: the next has more room
          begin_region(strip.resume, nowhere);
          continue;
        }
        ++out_.oversized;
        break;
      }
      const int resume = strip.resume;
      place(strip);
      begin_region(resume, nowhere);
      strip = std::move(rest);
    }
    place(strip);
  }

  Galley galley_;
  Flowed out_;
  Paper height_, room_;
  std::size_t forced_;
  std::size_t last_begins_ = nowhere;
  Paper y_;
  bool fresh_ = true;  ///< nothing of its own stands on the region yet
};

Paper height_of(const std::vector<Strip>& strips) {
  Paper height;
  for (const Strip& strip : strips) height += strip.height + strip.before;
  return height;
}

/// Where the last region had better begin so that it is not nearly empty; `nowhere` where no place is better. The
/// matter after that place fits on one region.
std::size_t better_break(const Galley& galley, std::size_t begins, Paper height) {
  if (begins == nowhere) return nowhere;
  Paper after;
  for (std::size_t i = begins; i < galley.strips.size(); ++i) after += galley.strips[i].before + galley.strips[i].height;
  for (std::size_t i = begins; i-- > 1;) {
    const Strip& strip = galley.strips[i];
    after += strip.before + strip.height;
    const Paper again =
        strip.resume < 0 ? Paper{} : height_of(galley.resumes[static_cast<std::size_t>(strip.resume)]);
    if (after + again > height) return nowhere;
    if (!galley.strips[i - 1].keep_next && after + again >= height * thick_enough) return i;
  }
  return nowhere;
}

}  // namespace

Flowed flow(Galley galley, Paper first_height, Paper height) {
  Flow first(galley, first_height, height);
  Flowed flowed = first.run();
  if (flowed.regions.size() < 2 || first.last_filled() >= height * thin) return flowed;
  const std::size_t better = better_break(galley, first.last_begins(), height);
  if (better == nowhere) return flowed;
  Flowed balanced = Flow(std::move(galley), first_height, height, better).run();
  return balanced.regions.size() == flowed.regions.size() ? balanced : flowed;
}

}  // namespace dunnage
