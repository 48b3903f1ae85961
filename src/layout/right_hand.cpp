// SPDX-License-Identifier: MIT
#include "layout/right_hand.h"

#include <utility>

namespace dunnage {

void RightHand::begin(const std::string& title, const std::string& language, bool to_scale) {
  inner_.begin(title, language, to_scale);
}

std::size_t RightHand::add(Page page) {
  if (cards_ || !page.bookmark.empty()) fill_up();
  width_ = page.width;
  height_ = page.height;
  odd_ = !odd_;
  return inner_.add(std::move(page));
}

void RightHand::add_words(std::size_t page, std::vector<Ink> words) { inner_.add_words(page, std::move(words)); }

void RightHand::fill_up() {
  if (!odd_) return;
  inner_.add({width_, height_, {}, "-", {}});
  odd_ = false;
}

}  // namespace dunnage
