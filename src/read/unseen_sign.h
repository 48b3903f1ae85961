// SPDX-License-Identifier: MIT
// Signs in a text that nobody sees: they come with what was pasted, and would print as nothing or turn around
// the order of what stands beside them.
#pragma once

#include <optional>
#include <string_view>

namespace dunnage {

/// The first sign that does not print, a line's end ('\n' for any) only where there is no other: a control character, a
/// separator of lines (sheets part two languages by it), a space without width, or one that changes the direction of
/// writing around it. Joiners and the marks of direction (U+200C to U+200F) are letters' neighbours in some scripts,
/// and stay.
std::optional<char32_t> unseen_sign(std::string_view text);

}  // namespace dunnage
