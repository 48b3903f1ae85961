// SPDX-License-Identifier: MIT
#include "layout/right_hand.h"

#include <utility>

namespace dunnage {

void begin_on_right_hand(Pages& pages, bool cards) {
  std::vector<Page> out;
  const auto fill_up = [&] {
    if (out.size() % 2 == 1) out.push_back({out.back().width, out.back().height, {}, "-", {}});
  };
  for (Page& page : pages.pages) {
    if (cards || !page.bookmark.empty()) fill_up();
    out.push_back(std::move(page));
  }
  fill_up();
  pages.pages = std::move(out);
}

}  // namespace dunnage
