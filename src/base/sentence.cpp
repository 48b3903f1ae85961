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
  return numbered ? std::pair(static_cast<std::size_t>(text[at + 1] - '1'), std::size_t{3})
                  : std::pair(no_place, std::size_t{0});
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

/// A text of the program with what is in its places; without one, `name` as it is.
struct Sentence::Part {
  std::string_view pattern;
  std::string name;
  std::vector<Sentence> places;
  bool operator==(const Part&) const = default;
};

Sentence::Sentence(std::string name) {
  if (!name.empty()) own_parts().push_back({{}, std::move(name), {}});
}

Sentence::Sentence(std::string_view pattern, std::vector<Sentence> places) {
  assert(places_in(pattern) == places.size());
  if (!pattern.empty()) own_parts().push_back({pattern, {}, std::move(places)});
}

const Sentence::Parts& Sentence::parts() const {
  static const Parts none;
  return parts_ ? *parts_ : none;
}

Sentence::Parts& Sentence::own_parts() {
  if (!parts_)
    parts_ = std::make_shared<Parts>();
  else if (parts_.use_count() > 1)
    parts_ = std::make_shared<Parts>(*parts_);
  return *parts_;
}

bool Sentence::operator==(const Sentence& other) const { return parts_ == other.parts_ || parts() == other.parts(); }

void Sentence::add(const Part& part) {
  if (part.pattern.empty() && part.name.empty()) return;
  Parts& own = own_parts();
  if (part.pattern.empty() && !own.empty() && own.back().pattern.empty())
    own.back().name += part.name;  // so that the same text is the same sentence, however it was put together
  else
    own.push_back(part);
}

Sentence& Sentence::operator+=(const Sentence& more) {
  if (empty()) return *this = more;
  const Sentence kept = more;  // it may be this one. NOLINT(performance-unnecessary-copy-initialization)
  for (const Part& part : kept.parts()) add(part);
  return *this;
}

Sentence& Sentence::then(const Sentence& next) {
  if (!empty() && !next.empty()) add({{}, " ", {}});
  return *this += next;
}

std::string Sentence::english() const { return in({}); }

std::string Sentence::in(const Sentences& language) const {
  std::string out;
  for (const Part& part : parts()) {
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
  for (const Part& part : parts()) {
    if (!part.pattern.empty()) out.push_back(part.pattern);
    for (const Sentence& place : part.places)
      for (const std::string_view inner : place.patterns()) out.push_back(inner);
  }
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
