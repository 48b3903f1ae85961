// SPDX-License-Identifier: MIT
// The TOML library's own words, said again for a person who runs sound.
#pragma once

#include <string>
#include <string_view>

namespace dunnage {

struct SyntaxMistake {
  std::string cause, hint;
};

/// Cause and remedy for a description that toml++ 3.3 gives. An unknown one is passed on as it is. `line_ends`: the
/// mistake is at the end of its line, where a control character is the line end of a text left open.
SyntaxMistake in_plain_words(std::string_view description, bool line_ends = false);

}  // namespace dunnage
