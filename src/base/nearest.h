// SPDX-License-Identifier: MIT
// The word a person most likely meant.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace dunnage {

/// Edits between two words (insert, delete, replace, swap of neighbours; optimal string alignment),
/// ignoring ASCII case.
std::size_t edit_distance(std::string_view a, std::string_view b);

/// The candidate with the fewest edits, the first of equals; empty when none is within
/// one edit in three letters (at least 1, at most 3).
std::string nearest(std::string_view typed, const std::vector<std::string>& candidates);

/// The same of one list, asked many times: a list of thousands of strange codes is told against a kit of thousands.
/// Candidates that begin alike are worked through once, and those that cannot come near are passed over together.
class NearestOf {
 public:
  explicit NearestOf(std::vector<std::string> candidates);
  /// As `nearest`.
  std::string operator()(std::string_view typed) const;
  /// `did you mean "x"?`, or empty.
  std::string did_you_mean(std::string_view typed) const;

 private:
  struct Word {
    std::string low;  ///< in small letters
    std::size_t at;   ///< in `candidates_`
  };
  class Walk;
  /// Of the candidates with at most so many edits the first of those with the fewest.
  std::optional<std::size_t> within(std::string_view low, std::size_t allowed) const;

  std::vector<std::string> candidates_;
  std::size_t longest_ = 0;
  std::vector<Word> sorted_;  ///< by `low`, then by `at`
};

/// `did you mean "x"?`, or empty.
std::string did_you_mean(std::string_view typed, const std::vector<std::string>& candidates);

}  // namespace dunnage
