// SPDX-License-Identifier: MIT
// Lines of a file by number, and how a place is written.
#include "base/source.h"

namespace dunnage {

std::string_view SourceFile::line(std::uint32_t number) const {
  if (line_begins.empty()) {
    line_begins.push_back(0);
    for (std::size_t end = text.find('\n'); end != std::string::npos; end = text.find('\n', end + 1))
      line_begins.push_back(end + 1);
  }
  if (number == 0 || number > line_begins.size()) return {};
  std::string_view found = std::string_view(text).substr(line_begins[number - 1]);
  found = found.substr(0, found.find('\n'));
  if (!found.empty() && found.back() == '\r') found.remove_suffix(1);
  return found;
}

std::string Place::words() const {
  if (!known()) return "(not typed)";
  if (line == 0) return file->name;
  return file->name + ":" + std::to_string(line) + ":" + std::to_string(column);
}

Sentence Place::short_words() const {
  if (!known()) return said("not typed");
  const std::string name = file->name.substr(file->name.rfind('/') + 1);
  return line == 0 ? Sentence(name) : said("{} line {}", name, line);
}

}  // namespace dunnage
