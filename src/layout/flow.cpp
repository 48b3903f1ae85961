// SPDX-License-Identifier: MIT
// Breaking of set matter into regions.
#include "layout/flow.h"

#include <utility>

#include "base/quantity.h"

namespace dunnage {
namespace {

constexpr Paper hair = 0.001 * unit::paper_mm;

class Flow {
 public:
  Flow(Galley galley, Paper first_height, Paper height)
      : galley_(std::move(galley)), height_(height), room_(first_height) {
    out_.regions.emplace_back();
  }

  Flowed run() {
    std::size_t i = 0;
    while (i < galley_.strips.size()) {
      const std::size_t end = chain_that_fits(i);
      if (end > i) {
        for (; i < end; ++i) place(galley_.strips[i]);
      } else if (!fresh_) {
        begin_region(galley_.strips[i].resume);
      } else {
        place_too_tall(galley_.strips[i]);
        ++i;
      }
    }
    return std::move(out_);
  }

 private:
  Paper taken(const Strip& strip, bool at_top) const {
    return strip.height + (at_top ? Paper{} : strip.before);
  }

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

  void place(Strip& strip) {
    if (!fresh_) y_ += strip.before;
    add_moved(out_.regions.back(), std::move(strip.ink), {}, y_);
    y_ += strip.height;
    fresh_ = false;
  }

  void begin_region(int resume) {
    out_.regions.emplace_back();
    room_ = height_;
    y_ = {};
    fresh_ = true;
    if (resume < 0) return;
    for (const Strip& again : galley_.resumes[static_cast<std::size_t>(resume)]) {
      add_moved(out_.regions.back(), again.ink, {},
                y_ += out_.regions.back().empty() ? Paper{} : again.before);
      y_ += again.height;
    }
  }

  void place_too_tall(Strip& strip) {
    Strip rest;
    while (y_ + strip.height > room_ + hair) {
      if (!part(strip, rest, room_ - y_)) {
        if (room_ < height_) {  // a short first region: the next has more room
          begin_region(strip.resume);
          continue;
        }
        ++out_.oversized;
        break;
      }
      const int resume = strip.resume;
      place(strip);
      begin_region(resume);
      strip = std::move(rest);
    }
    place(strip);
  }

  Galley galley_;
  Flowed out_;
  Paper height_, room_;
  Paper y_;
  bool fresh_ = true;  ///< nothing of its own stands on the region yet
};

}  // namespace

Flowed flow(Galley galley, Paper first_height, Paper height) {
  return Flow(std::move(galley), first_height, height).run();
}

}  // namespace dunnage
