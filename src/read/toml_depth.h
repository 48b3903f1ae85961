// SPDX-License-Identifier: MIT
// How deep a TOML text nests, found before it is parsed: the parser builds a tree as deep as the text asks for, and
// taking a tree down recurses.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace dunnage {

struct TooDeep {
  enum class What { key_parts, brackets };
  What what = What::key_parts;
  std::size_t byte = 0;  ///< the dot or bracket that is one too many
};

/// The first key with more than `most_parts` parts between dots, or the first bracket or brace inside more than
/// `most_brackets`. Follows strings and comments as TOML 1.0.0 has them, so that what stands in a text counts for
/// nothing. In a text that is no TOML it may take the part after the first mistake, which no parser reads, for
/// anything.
std::optional<TooDeep> too_deep(std::string_view text, int most_parts, int most_brackets);

}  // namespace dunnage
