// SPDX-License-Identifier: MIT
// The word a person most likely meant.
#pragma once

#include <cstddef>
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

/// `did you mean "x"?`, or empty.
std::string did_you_mean(std::string_view typed, const std::vector<std::string>& candidates);

}  // namespace dunnage
