// SPDX-License-Identifier: MIT
// How a problem of layout is said.
#include "layout/layout_problem.h"

#include "base/utf8.h"
#include "model/document.h"

namespace dunnage {

namespace {

/// As much of a typed text as is needed to find it.
std::string beginning(const std::string& typed) {
  constexpr std::size_t most = 80;
  const std::string text = on_one_line(typed);
  if (utf8::length(text) <= most) return text;
  return utf8::encode(utf8::decode(text).substr(0, most)) + " ...";
}

}  // namespace

std::string sentence(const LayoutProblem& problem) {
  std::string said = problem.document;
  if (!problem.section.empty()) said += ", " + beginning(problem.section);
  if (!problem.block.empty()) said += ", block \"" + problem.block + "\"";
  said += ": ";
  if (!problem.text.empty()) said += "\"" + beginning(problem.text) + "\" ";
  return said + problem.cause;
}

}  // namespace dunnage
