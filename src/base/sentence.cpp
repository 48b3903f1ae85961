// SPDX-License-Identifier: MIT
#include "base/sentence.h"

#include <algorithm>
#include <cassert>
#include <set>
#include <utility>

namespace dunnage {
namespace {

constexpr std::size_t no_place = std::string_view::npos;

/// Which place the braces at `at` are, from 0, and how long they are; `next`: the place of {} without a number.
std::pair<std::size_t, std::size_t> place_at(std::string_view text, std::size_t at, std::size_t next) {
  if (text[at] != '{') return {no_place, 0};
  if (text.substr(at, 2) == "{}") return {next, 2};
  const bool numbered = at + 2 < text.size() && text[at + 1] >= '1' && text[at + 1] <= '9' && text[at + 2] == '}';
  return numbered ? std::pair(static_cast<std::size_t>(text[at + 1] - '1'), std::size_t{3}) : std::pair(no_place, std::size_t{0});
}

/// The text with its places filled. Braces that are none of them stay as they are.
std::string filled(std::string_view pattern, const std::vector<std::string>& places) {
  std::string out;
  std::size_t next = 0;
  for (std::size_t at = 0; at < pattern.size();) {
    const auto [place, length] = place_at(pattern, at, next);
    if (place >= places.size()) {
      out += pattern[at++];
      continue;
    }
    if (length == 2) ++next;
    out += places[place];
    at += length;
  }
  return out;
}

}  // namespace

Sentence::Sentence(std::string name) {
  if (!name.empty()) parts_.push_back({{}, std::move(name), {}});
}

Sentence::Sentence(std::string_view pattern, std::vector<Sentence> places) {
  assert(places_in(pattern) == places.size());
  if (!pattern.empty()) parts_.push_back({pattern, {}, std::move(places)});
}

void Sentence::add_name(std::string_view name) {
  if (name.empty()) return;
  if (!parts_.empty() && parts_.back().pattern.empty())
    parts_.back().name += name;  // so that the same text is the same sentence, however it was put together
  else
    parts_.push_back({{}, std::string(name), {}});
}

Sentence& Sentence::operator+=(const Sentence& more) {
  for (const Part& part : std::vector<Part>(more.parts_)) {
    if (part.pattern.empty())
      add_name(part.name);
    else
      parts_.push_back(part);
  }
  return *this;
}

Sentence& Sentence::then(const Sentence& next) {
  if (!empty() && !next.empty()) add_name(" ");
  return *this += next;
}

std::string Sentence::english() const { return in({}); }

std::string Sentence::in(const Sentences& language) const {
  std::string out;
  for (const Part& part : parts_) {
    if (part.pattern.empty()) {
      out += part.name;
      continue;
    }
    const auto found = language.find(part.pattern);
    std::vector<std::string> places;
    for (const Sentence& place : part.places) places.push_back(place.in(language));
    out += filled(found == language.end() ? part.pattern : std::string_view(found->second), places);
  }
  return out;
}

std::vector<std::string_view> Sentence::patterns() const {
  std::vector<std::string_view> out;
  for (const Part& part : parts_) {
    if (!part.pattern.empty()) out.push_back(part.pattern);
    for (const Sentence& place : part.places)
      for (const std::string_view inner : place.patterns()) out.push_back(inner);
  }
  return out;
}

std::vector<Sentence> Sentence::parted(std::string_view separator) const {
  std::vector<Sentence> out(1);
  for (const Part& part : parts_) {
    if (!part.pattern.empty()) {
      out.back().parts_.push_back(part);
      continue;
    }
    for (std::size_t begin = 0;;) {
      const std::size_t end = std::min(part.name.find(separator, begin), part.name.size());
      out.back().add_name(std::string_view(part.name).substr(begin, end - begin));
      if (end == part.name.size()) break;
      out.emplace_back();
      begin = end + separator.size();
    }
  }
  out.erase(std::remove(out.begin(), out.end(), Sentence()), out.end());
  return out;
}

Sentence strung(const std::vector<Sentence>& list, std::string_view separator) {
  Sentence out;
  for (const Sentence& one : list) {
    if (one.empty()) continue;
    if (!out.empty()) out += separator;
    out += one;
  }
  return out;
}

std::string odd_place(std::string_view english, std::string_view other) {
  const std::size_t places = places_in(english);
  std::set<std::size_t> filled;
  std::size_t next = 0;
  for (std::size_t at = 0; at < other.size(); ++at) {
    const auto [place, length] = place_at(other, at, next);
    if (place == no_place) continue;
    if (length == 2) ++next;
    if (place >= places) return length == 2 ? "{}" : "{" + std::to_string(place + 1) + "}";
    filled.insert(place);
  }
  for (std::size_t place = 0; place < places; ++place)
    if (!filled.contains(place)) return "{" + std::to_string(place + 1) + "}";
  return {};
}

}  // namespace dunnage
