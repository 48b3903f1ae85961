// SPDX-License-Identifier: MIT
// What every block is set with: the faces, the document's own words, and where a problem is to be told.
// It does not know of pages.
#pragma once

#include <set>
#include <string>
#include <utility>
#include <vector>

#include "font/faces.h"
#include "layout/layout_problem.h"
#include "model/document.h"
#include "model/sheet.h"

namespace dunnage {

class Setting {
 public:
  Setting(const Faces& the_faces, const Document& the_document, std::vector<LayoutProblem>& problems,
          int printer_dpi = 300)
      : faces(the_faces), document(the_document), dpi(printer_dpi), problems_(problems) {}

  const Faces& faces;
  const Document& document;
  const int dpi;  ///< of the printer; for what must fall on whole dots

  /// What problems are told of from now on.
  void at_section(const std::string& recipient);
  void at_block(const std::string& id, Place place);

  /// Told once for one text, block and section.
  void problem(std::string text, std::string cause);
  /// The face of a role; a role that no face plays is a problem, and the first face stands in.
  int face(const std::string& role);
  /// The bold partner of a role ("text" and "text-bold"), or the role itself where it has none.
  std::string bold(const std::string& role) const;
  /// The plain partner of a role ("text-bold" and "text"), or the role itself where it has none.
  std::string plain_cut(const std::string& role) const;

 private:
  std::vector<LayoutProblem>& problems_;
  std::string section_, block_;
  Place place_;
  std::set<std::pair<std::string, std::string>> told_;
};

}  // namespace dunnage
