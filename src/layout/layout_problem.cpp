// SPDX-License-Identifier: MIT
// How a problem of layout is said.
#include "layout/layout_problem.h"

#include "model/document.h"

namespace dunnage {

std::string sentence(const LayoutProblem& problem) {
  std::string said = problem.document;
  if (!problem.section.empty()) said += ", " + on_one_line(problem.section);
  if (!problem.block.empty()) said += ", block \"" + problem.block + "\"";
  said += ": ";
  if (!problem.text.empty()) said += "\"" + on_one_line(problem.text) + "\" ";
  return said + problem.cause;
}

}  // namespace dunnage
