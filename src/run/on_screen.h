// SPDX-License-Identifier: MIT
// A line for a person's terminal: the line ends are the program's, and what is typed cannot begin a line of its own.
#pragma once

#include <fmt/format.h>

#include <string>
#include <string_view>
#include <type_traits>

#include "base/shown.h"

namespace dunnage {

/// Numbers as they are, so that a pattern may say how; all else as text that is shown on one line.
template <class T>
auto as_shown(const T& value) {
  if constexpr (std::is_arithmetic_v<T>)
    return value;
  else if constexpr (std::is_convertible_v<const T&, std::string_view>)
    return shown(std::string_view(value));
  else
    return shown(fmt::vformat("{}", fmt::make_format_args(value)));
}

/// `fmt::format` with every text in it as `shown` has it.
template <class... Args>
std::string on_screen(fmt::format_string<decltype(as_shown(std::declval<const Args&>()))...> pattern,
                      const Args&... args) {
  return fmt::format(pattern, as_shown(args)...);
}

}  // namespace dunnage
