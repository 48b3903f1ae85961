// SPDX-License-Identifier: MIT
// How a mistake is shown: the place, the line, a caret under what is meant, the remedy.
#include "base/diagnostic.h"

#include <algorithm>
#include <tuple>

#include "base/shown.h"
#include "base/utf8.h"

namespace dunnage {
namespace {

constexpr std::size_t shown_width = 96;  // code points of a line that are shown; the rest is cut around the caret

const char* word(Severity severity) {
  switch (severity) {
    case Severity::error:
      return "error";
    case Severity::warning:
      return "warning";
    case Severity::note:
      return "note";
  }
  return "";
}

/// Each sign of a line as it is shown. Tabs become spaces so that the caret stays true.
std::vector<std::string> signs_of(std::string_view line) {
  std::vector<std::string> out;
  for (std::size_t at = 0; at < line.size();) {
    const std::size_t from = at;
    utf8::next(line, at);
    out.push_back(line[from] == '\t' ? " " : shown(line.substr(from, at - from)));
  }
  return out;
}

/// The line and the caret under it, each indented by two. A sign that is spelled out is as wide as its spelling.
std::string quote(const Place& place) {
  if (place.line == 0) return {};
  std::string raw(place.file->line(place.line));
  if (raw.empty()) return {};
  while (const auto fault = utf8::first_fault(raw)) raw[*fault] = '?';
  const std::vector<std::string> line = signs_of(raw);
  const std::size_t column = std::min<std::size_t>(place.column > 0 ? place.column - 1 : 0, line.size());
  std::size_t from = 0;
  std::string before, after;
  if (line.size() > shown_width) {
    from = column > shown_width / 3 ? std::min(column - shown_width / 3, line.size() - shown_width) : 0;
    if (from > 0) before = "...";
    if (from + shown_width < line.size()) after = "...";
  }
  const std::size_t to = std::min(from + shown_width, line.size());
  const std::size_t end = column + std::clamp<std::size_t>(place.width, 1, std::max<std::size_t>(to - column, 1));
  std::string part;
  std::size_t indent = 2 + before.size(), width = 0;
  for (std::size_t i = from; i < to; ++i) {
    part += line[i];
    if (i < column) indent += utf8::length(line[i]);
    if (i >= column && i < end) width += utf8::length(line[i]);
  }
  return "  " + before + part + after + "\n" +  //
         std::string(indent, ' ') + "^" + std::string(std::max<std::size_t>(width, 1) - 1, '~') + "\n";
}

/// A sentence that repeats a typed text of thousands of signs loses its middle.
std::string shortened(const std::string& text) {
  constexpr std::size_t most = 1000, kept = 300;
  if (text.size() <= most) return text;
  const auto begins_sign = [&](std::size_t at) { return (static_cast<unsigned char>(text[at]) & 0xC0) != 0x80; };
  std::size_t first = kept, last = text.size() - kept;
  while (!begins_sign(first)) --first;
  while (!begins_sign(last)) ++last;
  return text.substr(0, first) + " ... " + text.substr(last);
}

std::string message(const Place& place, const char* severity, const std::string& cause) {
  const std::string where = place.known() ? shown(place.words()) + ": " : std::string();
  return where + severity + ": " + shortened(shown(cause)) + "\n" + (place.known() ? quote(place) : std::string());
}

std::string count_of(std::size_t n, const char* what) { return std::to_string(n) + " " + what + (n == 1 ? "" : "s"); }

}  // namespace

std::string listed(const std::vector<std::string>& words) {
  std::string out;
  for (const std::string& word : words) out += (out.empty() ? "" : ", ") + word;
  return out;
}

void Diagnostics::add(Diagnostic d) {
  if (d.severity == Severity::error && ++errors_ > most_errors) return;
  all_.push_back(std::move(d));
}

void Diagnostics::error(Place place, std::string cause, std::string hint) {
  add({Severity::error, place, std::move(cause), std::move(hint), {}, {}});
}

void Diagnostics::error(Place place, std::string cause, std::string hint, Place other, std::string other_says) {
  add({Severity::error, place, std::move(cause), std::move(hint), other, std::move(other_says)});
}

void Diagnostics::warning(Place place, std::string cause, std::string hint) {
  add({Severity::warning, place, std::move(cause), std::move(hint), {}, {}});
}

void Diagnostics::note(Place place, std::string cause, std::string hint) {
  add({Severity::note, place, std::move(cause), std::move(hint), {}, {}});
}

std::vector<Diagnostic> Diagnostics::sorted(const Sources& sources) const {
  const auto rank = [&sources](const Place& place) {
    std::size_t at = 0;
    for (const SourceFile& file : sources.files()) {
      if (&file == place.file) return at;
      ++at;
    }
    return at;  // no place: last
  };
  std::vector<std::pair<std::size_t, Diagnostic>> ranked;
  for (const Diagnostic& d : all_) ranked.emplace_back(rank(d.place), d);
  std::stable_sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) {
    return std::tie(a.first, a.second.place.line, a.second.place.column) <
           std::tie(b.first, b.second.place.line, b.second.place.column);
  });
  std::vector<Diagnostic> out;
  for (auto& [unused, d] : ranked) out.push_back(std::move(d));
  return out;
}

std::string render(const Diagnostic& d) {
  std::string out = message(d.place, word(d.severity), d.cause);
  if (!d.hint.empty()) out += "hint: " + shortened(shown(d.hint)) + "\n";
  if (d.other.known()) out += message(d.other, "note", d.other_says);
  return out;
}

std::string render(const Diagnostics& diagnostics, const Sources& sources) {
  std::string out;
  for (const Diagnostic& d : diagnostics.sorted(sources)) out += render(d);
  if (diagnostics.errors() > 0) out += count_of(diagnostics.errors(), "error");
  if (diagnostics.errors() > Diagnostics::most_errors)
    out += "; the first " + std::to_string(Diagnostics::most_errors) + " are told above";
  if (diagnostics.errors() > 0) out += "\n";
  return out;
}

}  // namespace dunnage
