// SPDX-License-Identifier: MIT
// A document in words becomes labels on a stock.
#pragma once

#include <vector>

#include "font/faces.h"
#include "layout/layout_problem.h"
#include "model/document.h"
#include "model/page.h"
#include "model/sheet.h"

namespace dunnage {

/// Labels on one page of a stock.
int labels_on_page(const Stock& stock);

/// Labels onto sheets, `copies` of each one after the other, the first at place `start_at` of its sheet (from 1, by
/// rows). Asserts 1 <= start_at <= labels_on_page and 1 <= copies. Codes stand on whole dots of the stock's printer;
/// the pages ask not to be scaled. Problems as in lay_out; on a label every block stands in an area, and what has no
/// room there is a problem. What it is made with outlives it.
class LabelSheets {
 public:
  LabelSheets(const Layout& layout, const Stock& stock, int start_at, int copies, const Faces& faces,
              std::vector<LayoutProblem>& problems, PageSink& sink);

  /// A label for each section: of one kit in as many pieces as one likes. Throws WorldError when a font file is
  /// damaged.
  void add(const Document& document);
  /// Gives the last sheet away; the number of sheets.
  int finish();

 private:
  void put(std::vector<Ink> label, const std::string& whose);

  const Layout& layout_;
  const Stock& stock_;
  const int copies_;
  const Faces& faces_;
  std::vector<LayoutProblem>& problems_;
  PageSink& sink_;
  Page page_;      ///< being filled
  int pages_ = 0;  ///< begun
  int place_;
};

/// All labels of a document, with their pages kept.
Pages lay_out_labels(const Document& document, const Layout& layout, const Stock& stock, int start_at, int copies,
                     const Faces& faces, std::vector<LayoutProblem>& problems);

}  // namespace dunnage
