// SPDX-License-Identifier: MIT
#include "read/csv_contents.h"

#include <regex>

#include "read/csv_cell.h"
#include "read/csv_number.h"

namespace dunnage {
namespace {

/// Commas part only where no semicolon or line end does.
std::vector<std::string> pieces_of(const std::string& text) {
  const bool strong = text.find_first_of(";\n|") != std::string::npos;
  std::vector<std::string> out(1);
  int depth = 0;
  for (const char c : text) {
    depth += c == '(' ? 1 : c == ')' && depth > 0 ? -1 : 0;
    const bool ends = depth == 0 && (strong ? c == ';' || c == '\n' || c == '|' : c == ',');
    if (ends)
      out.emplace_back();
    else
      out.back() += c;
  }
  return out;
}

ContentWords one(const std::string& text) {
  static const std::regex before("^([0-9]{1,4})\\s*(?:x\\b|\\*|pcs?\\.?\\s|ea\\.?\\s|\\s)\\s*(.+)$", std::regex::icase);
  static const std::regex after("^(.+?)\\s*(?:\\bx\\s*|\\(\\s*x?|,\\s*qty\\.?\\s*)([0-9]{1,4})\\)?$",
                                std::regex::icase);
  static const std::regex times("^[0-9]+\\s*(?:x\\b|\\*)", std::regex::icase);
  constexpr std::size_t most_signs = 500;  // of a name with its count; the expressions recurse once a sign
  std::smatch m;
  if (text.size() > most_signs) return {1, text, false};
  if (std::regex_match(text, m, before) && !m[2].str().empty()) {
    const std::vector<std::string> words = split_words(m[2].str());
    const bool length = !std::regex_search(text, times) && words.size() > 1 && !unit_symbol(words.front()).empty();
    if (!length && std::stoi(m[1]) > 0) return {std::stoi(m[1]), m[2], true};
  }
  if (std::regex_match(text, m, after) && std::stoi(m[2]) > 0) return {std::stoi(m[2]), m[1], true};
  return {1, text, false};
}

}  // namespace

std::vector<ContentWords> read_contents(const std::string& cell) {
  std::vector<ContentWords> out;
  for (std::string part : pieces_of(cell)) {
    part = plain_signs(part);
    while (part.starts_with("- ") || part.starts_with("* ") || part.starts_with("\u2022"))
      part = plain_signs(part.substr(part.starts_with("\u2022") ? 3 : 2));
    if (!part.empty()) out.push_back(one(part));
  }
  return out;
}

}  // namespace dunnage
