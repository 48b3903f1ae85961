// SPDX-License-Identifier: MIT
// Pages as a PDF will hold them, a few kilobytes each: of a long packet nothing else is kept.
#pragma once

#include <string>
#include <vector>

#include "export/deflate.h"
#include "export/page_ops.h"
#include "model/page.h"

namespace dunnage {

class SealedPages final : public PageSink {
 public:
  struct Sealed {
    Paper width, height;
    std::string label, bookmark;
    Deflated body;
    std::string first;  ///< operators that came late and stand first
  };
  struct Head {
    std::string title, language;
    bool to_scale;
    std::size_t first_page;
  };

  explicit SealedPages(bool compress = true) : compress_(compress) {}

  void begin(const std::string& title, const std::string& language, bool to_scale) override;
  std::size_t add(Page page) override;
  void add_words(std::size_t page, std::vector<Ink> words) override;

  const std::vector<Head>& documents() const { return documents_; }
  const std::vector<Sealed>& pages() const { return pages_; }
  const UsedCharacters& used() const { return used_; }
  bool compress() const { return compress_; }
  /// The content stream of a page, compressed or as it is. The page gives it away.
  std::string take_stream(std::size_t page);

 private:
  bool compress_;
  Deflater deflater_{page_level};
  std::vector<Head> documents_;
  std::vector<Sealed> pages_;
  UsedCharacters used_;
  std::string operators_;  ///< of the page at hand; kept for its room

  static constexpr int page_level = 2;
};

}  // namespace dunnage
