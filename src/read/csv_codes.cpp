// SPDX-License-Identifier: MIT
#include "read/csv_codes.h"

#include <algorithm>
#include <cctype>

#include "base/utf8.h"
#include "read/csv_cell.h"
#include "read/csv_number.h"

namespace dunnage {
namespace {

bool letter(char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); }

std::string upper(std::string text) {
  for (char& c : text)
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  return text;
}

/// Words of letters and digits, upper case, without those that say nothing.
std::vector<std::string> telling_words(const std::string& name) {
  std::string plain;
  for (const char c : name) plain += letter(c) || digit(c) ? c : ' ';
  std::vector<std::string> words = split_words(upper(plain));
  const auto says_nothing = [](const std::string& word) {
    for (const char* none : {"THE", "OF", "AND", "FOR", "WITH", "A", "AN", "IN", "TO"})
      if (word == none) return true;
    return false;
  };
  std::erase_if(words, says_nothing);
  return words;
}

}  // namespace

CodeMaker::CodeMaker(const Kit& kit) {
  for (const Item& item : kit.items) {
    take(item.code.value);
    know_item(item.name.value, item.code.value);
    know_item(item.code.value, item.code.value);
  }
  for (const Case& box : kit.cases) {
    take(box.code.value);
    for (int n = 1; box.count > 1 && n <= box.count; ++n) take(box.code.value + "-" + std::to_string(n));
  }
}

std::string CodeMaker::mended(const std::string& typed) {
  std::string out;
  for (const char c : typed) {
    if (letter(c) || digit(c))
      out += c;
    else if (!out.empty() && out.back() != '-' && c != '#')
      out += '-';
  }
  while (!out.empty() && out.back() == '-') out.pop_back();
  if (out.empty()) return {};
  return letter(out.front()) ? out : "C" + out;
}

/// At most seven signs: a label has room for ten, and a unit's number may follow ("-12").
std::string CodeMaker::from_words(const std::string& name) {
  std::vector<std::string> words = telling_words(name);
  std::string number;
  while (words.size() > 1 && words.back().find_first_not_of("0123456789") == std::string::npos) {
    number = words.back().substr(0, 2);
    words.pop_back();
  }
  std::string base = words.empty() ? "CASE" : words[0].substr(0, words.size() > 1 ? 4 : 6);
  if (!letter(base.front())) base = ("C" + base).substr(0, 4);
  if (words.size() > 1) base += "-" + words[1].substr(0, 2);
  base = base.substr(0, 7 - number.size()) + number;
  std::string code = base;
  for (char more = 'B'; taken(code) && more <= 'Z'; ++more) code = base.substr(0, 6) + more;
  for (int more = 1; taken(code); ++more) code = base.substr(0, 3) + "X" + std::to_string(more);
  take(code);
  return code;
}

std::string CodeMaker::item(const std::string& name) const {
  const auto at = items_.find(utf8::lower(name));
  return at == items_.end() ? std::string() : at->second;
}

void CodeMaker::know_item(const std::string& name, const std::string& code) { items_.emplace(utf8::lower(name), code); }

}  // namespace dunnage
