// SPDX-License-Identifier: MIT
// A sentence that is printed in the language of its sheet. A rule keeps it as its English text with places; the words
// of a language say the same text otherwise.
#pragma once

#include <concepts>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace dunnage {

/// Sentences of one language by their English text: "Down at {} gust." Where a language orders the places otherwise it
/// numbers them: {1}, {2}.
using Sentences = std::map<std::string, std::string, std::less<>>;

/// How many places a text has that is said with as many figures, names or sentences.
constexpr std::size_t places_in(std::string_view pattern) {
  std::size_t places = 0;
  for (std::size_t at = 0; (at = pattern.find("{}", at)) != std::string_view::npos; at += 2) ++places;
  return places;
}

/// An English text of the program with so many places; one that has more or fewer does not compile. It lives as long as
/// the program.
template <std::size_t Places>
struct Pattern {
  template <std::size_t Size>
  consteval Pattern(const char (&typed)[Size]) : text(typed, Size - 1) {
    if (places_in(text) != Places) throw "as many {} as there is to fill in";
  }
  std::string_view text;
};

class Sentence {
 public:
  Sentence() = default;
  /// What is the same in every language: a name, a code, a figure with its unit, the title of a publication. A text of
  /// the program is no such thing and does not convert: see said().
  Sentence(std::string name);
  Sentence(std::string_view name) : Sentence(std::string(name)) {}
  Sentence(std::integral auto number) requires(!std::same_as<decltype(number), bool>)
      : Sentence(std::to_string(number)) {}
  Sentence(std::string_view pattern, std::vector<Sentence> places);

  bool empty() const { return !parts_; }
  bool operator==(const Sentence& other) const;
  /// Goes on without a gap.
  Sentence& operator+=(const Sentence& more);
  /// A further sentence, after a space where there is one before it.
  Sentence& then(const Sentence& next);

  std::string english() const;
  /// In a language; a text that it lacks stands in English.
  std::string in(const Sentences& language) const;
  /// The English texts it is said with, those in its places too.
  std::vector<std::string_view> patterns() const;

 private:
  struct Part;
  using Parts = std::vector<Part>;
  const Parts& parts() const;
  Parts& own_parts();
  void add(const Part& part);
  /// Shared, as many findings say the same; none where it is empty.
  std::shared_ptr<Parts> parts_;
};

/// `said("Bring {} more, or find a tap.", volume)`.
template <class... Places>
Sentence said(Pattern<sizeof...(Places)> pattern, const Places&... places) {
  return Sentence(pattern.text, std::vector<Sentence>{Sentence(places)...});
}

/// A text that no language says otherwise: the title of a publication.
template <std::size_t Size>
Sentence as_is(const char (&text)[Size]) {
  return Sentence(std::string(text, Size - 1));
}

/// "protection, what AMP draws": empty ones left out.
Sentence strung(const std::vector<Sentence>& list, std::string_view separator);

/// For a text that says an English one in another language: the place that it has too many or lacks ("{3}"), or empty.
std::string odd_place(std::string_view english, std::string_view other);

}  // namespace dunnage
