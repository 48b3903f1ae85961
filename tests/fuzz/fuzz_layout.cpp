// SPDX-License-Identifier: MIT
// A layout's text, and as a stock of labels: what is read is used to set the sheets of the outdoor example.
#include <cassert>
#include <sstream>

#include "export/page_text.h"
#include "ground.h"
#include "layout/lay_out.h"
#include "layout/lay_out_labels.h"
#include "read/layout_file.h"
#include "read/stock_file.h"

namespace {

using namespace dunnage;

const std::vector<Document>& documents() {
  static const auto* const all = new std::vector<Document>(every_document(ground().context(ground().words)));
  return *all;
}

/// The labels of three units, and the layout that belongs to them.
const Document& labels() {
  static const auto* const three = [] {
    for (const Document& document : documents())
      if (document.name == "case-label") {
        auto* made = new Document(document);
        made->sections.resize(3);
        return made;
      }
    assert(false);
    return static_cast<Document*>(nullptr);
  }();
  return *three;
}

/// The sheet whose blocks the layout places most of.
const Document& sheet_for(const Layout& layout) {
  const Document* best = &documents().front();
  int most = -1;
  for (const Document& document : documents()) {
    int placed = 0;
    for (const Block& block : document.sections.front().blocks)
      for (const BlockSpec& spec : layout.blocks) placed += spec.id == block.id ? 1 : 0;
    if (placed > most) {
      most = placed;
      best = &document;
    }
  }
  return *best;
}

void as_stock(const std::string& text) {
  Sources sources;
  Diagnostics diagnostics;
  const auto stock = read_stock("stock", "stock.toml", text, sources, diagnostics);
  assert(stock || diagnostics.has_errors());
  if (!stock) return;
  const std::string folder = PROJECT_DIR "/layouts/";
  const auto layout = load_layout(folder + "case-label.toml", sources, diagnostics);
  assert(layout);
  std::vector<LayoutProblem> problems;
  page_text({lay_out_labels(labels(), *layout, *stock, 1, 1, faces(), problems)}, faces());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, std::size_t size) {
  if (size > most_fuzzed) return -1;
  const std::string text(reinterpret_cast<const char*>(data), size);
  as_stock(text);
  Sources sources;
  Diagnostics diagnostics;
  const auto layout = read_layout("fuzz", "fuzz.toml", text, sources, diagnostics);
  assert(layout || diagnostics.has_errors());
  if (!layout) return 0;
  Document document = sheet_for(*layout);
  if (document.sections.size() > 3) document.sections.resize(3);
  std::vector<LayoutProblem> problems;
  const Pages pages = lay_out(document, *layout, 210 * unit::paper_mm, 297 * unit::paper_mm, faces(), problems);
  page_text({pages}, faces());
  for (const LayoutProblem& problem : problems) assert(!sentence(problem).empty());
  return 0;
}
