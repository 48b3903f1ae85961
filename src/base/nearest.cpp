// SPDX-License-Identifier: MIT
// Optimal string alignment over bytes: codes, keys and units are ASCII but for a few signs.
#include "base/nearest.h"

#include <algorithm>
#include <tuple>

#include "base/utf8.h"

namespace dunnage {
namespace {

/// The table of edits between a typed word and the beginnings of others, a row a letter of the other. Rows of a common
/// beginning stay from one word to the next.
class Rows {
 public:
  explicit Rows(std::string_view typed) : typed_(typed), width_(typed.size() + 1), cells_(width_) {
    for (std::size_t j = 0; j < width_; ++j) cells_[j] = j;
  }

  /// Makes the row after letter `i` of `word`; those before it are made. The fewest edits in it.
  std::size_t add(std::string_view word, std::size_t i) {
    cells_.resize(std::max(cells_.size(), (i + 2) * width_));
    std::size_t* now = &cells_[(i + 1) * width_];
    const std::size_t* last = now - width_;
    std::size_t least = now[0] = i + 1;
    for (std::size_t j = 1; j < width_; ++j) {
      const std::size_t replaced = last[j - 1] + (typed_[j - 1] == word[i] ? 0 : 1);
      now[j] = std::min({last[j] + 1, now[j - 1] + 1, replaced});
      if (i > 0 && j > 1 && word[i] == typed_[j - 2] && word[i - 1] == typed_[j - 1])
        now[j] = std::min(now[j], *(last - width_ + j - 2) + 1);
      least = std::min(least, now[j]);
    }
    return least;
  }
  /// To the first `letters` of the word whose rows were made.
  std::size_t edits(std::size_t letters) const { return cells_[letters * width_ + width_ - 1]; }

 private:
  std::string_view typed_;
  std::size_t width_;
  std::vector<std::size_t> cells_;
};

std::size_t edits_allowed(std::string_view typed) { return std::clamp<std::size_t>(typed.size() / 3, 1, 3); }

/// Letters that both begin with.
std::size_t common(std::string_view a, std::string_view b) {
  const std::size_t most = std::min(a.size(), b.size());
  std::size_t n = 0;
  while (n < most && a[n] == b[n]) ++n;
  return n;
}

}  // namespace

std::size_t edit_distance(std::string_view a, std::string_view b) {
  const std::string x = utf8::lower(a), y = utf8::lower(b);
  Rows rows(x);
  for (std::size_t i = 0; i < y.size(); ++i) rows.add(y, i);
  return rows.edits(y.size());
}

std::string nearest(std::string_view typed, const std::vector<std::string>& candidates) {
  const std::size_t allowed = edits_allowed(typed);
  std::size_t best = allowed + 1;
  std::string found;
  for (const std::string& candidate : candidates) {
    const std::size_t longer = std::max(typed.size(), candidate.size());
    if (longer - std::min(typed.size(), candidate.size()) > allowed) continue;
    const std::size_t edits = edit_distance(typed, candidate);
    if (edits >= best || edits >= longer) continue;  // a word changed in every letter is another word
    best = edits;
    found = candidate;
  }
  return found;
}

NearestOf::NearestOf(std::vector<std::string> candidates) : candidates_(std::move(candidates)) {
  for (std::size_t at = 0; at < candidates_.size(); ++at) {
    sorted_.push_back({utf8::lower(candidates_[at]), at});
    longest_ = std::max(longest_, candidates_[at].size());
  }
  std::sort(sorted_.begin(), sorted_.end(),
            [](const Word& a, const Word& b) { return std::tie(a.low, a.at) < std::tie(b.low, b.at); });
}

/// What the words with one beginning cost, kept for the next word that begins so.
class NearestOf::Walk {
 public:
  Walk(std::string_view typed, std::size_t allowed) : typed_(typed), allowed_(allowed), rows_(typed) {}

  /// Works a word through, as far as it may still come near. Its edits, or nothing: then no word that begins with
  /// `beginning()` comes near.
  std::optional<std::size_t> edits(std::string_view word) {
    leasts_.resize(std::min(leasts_.size(), common(word, before_)));
    before_ = word;
    while (leasts_.size() < word.size() && leasts_.size() <= typed_.size() + allowed_ && !lost())
      leasts_.push_back(rows_.add(word, leasts_.size()));
    if (leasts_.size() < word.size() || lost()) return std::nullopt;
    return rows_.edits(word.size());
  }
  std::string_view beginning() const { return before_.substr(0, leasts_.size()); }

 private:
  /// A swap reaches over a row: two rows in turn must be beyond reach.
  bool lost() const {
    const std::size_t n = leasts_.size();
    return n > 1 && leasts_[n - 1] > allowed_ && leasts_[n - 2] >= allowed_;
  }

  std::string_view typed_, before_;
  std::size_t allowed_;
  Rows rows_;
  std::vector<std::size_t> leasts_;  ///< a row each: its fewest edits
};

std::optional<std::size_t> NearestOf::within(std::string_view low, std::size_t allowed) const {
  if (low.size() > longest_ + allowed) return std::nullopt;
  Walk walk(low, allowed);
  std::size_t least = allowed;
  std::optional<std::size_t> found;
  for (auto word = sorted_.begin(); word != sorted_.end();) {
    const auto edits = walk.edits(word->low);
    if (!edits) {
      word = std::partition_point(word, sorted_.end(),
                                  [&](const Word& one) { return one.low.starts_with(walk.beginning()); });
      continue;
    }
    const bool other_word = *edits >= std::max(low.size(), word->low.size());  // changed in every letter
    if (!other_word && (*edits < least || (*edits == least && (!found || word->at < *found)))) {
      least = *edits;
      found = word->at;
    }
    ++word;
  }
  return found;
}

std::string NearestOf::operator()(std::string_view typed) const {
  const std::string low = utf8::lower(typed);
  // One edit first, then two: where something is near, little of the list is looked at.
  for (std::size_t allowed = 1; allowed <= edits_allowed(typed); ++allowed)
    if (const auto found = within(low, allowed)) return candidates_[*found];
  return {};
}

std::string NearestOf::did_you_mean(std::string_view typed) const {
  const std::string found = (*this)(typed);
  return found.empty() ? std::string() : "did you mean \"" + found + "\"?";
}

std::string did_you_mean(std::string_view typed, const std::vector<std::string>& candidates) {
  const std::string found = nearest(typed, candidates);
  return found.empty() ? std::string() : "did you mean \"" + found + "\"?";
}

}  // namespace dunnage
