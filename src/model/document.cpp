// SPDX-License-Identifier: MIT
// Words by key. A missing word is told by its key, so that whoever writes a language file finds it.
#include "model/document.h"

#include "base/error.h"

namespace dunnage {

const std::string& Words::operator()(const std::string& key) const {
  const auto found = by_key.find(key);
  if (found == by_key.end())
    throw WorldError("the words for \"" + language + "\" have no \"" + key + "\": add it to layouts/words/" +
                     language + ".toml");
  return found->second;
}

std::string Words::say(const std::string& key, const std::map<std::string, std::string>& values) const {
  const std::string& text = (*this)(key);
  std::string out;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t close = text[at] == '{' ? text.find('}', at) : std::string::npos;
    const auto value =
        close == std::string::npos ? values.end() : values.find(text.substr(at + 1, close - at - 1));
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
