// SPDX-License-Identifier: MIT
#include "export/sealed_pages.h"

#include <utility>

namespace dunnage {

void SealedPages::begin(const std::string& title, const std::string& language, bool to_scale) {
  documents_.push_back({title, language, to_scale, pages_.size()});
}

std::size_t SealedPages::add(Page page) {
  operators_.clear();
  add_operators(operators_, page.ink, page.height, used_);
  Deflated body = compress_ ? deflater_.deflate(operators_) : Deflated{operators_, 1, operators_.size()};
  pages_.push_back({page.width, page.height, std::move(page.label), std::move(page.bookmark), std::move(body), {}});
  return pages_.size() - 1;
}

void SealedPages::add_words(std::size_t page, std::vector<Ink> words) {
  std::string& first = pages_[page].first;
  first += "q\n";
  add_operators(first, words, pages_[page].height, used_);
  first += "Q\n";
}

std::string SealedPages::take_stream(std::size_t page) {
  const std::string first = std::exchange(pages_[page].first, {});
  const Deflated body = std::exchange(pages_[page].body, {});
  return compress_ ? zlib_stream(first, body) : first + body.bytes;
}

}  // namespace dunnage
