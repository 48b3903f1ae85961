// SPDX-License-Identifier: MIT
// Printing on both sides: what one person takes away begins on a sheet of its own.
#pragma once

#include "model/page.h"

namespace dunnage {

/// Puts empty pages between those of a document on their way to `inner`, so that each part (a page with a bookmark
/// begins one) stands on a right-hand page, and one at the end where the number of pages is odd. `cards`: every page on
/// the right hand, since cards are cut apart and one must not stand on the back of another.
class RightHand final : public PageSink {
 public:
  RightHand(PageSink& inner, bool cards) : inner_(inner), cards_(cards) {}

  void begin(const std::string& title, const std::string& language, bool to_scale) override;
  std::size_t add(Page page) override;
  void add_words(std::size_t page, std::vector<Ink> words) override;
  /// After the last page.
  void fill_up();

 private:
  PageSink& inner_;
  bool cards_;
  bool odd_ = false;      ///< an odd number of pages so far
  Paper width_, height_;  ///< of the page before
};

}  // namespace dunnage
