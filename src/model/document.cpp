// SPDX-License-Identifier: MIT
// Words by key. A missing word is told by its key, so that whoever writes a language file finds it.
#include "model/document.h"

#include "base/error.h"

namespace dunnage {

namespace {

const std::string second_mark = "\u2028", first_mark = "\u2029";

}  // namespace

std::string in_two(const std::string& first, const std::string& second) {
  if (first == second || second.empty()) return first;
  return first.empty() ? second : first + second_mark + second;
}

std::pair<std::string, std::string> apart(const std::string& text) {
  const std::size_t at = text.find(second_mark);
  if (at == std::string::npos) return {text, {}};
  return {text.substr(0, at), text.substr(at + second_mark.size())};
}

std::string on_one_line(const std::string& text) {
  std::string out = text;
  for (const std::string& mark : {second_mark, first_mark})
    for (std::size_t at = 0; (at = out.find(mark, at)) != std::string::npos; at += 3)
      out.replace(at, mark.size(), " / ");
  return out;
}

const std::string& Words::operator()(const std::string& key) const {
  const auto found = by_key.find(key);
  if (found == by_key.end())
    throw WorldError("the words for \"" + language + "\" have no \"" + key + "\": add it to layouts/words/" + language +
                     ".toml");
  return found->second;
}

std::string Words::say(const std::string& key, const std::map<std::string, std::string>& values) const {
  const std::string& text = (*this)(key);
  std::string out;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t close = text[at] == '{' ? text.find('}', at) : std::string::npos;
    const auto value = close == std::string::npos ? values.end() : values.find(text.substr(at + 1, close - at - 1));
    if (value == values.end()) {
      out += text[at++];
      continue;
    }
    out += value->second;
    at = close + 1;
  }
  return out;
}

}  // namespace dunnage
