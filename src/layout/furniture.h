// SPDX-License-Identifier: MIT
// What stands on every page: title and recipient, show, date, page n of m; at the foot the revision.
#pragma once

#include <vector>

#include "layout/setting.h"
#include "model/page.h"

namespace dunnage {

/// Head and foot of one section at one width. Heights are the same on all its pages.
class Furniture {
 public:
  Furniture(Setting& setting, const Layout& layout, const Section& section, Paper width);

  Paper head_height() const { return head_height_; }  ///< with the white below it
  Paper foot_height() const { return foot_height_; }  ///< with the white above it

  /// Draws both around the body, inside `box`, all but the page's number.
  void put(std::vector<Ink>& ink, const Box& box) const;
  /// "Page 2 of 3" alone: how many there are is known last.
  void put_number(std::vector<Ink>& ink, const Box& box, int number, int total) const;

 private:
  std::string page_words(int number, int total) const;

  Setting& setting_;
  const Layout& layout_;
  TypeStyle title_, recipient_, running_, running_right_;
  std::vector<Ink> head_, foot_;  ///< what is the same on every page, from the top left of head and foot
  Paper width_, head_height_, foot_height_, page_y_, page_width_;
};

}  // namespace dunnage
